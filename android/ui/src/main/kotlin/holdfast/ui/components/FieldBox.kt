package holdfast.ui.components

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.text.BasicTextField
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.ExperimentalComposeUiApi
import androidx.compose.ui.Modifier
import androidx.compose.ui.focus.onFocusChanged
import androidx.compose.ui.graphics.SolidColor
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.error
import androidx.compose.ui.semantics.invisibleToUser
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.input.ImeAction
import androidx.compose.ui.text.input.KeyboardCapitalization
import androidx.compose.ui.text.input.KeyboardType
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Field
import holdfast.core.Keys
import holdfast.core.Role
import holdfast.ui.theme.LocalLargeFigures
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.fitted

/** Something to type: what is asked, the box with its unit, then the problem or the help. */
@OptIn(ExperimentalComposeUiApi::class)
@Composable
fun FieldBox(
    field: Field,
    send: (Action) -> Unit,
    modifier: Modifier = Modifier,
    style: TextStyle = field.keys.style(),
) {
    val palette = Theme.palette
    val wrong = field.problem
    var focused by remember { mutableStateOf(false) }
    val frame = when {
        wrong != null -> palette[Role.DANGER]
        focused -> palette.needle
        else -> palette.ink
    }
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Space.hair)) {
        // The box bears the same words for a screen reader.
        Words(field.label, Modifier.semantics { invisibleToUser() }, Theme.type.strong)
        Row(
            Modifier
                .fillMaxWidth()
                .border(if (focused || wrong != null) 3.dp else 2.dp, frame, Space.corner)
                .background(palette.raised, Space.corner)
                .padding(horizontal = Space.margin, vertical = Space.hair),
            Arrangement.spacedBy(Space.small),
            Alignment.CenterVertically,
        ) {
            BoxWithConstraints(Modifier.weight(1f)) {
                Entry(
                    field,
                    if (LocalLargeFigures.current && field.keys == Keys.NUMBER) large(field.value, maxWidth) else style,
                    send,
                    Modifier
                        .fillMaxWidth()
                        .onFocusChanged { focused = it.isFocused }
                        .semantics {
                            contentDescription = field.label
                            wrong?.let { error(it) }
                        },
                )
            }
            if (field.unit.isNotEmpty()) Words(field.unit, style = Theme.type.heading, colour = palette.quietInk)
        }
        if (wrong != null) {
            Words(wrong, Modifier.semantics { liveRegion = LiveRegionMode.Polite }, Theme.type.small, palette[Role.DANGER])
        } else {
            QuietWords(field.hint)
        }
    }
}

/**
 * The typed text lives here so that fast fingers don't wait for the core. A value from the core that this field
 * sent itself is an echo and changes nothing; any other (a dragged needle, another job) replaces the text.
 */
@Composable
private fun Entry(field: Field, style: TextStyle, send: (Action) -> Unit, modifier: Modifier) {
    var text by remember(field.id) { mutableStateOf(field.value) }
    val unheard = remember(field.id) { ArrayDeque<String>() }
    LaunchedEffect(field.value, field.id) {
        val heard = unheard.indexOf(field.value)
        if (heard >= 0) {
            repeat(heard + 1) { unheard.removeFirst() }
        } else if (field.value != text) {
            unheard.clear()
            text = field.value
        }
    }
    BasicTextField(
        value = text,
        onValueChange = {
            if (it != text) {
                text = it
                unheard.addLast(it)
                send(Action.Type(field.id, it))
            }
        },
        modifier = modifier,
        textStyle = style.copy(color = Theme.palette.ink),
        keyboardOptions = field.keys.options(),
        singleLine = field.keys != Keys.LINES,
        minLines = if (field.keys == Keys.LINES) 3 else 1,
        cursorBrush = SolidColor(Theme.palette.needle),
        decorationBox = { inner ->
            Box(
                Modifier.defaultMinSize(minHeight = Space.target).padding(vertical = Space.small),
                contentAlignment = if (field.keys == Keys.LINES) Alignment.TopStart else Alignment.CenterStart,
            ) { inner() }
        },
    )
}

/** A figure for two metres: as large as its box lets, and no larger than four digits would be. */
@Composable
private fun large(value: String, width: Dp): TextStyle = fitted(value.ifEmpty { FEWEST }.padEnd(FEWEST.length, '0'), width)

private const val FEWEST = "0000"

/** Numbers and codes are to be read at arm's length; sentences need room. */
@Composable
private fun Keys.style(): TextStyle = when (this) {
    Keys.NUMBER, Keys.CODE -> Theme.type.heading
    Keys.TEXT, Keys.LINES -> Theme.type.body
}

private fun Keys.options(): KeyboardOptions = when (this) {
    Keys.TEXT -> KeyboardOptions(KeyboardCapitalization.Sentences, imeAction = ImeAction.Done)
    Keys.LINES -> KeyboardOptions(KeyboardCapitalization.Sentences)
    Keys.CODE -> KeyboardOptions(
        KeyboardCapitalization.Characters,
        autoCorrectEnabled = false,
        keyboardType = KeyboardType.Text,
        imeAction = ImeAction.Done,
    )
    Keys.NUMBER -> KeyboardOptions(keyboardType = KeyboardType.Decimal, imeAction = ImeAction.Done)
}
