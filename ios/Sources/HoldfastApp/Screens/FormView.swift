import HoldfastCore
import SwiftUI

/// A form from top to bottom: vehicle and complaint, before you start, costs, settings. `kind` names which.
struct FormView: View {
    let frame: Frame
    let kind: String
    let form: FormScreen

    var body: some View {
        // Two parts of one form, such as the circuit's, have different titles.
        let key = "\(kind)/\(frame.title)"
        if let next = form.next {
            ScreenFrame(frame, key: key) {
                Sections(form.sections)
            } foot: {
                WideButton(next)
            }
        } else {
            ScreenFrame(frame, key: key) { Sections(form.sections) }
        }
    }
}
