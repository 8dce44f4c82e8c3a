import HoldfastCore
import HoldfastKit
import SwiftUI

/// A caution with its signal word; where it has to be ticked, the whole card is the thing to tap.
struct CautionCard: View {
    let caution: Caution

    @Environment(HoldfastModel.self) private var model

    init(_ caution: Caution) {
        self.caution = caution
    }

    var body: some View {
        switch caution.ack {
        case .notAsked: CautionFace(caution: caution, tick: nil)
        case .open(let action):
            SwiftUI.Button {
                model.send(action)
            } label: {
                CautionFace(caution: caution, tick: false).contentShape(Rectangle())
            }
            .buttonStyle(.plain)
            .accessibilityElement(children: .combine)
            .accessibilityAddTraits(.isToggle)
        case .given:
            CautionFace(caution: caution, tick: true)
                .accessibilityElement(children: .combine)
                .accessibilityAddTraits([.isToggle, .isSelected])
        }
    }
}

private struct CautionFace: View {
    let caution: Caution
    let tick: Bool?

    @Environment(\.palette) private var palette

    var body: some View {
        let colour = palette[caution.signal.role]
        Stack(spacing: 0) {
            HStack(spacing: Space.small) {
                if caution.signal != .notice { WarningTriangle(ground: palette[.paper], mark: colour) }
                Words(caution.word, style: .strong, role: .paper)
            }
            .padding(.horizontal, Space.step)
            .padding(.vertical, Space.hair)
            .frame(maxWidth: .infinity, alignment: .leading)
            .background(colour)
            HStack(spacing: Space.step) {
                if let tick { TickBox(isTicked: tick) }
                Words(caution.text)
            }
            .padding(Space.step)
            .frame(minHeight: Space.target)
        }
        .clipShape(RoundedRectangle(cornerRadius: Space.corner))
        .card(palette[.raised], frame: colour, width: 2)
    }
}

extension Signal {
    fileprivate var role: Role {
        switch self {
        case .danger: .danger
        case .warning: .warning
        case .caution: .caution
        case .notice: .notice
        }
    }
}
