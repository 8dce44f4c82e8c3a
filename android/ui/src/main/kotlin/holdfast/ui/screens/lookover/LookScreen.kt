package holdfast.ui.screens.lookover

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.LookRow
import holdfast.core.LookScreen
import holdfast.ui.components.ChoiceOptions
import holdfast.ui.components.MarkView
import holdfast.ui.components.OwnPhotoView
import holdfast.ui.components.QuietButton
import holdfast.ui.components.Rule
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The circuit as a checklist, part by part. */
@Composable
fun LookBody(frame: Frame, look: LookScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "look", send, footer = { WideButton(look.done, send) }) {
        Drawing(look.map, send)
        look.rows.forEach { Part(it, send) }
    }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun Part(row: LookRow, send: (Action) -> Unit) {
    Rule()
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.small)) {
        FlowRow(
            Modifier.fillMaxWidth(),
            Arrangement.SpaceBetween,
            Arrangement.Center,
        ) {
            Column(Modifier.align(Alignment.CenterVertically)) {
                Words(row.states.label, Modifier.semantics { heading() }, Theme.type.heading)
                MarkView(row.mark, style = Theme.type.body)
            }
            QuietButton(row.photo, send)
        }
        ChoiceOptions(row.states, send)
        row.own?.let { OwnPhotoView(it) }
    }
}
