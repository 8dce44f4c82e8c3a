import HoldfastCore
import SwiftUI

/// What the customer says, and a pad to sign on with a finger.
struct ApprovalView: View {
    let frame: Frame
    let approval: ApprovalScreen

    var body: some View {
        ScreenFrame(frame, key: "approval") {
            Sections(approval.sections)
            SceneView(scene: approval.pad, finger: .writes)
            WideButtons(approval.padButtons)
        } foot: {
            WideButton(approval.next)
        }
    }
}
