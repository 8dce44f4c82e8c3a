package holdfast.app

import android.content.Intent
import android.graphics.Bitmap
import android.net.Uri
import android.os.Looper
import androidx.test.core.app.ActivityScenario
import androidx.test.core.app.ApplicationProvider
import holdfast.app.phone.Decoder
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.ExportOf
import holdfast.core.FieldId
import holdfast.core.Place
import holdfast.ui.bridge.Shown
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config

/** Jobs leave the app as a file and come in as one: picked, or shared by another program. */
@RunWith(RobolectricTestRunner::class)
@Config(application = TestApplication::class)
class TravelTest {
    private val app = ApplicationProvider.getApplicationContext<TestApplication>()

    @Test
    fun a_job_is_handed_on_and_a_file_shared_into_the_app_is_taken_in() {
        val bundle = File(app.cacheDir, "from-another-phone.zip")
        with(ActivityScenario.launch(MainActivity::class.java)) {
            onActivity { activity ->
                send(Action.NewJob)
                send(Action.Type(FieldId.Plate, "HF 204"))
                send(Action.Go(Place.JOBS))
                send(Action.ExportJobs(ExportOf.ALL))
                val chooser = shadowOf(activity).nextStartedActivity
                @Suppress("DEPRECATION")
                val lent = chooser.getParcelableExtra<Intent>(Intent.EXTRA_INTENT)?.getParcelableExtra<Uri>(Intent.EXTRA_STREAM)
                app.contentResolver.openInputStream(checkNotNull(lent))?.use { from ->
                    bundle.outputStream().use { from.copyTo(it) }
                }
                assertEquals("PK", String(bundle.readBytes(), 0, 2))
            }
            close()
        }
        val uri = Uri.parse("content://another.program/jobs.zip")
        shadowOf(app.contentResolver).registerInputStream(uri, bundle.inputStream())
        val shared = Intent(app, MainActivity::class.java).setAction(Intent.ACTION_SEND).setType("application/zip")
            .putExtra(Intent.EXTRA_STREAM, uri)
        with(ActivityScenario.launch<MainActivity>(shared)) {
            onActivity {
                idle()
                assertEquals("Nothing in it was new.", notice())
                assertEquals(1, (shown().body as Body.Jobs).jobs.rows.size)
            }
            close()
        }
    }

    @Test
    fun the_system_is_asked_for_a_file_and_what_is_no_bundle_is_refused() =
        with(ActivityScenario.launch(MainActivity::class.java)) {
            onActivity { activity ->
                send(Action.ImportBundle)
                val asked = shadowOf(activity).nextStartedActivityForResult.intent
                assertEquals(Intent.ACTION_OPEN_DOCUMENT, asked.action)
                val uri = Uri.parse("content://another.program/letter.txt")
                shadowOf(app.contentResolver).registerInputStream(uri, "hello".byteInputStream())
                shadowOf(activity).receiveResult(asked, android.app.Activity.RESULT_OK, Intent().setData(uri))
                idle()
                assertEquals("This file holds no jobs.", notice())
            }
            close()
        }

    @Test
    fun a_picture_is_decoded_by_the_phone_or_not() {
        val from = File(app.cacheDir, "picture")
        val to = File(app.cacheDir, "decoded.jpg")
        from.outputStream().use { Bitmap.createBitmap(40, 30, Bitmap.Config.ARGB_8888).compress(Bitmap.CompressFormat.PNG, 100, it) }
        assertTrue(Decoder.decode(from, to))
        assertEquals(0xD8.toByte(), to.readBytes()[1])
        from.writeText("no picture")
        assertFalse(Decoder.decode(from, to))
    }

    private fun send(action: Action) {
        app.model.send(action)
        idle()
    }

    private fun shown() = (app.model.screen.value as Shown.Open).screen

    private fun notice() = shown().frame.notice?.text

    private fun idle() = shadowOf(Looper.getMainLooper()).idle()
}
