package holdfast.ui.screens.repaired

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.RepairedScreen
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.Sections
import holdfast.ui.components.WideButton
import holdfast.ui.scene.Drawing

/** What was repaired, then the same test again, before and after on one chart. */
@Composable
fun RepairedBody(frame: Frame, repair: RepairedScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "repaired", send, footer = { WideButton(repair.next, send) }) {
        repair.chart?.let { Drawing(it, send) }
        Sections(repair.sections, send)
    }
}
