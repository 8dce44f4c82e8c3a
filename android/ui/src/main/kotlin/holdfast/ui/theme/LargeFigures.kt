package holdfast.ui.theme

import androidx.compose.runtime.Composable
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.min
import androidx.compose.ui.unit.times

/** Whether the figures read while working stand as large as the screen lets. */
val LocalLargeFigures = staticCompositionLocalOf { false }

/** The largest type in which this text has room in this width; a figure that grows by a digit gets smaller, never cut. */
@Composable
fun fitted(text: String, width: Dp): TextStyle {
    val measurer = rememberTextMeasurer()
    val style = Theme.type.running
    with(LocalDensity.current) {
        val laid = measurer.measure(text, style.copy(fontSize = Probe.toSp()), softWrap = false)
        val share = width.toPx() / laid.size.width.coerceAtLeast(1)
        return style.copy(fontSize = min(Largest, (share * Slack) * Probe).toSp())
    }
}

/** The type a text is measured in. */
private val Probe = 100.dp

/** A hair less than measured, so that rounding breaks no line. */
private const val Slack = 0.98f

/** Larger than this, a figure pushes away what belongs to it. */
private val Largest = 190.dp
