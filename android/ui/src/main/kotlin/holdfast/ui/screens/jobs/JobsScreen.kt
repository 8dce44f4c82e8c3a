package holdfast.ui.screens.jobs

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.selection.toggleable
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.ChoiceKind
import holdfast.core.Frame
import holdfast.core.JobRow
import holdfast.core.JobsScreen
import holdfast.core.Picked
import holdfast.ui.components.ChoiceGroup
import holdfast.ui.components.FieldBox
import holdfast.ui.components.MarkView
import holdfast.ui.components.PickSign
import holdfast.ui.components.QuietButton
import holdfast.ui.components.QuietWords
import holdfast.ui.components.Rule
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The list of jobs. */
@Composable
fun JobsBody(frame: Frame, jobs: JobsScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "jobs", send, footer = { WideButton(jobs.newJob, send) }) {
        FieldBox(jobs.search, send)
        QuietButton(jobs.narrow, send)
        jobs.filters.forEach { ChoiceGroup(it, send) }
        jobs.dates.forEach { FieldBox(it, send) }
        Words(jobs.empty, Modifier.padding(vertical = Space.wide), colour = Theme.palette.quietInk)
        Column {
            jobs.rows.forEach { Row(it, send) }
            if (jobs.rows.isNotEmpty()) Rule()
        }
        jobs.more?.let { WideButton(it, send) }
        jobs.buttons.forEach { WideButton(it, send) }
    }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun Row(row: JobRow, send: (Action) -> Unit) {
    Rule()
    Column(
        Modifier
            .fillMaxWidth()
            .opens(row, send)
            .defaultMinSize(minHeight = 56.dp)
            .padding(vertical = Space.step),
        Arrangement.spacedBy(Space.hair),
    ) {
        Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step), Alignment.CenterVertically) {
            row.picked?.let { PickSign(it, ChoiceKind.MANY) }
            Column(Modifier.weight(1f)) {
                Words(row.plate, style = Theme.type.heading)
                Words(row.vehicle)
                QuietWords(row.found)
            }
        }
        Row(
            Modifier.fillMaxWidth(),
            Arrangement.spacedBy(Space.step),
            Alignment.CenterVertically,
        ) {
            MarkView(row.mark)
            QuietWords(row.`when`)
        }
    }
    FlowRow(horizontalArrangement = Arrangement.spacedBy(Space.margin)) { row.buttons.forEach { QuietButton(it, send) } }
}

private fun Modifier.opens(row: JobRow, send: (Action) -> Unit): Modifier = when (val picked = row.picked) {
    null -> clickable(role = Role.Button, onClickLabel = row.open.label) { send(row.open.action) }
    else -> toggleable(picked == Picked.YES, role = Role.Checkbox) { send(row.open.action) }
}
