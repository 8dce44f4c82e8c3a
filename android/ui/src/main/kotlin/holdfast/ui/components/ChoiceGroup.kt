package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.selection.selectable
import androidx.compose.foundation.selection.selectableGroup
import androidx.compose.foundation.selection.toggleable
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Choice
import holdfast.core.ChoiceKind
import holdfast.core.ChoiceOption
import holdfast.core.Picked
import holdfast.core.Scene
import holdfast.ui.scene.SceneStill
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** Options: short ones side by side, those with a second line or a drawing below each other. */
@Composable
fun ChoiceGroup(choice: Choice, send: (Action) -> Unit, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Space.small)) {
        Words(choice.label, style = Theme.type.strong)
        ChoiceOptions(choice, send)
    }
}

/** The options alone, where what is asked stands elsewhere. */
@OptIn(ExperimentalLayoutApi::class)
@Composable
fun ChoiceOptions(choice: Choice, send: (Action) -> Unit) {
    val group = if (choice.kind == ChoiceKind.ONE) Modifier.selectableGroup() else Modifier
    val gap = Arrangement.spacedBy(Space.small)
    when {
        choice.options.any { it.picture != null } -> DrawnCards(choice, send, group)
        choice.options.any { it.detail.isNotEmpty() } ->
            Column(group, gap) { choice.options.forEach { Card(it, choice.kind, send) } }
        else -> FlowRow(group, gap, gap) { choice.options.forEach { Chip(it, choice.kind, send) } }
    }
}

/** Drawings two abreast, so that they can be compared at a glance. */
@Composable
private fun DrawnCards(choice: Choice, send: (Action) -> Unit, group: Modifier) {
    Column(group.fillMaxWidth(), Arrangement.spacedBy(Space.small)) {
        choice.options.chunked(2).forEach { pair ->
            Row(Modifier.fillMaxWidth().height(IntrinsicSize.Max), Arrangement.spacedBy(Space.small)) {
                pair.forEach { DrawnCard(it, choice.kind, send, Modifier.weight(1f)) }
                if (pair.size == 1) Spacer(Modifier.weight(1f))
            }
        }
    }
}

@Composable
private fun DrawnCard(option: ChoiceOption, kind: ChoiceKind, send: (Action) -> Unit, modifier: Modifier) {
    Column(
        modifier.fillMaxHeight().then(Modifier.pickable(option, kind, send)).padding(Space.small),
        Arrangement.spacedBy(Space.hair),
    ) {
        Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.small), Alignment.Top) {
            PickSign(option.picked, kind)
            Words(option.label, Modifier.weight(1f), if (option.picked == Picked.YES) Theme.type.smallStrong else Theme.type.small)
        }
        QuietWords(option.detail)
        option.picture?.let { Drawing(it) }
    }
}

@Composable
private fun Chip(option: ChoiceOption, kind: ChoiceKind, send: (Action) -> Unit) {
    Row(
        Modifier.pickable(option, kind, send).defaultMinSize(minHeight = Space.target).padding(Space.step, Space.small),
        Arrangement.spacedBy(Space.small),
        Alignment.CenterVertically,
    ) {
        PickSign(option.picked, kind)
        Words(option.label, style = if (option.picked == Picked.YES) Theme.type.strong else Theme.type.body)
    }
}

@Composable
private fun Card(option: ChoiceOption, kind: ChoiceKind, send: (Action) -> Unit) {
    Row(
        Modifier
            .pickable(option, kind, send)
            .fillMaxWidth()
            .defaultMinSize(minHeight = 56.dp)
            .padding(Space.step),
        Arrangement.spacedBy(Space.step),
        Alignment.CenterVertically,
    ) {
        PickSign(option.picked, kind)
        Column(Modifier.weight(1f), Arrangement.spacedBy(Space.hair)) {
            Words(option.label, style = Theme.type.strong)
            QuietWords(option.detail)
        }
    }
}

/** The card says it in words already. */
@Composable
private fun Drawing(scene: Scene) =
    SceneStill(scene, Modifier.fillMaxWidth().clearAndSetSemantics {})

@Composable
private fun Modifier.pickable(option: ChoiceOption, kind: ChoiceKind, send: (Action) -> Unit): Modifier {
    val palette = Theme.palette
    val picked = option.picked == Picked.YES
    val look = clip(Space.corner)
        .background(if (picked) palette[holdfast.core.Role.BAND] else palette.raised)
        .border(if (picked) 3.dp else 1.dp, if (picked) palette.ink else palette.line, Space.corner)
    return when (kind) {
        ChoiceKind.ONE -> look.selectable(picked, role = Role.RadioButton) { send(option.action) }
        ChoiceKind.MANY -> look.toggleable(picked, role = Role.Checkbox) { send(option.action) }
    }
}

/** One of: a disc in a ring. Any of: a tick in a box. */
@Composable
internal fun PickSign(picked: Picked, kind: ChoiceKind) {
    if (kind == ChoiceKind.MANY) {
        TickBox(picked == Picked.YES)
        return
    }
    val ink = Theme.palette.ink
    Canvas(Modifier.size(24.dp)) {
        val line = 2.5.dp.toPx()
        drawCircle(ink, (size.minDimension - line) / 2, style = Stroke(line))
        if (picked == Picked.YES) drawCircle(ink, size.minDimension * 0.28f)
    }
}
