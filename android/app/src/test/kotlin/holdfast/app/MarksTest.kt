package holdfast.app

import android.graphics.Bitmap
import android.graphics.Canvas
import android.graphics.Color
import android.graphics.Paint
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.test.TouchInjectionScope
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasContentDescription
import androidx.compose.ui.test.hasSetTextAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.createAndroidComposeRule
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextReplacement
import androidx.compose.ui.test.performTouchInput
import androidx.test.core.app.ApplicationProvider
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.Item
import holdfast.core.PhotoScreen
import holdfast.core.PhotoSource
import holdfast.core.PhotoSubject
import holdfast.core.Place
import holdfast.ui.bridge.Shown
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.annotation.Config

/** Marks by fingers on the real photo screen, with the real core behind it. */
@RunWith(RobolectricTestRunner::class)
@Config(application = TestApplication::class)
class MarksTest {
    @get:Rule
    val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApplication>()

    @Before
    fun a_photo_of_the_valve_is_open() {
        send(Action.NewJob)
        send(Action.Type(FieldId.Label, "Demo van"))
        send(Action.Go(Place.LOG))
        send(Action.AddPhoto(PhotoSource.GALLERY, PhotoSubject.Component("valve")))
        val file = File(app.cacheDir, "taken.jpg")
        file.outputStream().use { drawnValve().compress(Bitmap.CompressFormat.JPEG, 92, it) }
        send(Action.PhotoTaken(file.path))
        val log = (body() as Body.Log).log
        send(log.photos.filterIsInstance<FormItem.Photo>().single().photo.open)
    }

    @Test
    fun marks_are_set_dragged_named_given_another_look_and_taken_back() {
        pick("Ring")
        pad { down(at(0.3f, 0.4f)); moveTo(at(0.36f, 0.4f)); moveTo(at(0.42f, 0.4f)); up() }
        near(0.3f, 0.4f, "Ring")

        // By its middle to another place; one finger, several steps.
        pad { down(at(0.3f, 0.4f)); moveTo(at(0.5f, 0.5f)); moveTo(at(0.6f, 0.6f)); up() }
        near(0.6f, 0.6f, "Ring")

        pick("Test point")
        pad { down(at(0.2f, 0.3f)); up() }
        touch("Red lead")
        rule.onNode(hasSetTextAction() and hasContentDescription("Words beside it")).performScrollTo()
            .performTextReplacement("pin 1")
        rule.waitForIdle()
        assertTrue(photo().scene.alt, "Red lead: pin 1" in photo().scene.alt)

        pick("Measure")
        pad { down(at(0.1f, 0.9f)); moveTo(at(0.3f, 0.9f)); moveTo(at(0.5f, 0.9f)); up() }
        pick("Hide")
        pad { down(at(0.7f, 0.1f)); moveTo(at(0.8f, 0.2f)); moveTo(at(0.95f, 0.25f)); up() }
        pick("Arrow")
        pad { down(at(0.9f, 0.9f)); moveTo(at(0.8f, 0.7f)); moveTo(at(0.7f, 0.62f)); up() }
        pick("Numbered pin")
        pad { down(at(0.45f, 0.3f)); up() }
        assertEquals(6, marks().size)
        look("marks-day")

        touch("Undo")
        assertEquals(5, marks().size)
        touch("Done")
        assertTrue(body() is Body.Log)
    }

    @Test
    fun two_fingers_zoom_and_a_mark_set_then_is_exact() {
        pick("Test point")
        zoom()
        assertEquals("zooming sets no mark", 0, marks().size)
        // What is seen at 0.8 of the pad is at 0.65 + 0.15 / 4 of the photo, as the fingers were around 0.65.
        pad { down(at(0.8f, 0.5f)); up() }
        near(0.6875f, 0.5f, "Test point", within = 0.012f)
        touch("Hand pump")
        look("marks-zoomed")
    }

    @Test
    @Config(qualifiers = "+night")
    fun by_night_a_mark_in_hand_can_be_seen_and_taken_away() {
        pick("Arrow")
        pad { down(at(0.2f, 0.8f)); moveTo(at(0.3f, 0.6f)); moveTo(at(0.48f, 0.5f)); up() }
        touch("Blue")
        assertNotNull(photo().mark)
        look("marks-night")
        zoom()
        look("marks-zoomed-night")
        touch("Take this mark away")
        assertEquals(0, marks().size)
        assertNull(photo().mark)
    }

