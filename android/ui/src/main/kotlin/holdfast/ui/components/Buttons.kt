package holdfast.ui.components

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Button
import holdfast.core.ButtonWeight
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** A button over the whole width, as heavy as the core says. */
@Composable
fun WideButton(button: Button, send: (Action) -> Unit, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), verticalArrangement = Arrangement.spacedBy(Space.hair)) {
        when (button.weight) {
            ButtonWeight.PRIMARY -> PrimaryFace(button, send)
            ButtonWeight.PLAIN -> PlainFace(button, send)
            ButtonWeight.QUIET -> QuietButton(button, send)
        }
        button.whyNot?.let { QuietWords(it, Modifier.padding(horizontal = Space.hair)) }
    }
}

/** A button of quiet weight, as wide as its words. */
@Composable
fun QuietButton(button: Button, send: (Action) -> Unit, modifier: Modifier = Modifier) {
    Box(
        modifier
            .clip(Space.corner)
            .tappable(button, send)
            .defaultMinSize(minWidth = Space.target, minHeight = Space.target)
            .padding(horizontal = Space.hair, vertical = Space.small),
        contentAlignment = Alignment.CenterStart,
    ) {
        Words(
            button.label,
            style = Theme.type.body.copy(textDecoration = TextDecoration.Underline),
            colour = if (button.whyNot == null) Theme.palette.ink else Theme.palette.quietInk,
        )
    }
}

/** One of the large answers to a question: all of the same weight, so that none is suggested. */
@Composable
fun AnswerButton(button: Button, send: (Action) -> Unit) =
    Face(button, send, Theme.palette.ink, 3.dp, least = 76.dp)

@Composable
private fun PrimaryFace(button: Button, send: (Action) -> Unit) {
    val palette = Theme.palette
    if (button.whyNot == null) {
        Face(button, send, palette.needle, 2.dp, palette.needle, palette.onNeedle)
    } else {
        Face(button, send, palette.line, 2.dp, palette.paper, palette.quietInk)
    }
}

@Composable
private fun PlainFace(button: Button, send: (Action) -> Unit) {
    val palette = Theme.palette
    val open = button.whyNot == null
    Face(
        button,
        send,
        frame = if (open) palette.ink else palette.line,
        line = if (open) 2.dp else 1.dp,
        ink = if (open) palette.ink else palette.quietInk,
        style = Theme.type.strong,
        least = 56.dp,
        above = Space.small,
    )
}

/** A button as wide as the screen: words in a frame. */
@Composable
private fun Face(
    button: Button,
    send: (Action) -> Unit,
    frame: Color,
    line: Dp,
    ground: Color = Theme.palette.raised,
    ink: Color = Theme.palette.ink,
    style: TextStyle = Theme.type.heading,
    least: Dp = Space.primaryTarget,
    above: Dp = Space.step,
) {
    Box(
        Modifier
            .fillMaxWidth()
            .card(frame, line, ground)
            .tappable(button, send)
            .defaultMinSize(minHeight = least)
            .padding(horizontal = Space.margin, vertical = above),
        contentAlignment = Alignment.Center,
    ) {
        Words(button.label, style = style, colour = ink, align = TextAlign.Center)
    }
}

/** Sends the button's action, or says why it can't be tapped. */
private fun Modifier.tappable(button: Button, send: (Action) -> Unit): Modifier =
    clickable(enabled = button.whyNot == null, role = Role.Button) { send(button.action) }
        .semantics { button.whyNot?.let { stateDescription = it } }
