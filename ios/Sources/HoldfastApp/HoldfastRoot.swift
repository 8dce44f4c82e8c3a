import HoldfastCore
import HoldfastKit
import SwiftUI

/// The whole app: whatever the model shows, by day or by night.
public struct HoldfastRoot: View {
    private let model: HoldfastModel

    @Environment(\.colorScheme) private var scheme
    @Environment(\.scenePhase) private var phase
    // A hundred of what the phone's text size makes larger: the core lays maps out for it.
    @ScaledMetric(relativeTo: .body) private var hundred = 100.0

    /// The app on this model.
    public init(model: HoldfastModel) {
        self.model = model
    }

    public var body: some View {
        ShownView(shown: model.shown)
            .environment(model)
            .environment(\.palette, scheme == .dark ? .night : .day)
            .onChange(of: hundred, initial: true) { _, now in model.send(Action.textSize(larger: Float(now / 100))) }
            .onChange(of: phase) { before, now in
                if now == .active { model.send(Action.resume) }
                if before == .active { model.send(Action.pause) }
            }
            .onOpenURL { url in
                Task { model.bundle(await Lent.copy(url)) }
            }
    }
}

private struct ShownView: View {
    let shown: Shown

    @Environment(\.palette) private var palette

    var body: some View {
        ZStack {
            palette[.paper].ignoresSafeArea()
            switch shown {
            case .opening: EmptyView()
            case .stuck(let words): stuck(words)
            case .open(let screen, let refusal):
                VStack(spacing: 0) {
                    if let refusal { RefusalBar(words: refusal) }
                    ScreenView(screen: screen)
                }
            }
        }
    }

    /// The core could not be opened: its words, and nothing that could do harm.
    private func stuck(_ words: String) -> some View {
        ScrollView { Words(words, style: .heading).padding(Space.wide) }
    }
}
