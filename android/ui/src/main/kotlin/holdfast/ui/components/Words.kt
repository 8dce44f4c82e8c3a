package holdfast.ui.components

import androidx.compose.foundation.text.BasicText
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import holdfast.ui.theme.Theme

/** Text in a given type; nothing if it is empty. */
@Composable
fun Words(
    text: String,
    modifier: Modifier = Modifier,
    style: TextStyle = Theme.type.body,
    colour: Color = Theme.palette.ink,
    align: TextAlign = TextAlign.Start,
) {
    if (text.isEmpty()) return
    BasicText(text, modifier, style.copy(color = colour, textAlign = align))
}

/** Text of less weight, still easy to read. */
@Composable
fun QuietWords(text: String, modifier: Modifier = Modifier, style: TextStyle = Theme.type.small) =
    Words(text, modifier, style, Theme.palette.quietInk)

/** The heading of a part of the screen. */
@Composable
fun Heading(text: String, modifier: Modifier = Modifier) =
    Words(text, modifier.semantics { heading() }, Theme.type.heading)
