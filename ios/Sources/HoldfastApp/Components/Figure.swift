import HoldfastCore
import SwiftUI

/// A figure read while working: in its usual type, or as large as there is room, to be read at two metres.
struct Figure: View {
    let text: String
    let usual: TypeStyle

    @Environment(\.largeFigures) private var isLarge

    var body: some View {
        if isLarge {
            // A figure that grows by a digit gets smaller, never cut; its unit may stand below it.
            Words(text, style: .twoMetres, align: .center)
                .lineLimit(1...2)
                .minimumScaleFactor(0.1)
        } else {
            Words(text, style: usual, align: .center)
        }
    }
}

private struct LargeFiguresKey: EnvironmentKey {
    static let defaultValue = false
}

extension EnvironmentValues {
    /// Whether the figures read while working stand as large as the screen lets.
    var largeFigures: Bool {
        get { self[LargeFiguresKey.self] }
        set { self[LargeFiguresKey.self] = newValue }
    }
}
