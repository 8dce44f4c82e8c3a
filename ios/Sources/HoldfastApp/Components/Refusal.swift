import HoldfastKit
import SwiftUI

/// Why the last action was refused, across the top, until it is tapped or the screen changes.
struct RefusalBar: View {
    let words: String

    @Environment(\.palette) private var palette
    @Environment(HoldfastModel.self) private var model

    var body: some View {
        SwiftUI.Button {
            model.dismiss()
        } label: {
            Words(words, role: .paper)
                .padding(Space.margin)
                .frame(maxWidth: .infinity, minHeight: Space.target, alignment: .leading)
                .background(palette[.ink].ignoresSafeArea(edges: .top))
        }
        .buttonStyle(.plain)
        .announced(words)
    }
}
