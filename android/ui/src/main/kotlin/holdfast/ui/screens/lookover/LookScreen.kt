package holdfast.ui.screens.lookover

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.LookRow
import holdfast.core.LookScreen
import holdfast.ui.components.ChoiceGroup
import holdfast.ui.components.MarkView
import holdfast.ui.components.Rule
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.Space

/** The circuit as a checklist, part by part. */
@Composable
fun LookBody(frame: Frame, look: LookScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "look", send, footer = { WideButton(look.done, send) }) {
        SceneView(look.map, send)
        look.rows.forEach { Part(it, send) }
    }
}

@Composable
private fun Part(row: LookRow, send: (Action) -> Unit) {
    Rule()
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.small)) {
        ChoiceGroup(row.states, send)
        MarkView(row.mark)
        WideButton(row.photo, send)
    }
}
