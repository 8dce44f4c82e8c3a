package holdfast.app

import android.content.Intent
import android.net.Uri
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.click
import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasContentDescription
import androidx.compose.ui.test.hasScrollAction
import androidx.compose.ui.test.hasSetTextAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.AndroidComposeTestRule
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextReplacement
import androidx.compose.ui.test.performTouchInput
import androidx.test.ext.junit.rules.ActivityScenarioRule
import holdfast.core.Body
import holdfast.core.Screen
import holdfast.ui.bridge.Shown
import holdfast.ui.demo.Deed
import java.io.File
import java.util.concurrent.TimeUnit
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowLooper

/** A hand on the real screens: finds what is named, scrolls to it, touches it. */
internal class Hand(
    private val rule: AndroidComposeTestRule<ActivityScenarioRule<MainActivity>, MainActivity>,
    private val app: HoldfastApplication,
) {
    /** What the screen shows now. */
    fun screen(): Screen {
        rule.waitForIdle()
        return when (val shown = app.model.screen.value) {
            is Shown.Open -> shown.screen.also { check(shown.refusal == null) { "refused: ${shown.refusal}" } }
            is Shown.Stuck -> throw AssertionError("the core did not open: ${shown.words}")
            is Shown.Opening -> throw AssertionError("the core is not open yet")
        }
    }

    fun carryOut(deed: Deed) {
        when (deed) {
            is Deed.Tap -> touch(hasText(deed.button.label) and hasClickAction(), 0)
            is Deed.Tick -> touch(hasText(deed.caution.text) and toggleable, 0)
            is Deed.Choose -> touch(hasText(deed.option.label) and pickable, deed.nth)
            is Deed.Write -> found(hasSetTextAction() and hasContentDescription(deed.field.label), 0)
                .performTextReplacement(deed.text)
            is Deed.Drag -> drag(deed)
            is Deed.Sign -> sign(deed)
            is Deed.Mark -> found(hasContentDescription(deed.photo.alt), 0).performTouchInput {
                click(Offset(deed.x / deed.photo.width * width, deed.y / deed.photo.height * height))
            }
            is Deed.Wait -> ShadowLooper.idleMainLooper(deed.ms, TimeUnit.MILLISECONDS)
            is Deed.Leave -> Unit
        }
        rule.waitForIdle()
    }

    /** The file that was handed to another program last, read as that program would. */
    fun sharedFile(): File? {
        val chooser = shadowOf(rule.activity).nextStartedActivity ?: return null
        @Suppress("DEPRECATION")
        val send = chooser.getParcelableExtra<Intent>(Intent.EXTRA_INTENT) ?: return null
        @Suppress("DEPRECATION")
        val uri = send.getParcelableExtra<Uri>(Intent.EXTRA_STREAM) ?: return null
        val copy = File(app.cacheDir, "received.pdf")
        app.contentResolver.openInputStream(uri)?.use { from -> copy.outputStream().use { from.copyTo(it) } }
        return copy
    }

    private fun touch(what: SemanticsMatcher, nth: Int) {
        found(what, nth).performClick()
    }

    private fun drag(deed: Deed.Drag) {
        val gauge = (screen().body as Body.Hold).hold.gauge
        val node = found(hasContentDescription(gauge.alt), 0)
        node.performTouchInput {
            click(Offset(deed.x / gauge.width * width, deed.y / gauge.height * height))
        }
    }

    private fun sign(deed: Deed.Sign) {
        found(hasContentDescription(deed.pad.alt), 0).performTouchInput {
            val places = deed.stroke.map { Offset(it.x / deed.pad.width * width, it.y / deed.pad.height * height) }
            down(places.first())
            places.drop(1).forEach(::moveTo)
            up()
        }
    }

    private fun found(what: SemanticsMatcher, nth: Int): SemanticsNodeInteraction {
        val node = rule.onAllNodes(what)[nth]
        val scrolls = rule.onAllNodes(what and hasAnyAncestor(hasScrollAction())).fetchSemanticsNodes().isNotEmpty()
        return if (scrolls) node.performScrollTo() else node
    }

    private companion object {
        val toggleable = SemanticsMatcher.keyIsDefined(SemanticsProperties.ToggleableState)
        val pickable = SemanticsMatcher("can be picked") {
            it.config.contains(SemanticsProperties.ToggleableState) || it.config.contains(SemanticsProperties.Selected)
        }
    }
}
