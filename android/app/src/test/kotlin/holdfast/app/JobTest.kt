package holdfast.app

import android.provider.Settings
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.createAndroidComposeRule
import androidx.test.core.app.ApplicationProvider
import holdfast.core.Body
import holdfast.core.HoldPhase
import holdfast.core.Screen
import holdfast.ui.bridge.Shown
import holdfast.ui.demo.Deed
import holdfast.ui.demo.DemoPerson
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.annotation.Config

/** Whole jobs by taps on the real screens, with the real core behind them. */
@RunWith(RobolectricTestRunner::class)
@Config(application = TestApplication::class)
class JobTest {
    @get:Rule
    val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApplication>()
    private val hand by lazy { Hand(rule, app) }
    private val person = DemoPerson()
    private val seen = mutableSetOf<String>()

    /** As somebody has it whom moving pictures make ill: the whole job has to work without. */
    @Before
    fun stand_still() {
        Settings.Global.putFloat(app.contentResolver, Settings.Global.ANIMATOR_DURATION_SCALE, 0f)
        Settings.Global.putFloat(app.contentResolver, Settings.Global.TRANSITION_ANIMATION_SCALE, 0f)
    }

    @Test
    fun a_job_from_complaint_to_shared_report() {
        play { false }
        val report = checkNotNull(hand.sharedFile()) { "no report was shared" }
        Golden.keepFile("job/report.pdf", report)
        assertEquals("%PDF", report.readBytes().take(4).map { it.toInt().toChar() }.joinToString(""))
        assertTrue("a hold was watched", "Hold/Watch" in seen)
        assertTrue("the finding was seen", "Finding" in seen)
        assertTrue("the repair was seen", "Repaired" in seen)
    }

    @Test
    @Config(qualifiers = "+night")
    fun rotation_and_a_new_process_come_back_to_a_running_hold() {
        play { it.phase() == "Hold/Watch" }
        val before = hand.screen()
        rule.activityRule.scenario.recreate()
        rule.waitForIdle()
        assertEquals(before.frame.title, hand.screen().frame.title)
        assertEquals("Hold/Watch", hand.screen().phase())
        rule.onNode(hasText(before.frame.title)).assertExists()

        val again = app.newProcess()
        rule.waitForIdle()
        val reopened = (again.screen.value as Shown.Open).screen
        assertEquals(before.frame.title, reopened.frame.title)
        assertTrue((reopened.body as Body.Hold).hold.phase is HoldPhase.Interrupted)
    }

    /** Does what the person does until they leave or [enough]. */
    private fun play(enough: (Screen) -> Boolean) {
        repeat(MOST_DEEDS) {
            val screen = hand.screen()
            if (seen.add(screen.phase())) keep(screen)
            if (enough(screen)) return
            val deed = person.next(screen)
            if (deed is Deed.Leave) return
            hand.carryOut(deed)
        }
        throw AssertionError("the job does not end: it stands at '${hand.screen().frame.title}'")
    }

    private fun keep(screen: Screen) {
        val troubles = rule.outOfReach() + rule.cutOff() + rule.unheard(rightToLeft = false)
        assertEquals("${screen.frame.title}: $troubles", 0, troubles.size)
        val name = "job/%02d-%s".format(seen.size, screen.phase().replace('/', '-').lowercase())
        Golden.keep(name, picture(rule.activity))
    }

    private fun Screen.phase(): String = when (val body = body) {
        is Body.Hold -> "Hold/${body.hold.phase::class.simpleName}"
        is Body.Test -> "Test/${body.test.stage::class.simpleName}"
        else -> body::class.simpleName.orEmpty()
    }

    private companion object {
        const val MOST_DEEDS = 2_000
    }
}
