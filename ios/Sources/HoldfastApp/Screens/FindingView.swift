import HoldfastCore
import HoldfastKit
import SwiftUI

/// The finding: the part, how sure, what speaks for and against it, what is left open.
struct FindingView: View {
    let frame: Frame
    let finding: FindingScreen

    var body: some View {
        ScreenFrame(frame, key: "finding") {
            MarkView(finding.mark)
            Heading(finding.headline, style: .title)
            Words(finding.certainty, style: .heading)
            Words(finding.explains)
            Drawing(finding.map)
            Reasons(sign: "+", lines: finding.speaksFor, role: .holds)
            Reasons(sign: "−", lines: finding.speaksAgainst, role: .leaks)
            Reasons(sign: "?", lines: finding.leftOpen, role: .undecided)
            Causes(finding.causes)
            WideButtons(Foot(finding.buttons).page)
        } foot: {
            WideButtons(Foot(finding.buttons).foot)
        }
    }
}

/// Lines of one kind: for, against or open, along a bar with their sign.
private struct Reasons: View {
    let sign: String
    let lines: [String]
    let role: Role

    @Environment(\.palette) private var palette

    var body: some View {
        if !lines.isEmpty {
            HStack(alignment: .top, spacing: Space.step) {
                Words(sign, style: .title, role: role, align: .center).frame(width: 24)
                Stack(spacing: Space.small) {
                    ForEach(Array(lines.enumerated()), id: \.offset) { _, line in Words(line) }
                }
                .padding(.leading, Space.step + 4)
                .overlay(alignment: .leading) { Rectangle().fill(palette[role]).frame(width: 4) }
            }
            .accessibilityElement(children: .combine)
        }
    }
}