    @Test
    fun who_can_not_see_the_marks_finds_them_by_name() {
        pick("Numbered pin")
        pad { down(at(0.45f, 0.3f)); up() }
        pick("Ring")
        assertNull(photo().mark)
        rule.onNode(hasContentDescription("Numbered pin") and hasClickAction()).performClick()
        rule.waitForIdle()
        assertEquals("Numbered pin", photo().mark?.name)
    }

    private fun send(action: Action) {
        app.model.send(action)
        rule.waitForIdle()
    }

    private fun body(): Body = (app.model.screen.value as Shown.Open).screen.body

    private fun photo(): PhotoScreen {
        rule.waitForIdle()
        return (body() as Body.Photo).photo
    }

    private fun marks() = photo().scene.items.filterIsInstance<Item.Region>()

    private fun near(x: Float, y: Float, name: String, within: Float = 0.02f) {
        val scene = photo().scene
        val mark = marks().last { it.label.startsWith(name) }
        assertEquals(x, (mark.at.x + mark.width / 2) / scene.width, within)
        assertEquals(y, (mark.at.y + mark.height / 2) / scene.height, within)
    }

    /** From 0.15 of the width apart to 0.6: four times as large; what is between the fingers stays where it is. */
    private fun zoom() = pad {
        down(0, at(0.575f, 0.5f))
        down(1, at(0.725f, 0.5f))
        for (step in 1..10) {
            updatePointerTo(0, at(0.575f - 0.0225f * step, 0.5f))
            updatePointerTo(1, at(0.725f + 0.0225f * step, 0.5f))
            move()
        }
        up(0)
        up(1)
    }

    private fun pick(tool: String) = touch(tool)

    private fun touch(words: String) {
        rule.onNode(hasText(words) and hasClickAction()).also { node ->
            runCatching { node.performScrollTo() }
            node.performClick()
        }
        rule.waitForIdle()
    }

    private fun TouchInjectionScope.at(x: Float, y: Float) = Offset(x * width, y * height)

    private fun pad(fingers: TouchInjectionScope.() -> Unit) {
        rule.onNode(hasContentDescription(photo().scene.alt)).performScrollTo().performTouchInput(fingers)
        rule.waitForIdle()
    }

    private fun look(name: String) {
        rule.onNode(hasContentDescription(photo().scene.alt)).performScrollTo()
        rule.waitForIdle()
        assertEquals(name, emptyList<String>(), rule.outOfReach())
        Golden.keep("photo/$name", picture(rule.activity))
    }
}

/** A valve with its connector and hoses, drawn for this test. */
private fun drawnValve(): Bitmap {
    val bitmap = Bitmap.createBitmap(1_200, 900, Bitmap.Config.ARGB_8888)
    val canvas = Canvas(bitmap)
    val paint = Paint().apply { isAntiAlias = true }
    fun fill(colour: String) = paint.apply { color = Color.parseColor(colour); style = Paint.Style.FILL }
    canvas.drawColor(Color.parseColor("#8A8F8C"))
    canvas.drawRect(0f, 640f, 1_200f, 900f, fill("#5D625F"))
    canvas.drawRoundRect(380f, 260f, 820f, 620f, 40f, 40f, fill("#2B2F31"))
    canvas.drawRoundRect(180f, 200f, 420f, 380f, 24f, 24f, fill("#3E4447"))
    canvas.drawCircle(250f, 290f, 26f, fill("#C9B46A"))
    canvas.drawCircle(340f, 290f, 26f, fill("#C9B46A"))
    paint.apply { color = Color.parseColor("#17191A"); style = Paint.Style.STROKE; strokeWidth = 56f }
    canvas.drawLine(820f, 360f, 1_200f, 300f, paint)
    canvas.drawLine(820f, 520f, 1_200f, 700f, paint)
    canvas.drawRect(880f, 90f, 1_140f, 210f, fill("#E9E4D3"))
    fill("#222222").textSize = 72f
    canvas.drawText("HF 204", 896f, 178f, paint)
    return bitmap
}
