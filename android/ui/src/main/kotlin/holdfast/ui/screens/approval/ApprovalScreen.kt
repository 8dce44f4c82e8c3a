package holdfast.ui.screens.approval

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.ApprovalScreen
import holdfast.core.Frame
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.Sections
import holdfast.ui.components.WideButton
import holdfast.ui.scene.Finger
import holdfast.ui.scene.SceneView

/** What the customer says, and a pad to sign on with a finger. */
@Composable
fun ApprovalBody(frame: Frame, approval: ApprovalScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "approval", send, footer = { WideButton(approval.next, send) }) {
        Sections(approval.sections, send)
        SceneView(approval.pad, send, finger = Finger.Writes(send))
        approval.padButtons.forEach { WideButton(it, send) }
    }
}
