package holdfast.ui.components

import androidx.compose.foundation.background
import androidx.compose.foundation.border
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
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Button
import holdfast.core.ButtonWeight
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

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
fun AnswerButton(button: Button, send: (Action) -> Unit) {
    Box(
        Modifier
            .fillMaxWidth()
            .clip(Space.corner)
            .background(Theme.palette.raised)
            .border(3.dp, Theme.palette.ink, Space.corner)
            .tappable(button, send)
            .defaultMinSize(minHeight = 76.dp)
            .padding(horizontal = Space.margin, vertical = Space.step),
        contentAlignment = Alignment.Center,
    ) {
        Words(button.label, style = Theme.type.heading, align = TextAlign.Center)
    }
}

@Composable
private fun PrimaryFace(button: Button, send: (Action) -> Unit) {
    val palette = Theme.palette
    val ground = if (button.whyNot == null) palette.needle else palette.paper
    val ink = if (button.whyNot == null) palette.onNeedle else palette.quietInk
    val frame = if (button.whyNot == null) palette.needle else palette.line
    Box(
        Modifier
            .fillMaxWidth()
            .clip(Space.corner)
            .background(ground)
            .border(2.dp, frame, Space.corner)
            .tappable(button, send)
            .defaultMinSize(minHeight = Space.primaryTarget)
            .padding(horizontal = Space.margin, vertical = Space.step),
        contentAlignment = Alignment.Center,
    ) {
        Words(button.label, style = Theme.type.heading, colour = ink, align = TextAlign.Center)
    }
}

@Composable
private fun PlainFace(button: Button, send: (Action) -> Unit) {
    val palette = Theme.palette
    Box(
        Modifier
            .fillMaxWidth()
            .clip(Space.corner)
            .background(palette.raised)
            .border(if (button.whyNot == null) 2.dp else 1.dp, if (button.whyNot == null) palette.ink else palette.line, Space.corner)
            .tappable(button, send)
            .defaultMinSize(minHeight = 56.dp)
            .padding(horizontal = Space.margin, vertical = Space.small),
        contentAlignment = Alignment.Center,
    ) {
        Words(
            button.label,
            style = Theme.type.strong,
            colour = if (button.whyNot == null) palette.ink else palette.quietInk,
            align = TextAlign.Center,
        )
    }
}

/** Sends the button's action, or says why it can't be tapped. */
private fun Modifier.tappable(button: Button, send: (Action) -> Unit): Modifier =
    clickable(enabled = button.whyNot == null, role = Role.Button) { send(button.action) }
        .semantics { button.whyNot?.let { stateDescription = it } }
