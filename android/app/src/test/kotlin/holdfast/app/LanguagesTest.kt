package holdfast.app

import androidx.activity.ComponentActivity
import androidx.activity.enableEdgeToEdge
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.key
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.test.junit4.createAndroidComposeRule
import androidx.compose.ui.unit.Density
import holdfast.core.Body
import holdfast.core.Direction
import holdfast.core.FormItem
import holdfast.core.FormScreen
import holdfast.core.Item
import holdfast.core.Live
import holdfast.core.MeterScreen
import holdfast.core.TestStage
import holdfast.ui.ScreenView
import holdfast.ui.theme.HoldfastTheme
import holdfast.ui.theme.Light
import kotlinx.coroutines.flow.MutableStateFlow
import org.junit.Assert.assertEquals
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.rules.RuleChain
import org.junit.rules.TemporaryFolder
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.annotation.Config

/**
 * The demo job in every language, drawn as a phone would: nothing is cut off, everything can be reached, touched and
 * heard, also in a language that is a third longer or runs from the right, and in type twice as large.
 */
@RunWith(RobolectricTestRunner::class)
@Config(application = android.app.Application::class)
class LanguagesTest {
    private val rule = createAndroidComposeRule<ComponentActivity>()

    @get:Rule
    val rules: RuleChain = RuleChain.outerRule(KnownActivity()).around(rule)

    @get:Rule
    val folders = TemporaryFolder()

    private var look by mutableStateOf<Look?>(null)
    private val live = MutableStateFlow(Live("", 0f, "", ""))

    @Before
    fun show() {
        rule.activity.enableEdgeToEdge()
        rule.setContent {
            val now = look ?: return@setContent
            val density = LocalDensity.current
            HoldfastTheme(now.light, ReportFont) {
                CompositionLocalProvider(LocalDensity provides Density(density.density, now.larger)) {
                    key(now) { ScreenView(now.scene.screen, live) {} }
                }
            }
        }
    }

    @Test
    fun each_language_by_day_and_by_night() {
        val troubles = listOf("en-US", "de-DE", "es-ES", "fr-FR").flatMap { locale ->
            val told = story(locale, 1f, folders.newFolder())
            told.flatMap { troubles(locale, it, Light.Day, 1f) } +
                told.filter { it.name in KEY_SCREENS }.flatMap { troubles(locale, it, Light.Night, 1f) }
        }
        assertEquals("", troubles.joinToString("\n"))
    }

    @Test
    fun a_longer_language_and_one_from_the_right_also_in_large_type() {
        val troubles = listOf("en-XA", "ar-XB").flatMap { locale ->
            listOf(1f, 1.5f).flatMap { larger ->
                story(locale, larger, folders.newFolder()).flatMap { troubles(locale, it, Light.Day, larger) }
            }
        }
        assertEquals("", troubles.joinToString("\n"))
    }

    /** WCAG 2.2, success criterion 1.4.4: text can be made twice as large without loss of content or function. */
    @Test
    fun type_twice_as_large() {
        val troubles = listOf("en-US", "de-DE").flatMap { locale ->
            story(locale, 2f, folders.newFolder()).flatMap { troubles(locale, it, Light.Day, 2f) }
        }
        assertEquals("", troubles.joinToString("\n"))
    }

    private fun troubles(locale: String, scene: Told, light: Light, larger: Float): List<String> {
        look = Look(scene, light, larger)
        live.value = scene.live
        rule.waitForIdle()
        if (scene.name in KEY_SCREENS || larger == 2f || locale == "en-US") {
            Golden.keep("languages/$locale-$larger-${light.name.lowercase()}-${scene.name}", picture(rule.activity))
        }
        val rightToLeft = scene.screen.direction == Direction.RIGHT_TO_LEFT
        val all = shortened(scene) + rule.outOfReach() + rule.cutOff() + rule.unheard(rightToLeft) + unannounced(scene)
        return all.map { "$locale ${scene.name} $larger: $it" }
    }

    /** Words of a drawing that the core had no room for. */
    private fun shortened(scene: Told): List<String> = when (val body = scene.screen.body) {
        is Body.Overview -> listOf(body.overview.map)
        is Body.Finding -> listOf(body.finding.map)
        is Body.LookOver -> listOf(body.look.map)
        is Body.Test -> listOfNotNull(body.test.picture, (body.test.stage as? TestStage.Result)?.chart)
        is Body.Hold -> listOf(body.hold.gauge)
        is Body.Meter -> drawings(body.meter)
        is Body.Vibration -> drawings(body.meter)
        is Body.YesNo -> listOfNotNull(body.ask.picture)
        is Body.Repaired -> listOfNotNull(body.repair.chart)
        is Body.Vehicle -> pictures(body.form)
        is Body.Prepare -> pictures(body.form)
        else -> emptyList()
    }.flatMap { it.items.filterIsInstance<Item.Text>() }.map { it.text }.filter { it.endsWith('…') }.map { "'$it' is shortened" }

    private fun drawings(meter: MeterScreen) = listOfNotNull(meter.picture, meter.map, meter.band)

    /** Drawings of a form, those of its choices too. */
    private fun pictures(form: FormScreen) = form.sections.flatMap { it.items }.flatMap { item ->
        when (item) {
            is FormItem.Picture -> listOf(item.scene)
            is FormItem.Options -> item.choice.options.mapNotNull { it.picture }
            else -> emptyList()
        }
    }

    /** What a person has to hear without asking: what a hold wants now, what came out, what went wrong. */
    private fun unannounced(scene: Told): List<String> {
        val body = scene.screen.body
        val speaks = body is Body.Hold || (body is Body.Test && body.test.stage is TestStage.Result) || scene.screen.frame.notice != null
        return listOfNotNull("nothing is announced".takeIf { speaks && rule.announced() == 0 })
    }

    private data class Look(val scene: Told, val light: Light, val larger: Float)

    private companion object {
        val KEY_SCREENS = setOf("overview", "test-brief", "hold-watch", "test-result", "finding")
    }
}
