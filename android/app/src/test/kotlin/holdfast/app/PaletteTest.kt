package holdfast.app

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import holdfast.core.Role
import holdfast.ui.theme.Palette
import org.junit.Assert.assertEquals
import org.junit.Test

/**
 * Contrast as WCAG 2.2 defines it (success criterion 1.4.6): (lighter + 0.05) / (darker + 0.05) of the relative
 * luminances, at least 7 for text.
 */
class PaletteTest {
    private val lines = setOf(Role.VACUUM, Role.ELECTRIC, Role.LINE)
    private val carriesText = Role.entries - lines - setOf(Role.PAPER, Role.RAISED, Role.BAND, Role.SUSPECT, Role.ON_NEEDLE)

    @Test
    fun text_is_seven_to_one_on_paper_and_cards() {
        assertEquals(emptyList<String>(), weak(carriesText, 7f) { it.paper })
        assertEquals(emptyList<String>(), weak(carriesText, 7f) { it.raised })
    }

    /** Success criterion 1.4.11: three to one for what isn't text. */
    @Test
    fun lines_are_three_to_one_on_paper() = assertEquals(emptyList<String>(), weak(lines, 3f) { it.paper })

    @Test
    fun ink_on_a_shade_is_seven_to_one() {
        val weak = listOf(Role.BAND, Role.SUSPECT).filter { shade ->
            listOf(Palette.Day, Palette.Night).any { contrast(it, Role.INK, shade) < 7 }
        }
        assertEquals(emptyList<Role>(), weak)
    }

    @Test
    fun text_on_the_accent_is_seven_to_one() {
        val weak = listOf(Palette.Day, Palette.Night).filter { contrast(it, Role.ON_NEEDLE, Role.NEEDLE) < 7 }
        assertEquals(emptyList<Palette>(), weak)
    }

    private fun weak(roles: Collection<Role>, least: Float, ground: (Palette) -> Color): List<String> =
        listOf("day" to Palette.Day, "night" to Palette.Night).flatMap { (name, palette) ->
            roles.filter { contrast(palette[it].luminance(), ground(palette).luminance()) < least }.map { "$it by $name" }
        }

    private fun contrast(palette: Palette, a: Role, b: Role) = contrast(palette[a].luminance(), palette[b].luminance())

    private fun contrast(a: Float, b: Float) = (maxOf(a, b) + 0.05f) / (minOf(a, b) + 0.05f)
}
