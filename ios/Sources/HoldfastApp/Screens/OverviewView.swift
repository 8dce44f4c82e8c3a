import HoldfastCore
import SwiftUI

/// Where we stand: what to do next and why, the circuit, the causes, all tests.
struct OverviewView: View {
    let frame: Frame
    let overview: OverviewScreen

    var body: some View {
        ScreenFrame(frame, key: "overview") {
            QuietWords(overview.subject)
            Next(next: overview.next)
            Drawing(overview.map)
            Causes(overview.causes)
            TestRows(overview.tests)
            WideButtons(overview.buttons)
        } foot: {
            WideButton(overview.next.go)
        }
    }
}

private struct Next: View {
    let next: NextCard

    @Environment(\.palette) private var palette

    var body: some View {
        Stack(spacing: Space.small) {
            Heading(next.title, style: .title)
            Words(next.why)
            Words(next.minutes, style: .strong)
        }
        .padding(Space.margin)
        .card(palette[.raised], frame: palette[.needle], width: 2)
    }
}
