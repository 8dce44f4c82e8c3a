package holdfast.app

import androidx.activity.ComponentActivity
import androidx.activity.enableEdgeToEdge
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.key
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.junit4.createAndroidComposeRule
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.performSemanticsAction
import androidx.compose.ui.unit.Density
import holdfast.core.Body
import holdfast.core.FigureSize
import holdfast.core.Live
import holdfast.ui.ScreenView
import holdfast.ui.states.State
import holdfast.ui.states.allStates
import holdfast.ui.theme.HoldfastTheme
import holdfast.ui.theme.Light
import kotlinx.coroutines.flow.MutableStateFlow
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.rules.RuleChain
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.annotation.Config

/** Every screen in every state worth seeing: drawn by day, by night and with large type, and within reach. */
@RunWith(RobolectricTestRunner::class)
@Config(application = android.app.Application::class)
class StatesTest {
    private val rule = createAndroidComposeRule<ComponentActivity>()

    @get:Rule
    val rules: RuleChain = RuleChain.outerRule(KnownActivity()).around(rule)

    private var look by mutableStateOf(Look(allStates.first(), Light.Day, 1f))
    private val live = MutableStateFlow(Live("", 0f, "", ""))

    @Before
    fun show() {
        rule.activity.enableEdgeToEdge()
        rule.setContent {
            val density = LocalDensity.current
            HoldfastTheme(look.light, ReportFont) {
                CompositionLocalProvider(LocalDensity provides Density(density.density, look.fontScale)) {
                    key(look) { ScreenView(look.state.screen, live) {} }
                }
            }
        }
    }

    @Test
    fun every_state_by_day() = assertEquals("", troubles("day", Light.Day, 1f))

    @Test
    fun every_state_by_night() = assertEquals("", troubles("night", Light.Night, 1f))

    @Test
    fun every_state_in_large_type() = assertEquals("", troubles("large", Light.Day, 1.5f))

    @Test
    fun no_two_states_have_one_name() = assertEquals(allStates.size, allStates.map { it.name }.toSet().size)

    @Test
    fun every_kind_of_screen_has_a_state() {
        val drawn = allStates.map { it.screen.body::class.java }.toSet()
        val kinds = Body::class.java.declaredClasses.filter { Body::class.java.isAssignableFrom(it) }.toSet()
        assertEquals(kinds, drawn)
    }

    /**
     * ISO 9241-303 recommends characters of 20 to 22 minutes of arc (from memory): at two metres 11.6 mm, which are
     * 73 dp of 1/160 inch. A capital or digit of the type in use is 0.714 of its size tall.
     */
    @Test
    fun figures_for_two_metres_are_as_tall_as_they_must_be() {
        val far = allStates.filter { it.screen.figures == FigureSize.LARGE }
        assertTrue(far.any { it.screen.body is Body.Hold } && far.any { it.screen.body is Body.Meter })
        val tall = far.associate { state ->
            show(state, Light.Day, 1f)
            state.name to rule.tallestFigureDp() * 0.714f
        }
        assertEquals(emptyMap<String, Float>(), tall.filterValues { it < 73f })
    }

    private fun show(state: State, light: Light, fontScale: Float) {
        look = Look(state, light, fontScale)
        live.value = (state.screen.body as? Body.Hold)?.hold?.live ?: Live("", 0f, "", "")
        rule.waitForIdle()
    }

    private fun troubles(folder: String, light: Light, fontScale: Float): String =
        allStates.flatMap { state ->
            show(state, light, fontScale)
            val reach = (rule.outOfReach() + rule.cutOff() + rule.unheard(rightToLeft = false)).map { "${state.name}: $it" }
            listOfNotNull(Golden.check("$folder/${state.name}", picture(rule.activity))) + endOf(folder, state) + reach
        }.joinToString("\n")

    /** What lies below the fold is looked at too. */
    private fun endOf(folder: String, state: State): List<String> {
        val scrolling = SemanticsMatcher("scrolls down") {
            (it.config.getOrNull(SemanticsProperties.VerticalScrollAxisRange)?.maxValue?.invoke() ?: 0f) > 0f
        }
        val node = rule.onAllNodes(scrolling).fetchSemanticsNodes().firstOrNull() ?: return emptyList()
        rule.onNode(SemanticsMatcher("is it") { it.id == node.id })
            .performSemanticsAction(SemanticsActions.ScrollBy) { it(0f, 100_000f) }
        rule.waitForIdle()
        rule.onRoot().assertExists()
        return listOfNotNull(Golden.check("$folder/${state.name}-end", picture(rule.activity)))
    }
}

private data class Look(val state: State, val light: Light, val fontScale: Float)
