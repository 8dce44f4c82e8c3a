package holdfast.ui.theme

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.text.selection.LocalTextSelectionColors
import androidx.compose.foundation.text.selection.TextSelectionColors
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.remember
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.Modifier
import androidx.compose.ui.text.font.FontFamily

private val LocalPalette = staticCompositionLocalOf { Palette.Day }
private val LocalType = staticCompositionLocalOf { Type(FontFamily.Default) }

/** Colours and type of the surrounding theme. */
object Theme {
    val palette: Palette @Composable get() = LocalPalette.current
    val type: Type @Composable get() = LocalType.current
}

/** Day or night. */
enum class Light { Day, Night }

/** Puts colours and type around the screens. The font comes from the shell, which knows where it lies. */
@Composable
fun HoldfastTheme(light: Light, family: FontFamily, content: @Composable () -> Unit) {
    val palette = if (light == Light.Day) Palette.Day else Palette.Night
    val type = remember(family) { Type(family) }
    CompositionLocalProvider(
        LocalPalette provides palette,
        LocalType provides type,
        LocalTextSelectionColors provides TextSelectionColors(palette.needle, palette[holdfast.core.Role.BAND]),
        content = content,
    )
}

/** Day's colours on their paper, whatever the light: what is inside will be printed. */
@Composable
fun Printed(content: @Composable () -> Unit) {
    CompositionLocalProvider(LocalPalette provides Palette.Day) {
        Box(Modifier.background(Palette.Day.paper)) { content() }
    }
}
