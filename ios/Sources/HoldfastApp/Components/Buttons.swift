import HoldfastCore
import HoldfastKit
import SwiftUI

/// A button over the whole width, as heavy as the core says; under it why it can't be tapped, where it can't.
struct WideButton: View {
    let button: Button

    init(_ button: Button) {
        self.button = button
    }

    var body: some View {
        Stack(spacing: Space.hair) {
            switch button.weight {
            case .primary: Tappable(button) { PrimaryFace(button: button) }
            case .plain: Tappable(button) { PlainFace(button: button) }
            case .quiet: QuietButton(button)
            }
            if let why = button.whyNot { QuietWords(why).padding(.horizontal, Space.hair) }
        }
    }
}

/// A button of quiet weight, as wide as its words.
struct QuietButton: View {
    let button: Button

    init(_ button: Button) {
        self.button = button
    }

    var body: some View {
        Tappable(button) {
            Words(button.label, role: button.whyNot == nil ? .ink : .quietInk)
                .underline()
                .padding(.horizontal, Space.hair)
                .padding(.vertical, Space.small)
                .frame(minWidth: Space.target, minHeight: Space.target, alignment: .leading)
        }
    }
}

/// One of the large answers to a question: all of the same weight, so that none is suggested.
struct AnswerButton: View {
    let button: Button

    @Environment(\.palette) private var palette

    var body: some View {
        Tappable(button) {
            Words(button.label, style: .heading, align: .center)
                .padding(.horizontal, Space.margin)
                .padding(.vertical, Space.step)
                .frame(maxWidth: .infinity, minHeight: 76)
                .card(palette[.raised], frame: palette[.ink], width: 3)
        }
    }
}

/// Sends the button's action, or says why it can't be tapped.
struct Tappable<Face: View>: View {
    let button: Button
    let face: Face

    @Environment(HoldfastModel.self) private var model

    init(_ button: Button, @ViewBuilder face: () -> Face) {
        self.button = button
        self.face = face()
    }

    var body: some View {
        SwiftUI.Button {
            model.send(button.action)
        } label: {
            face.contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .disabled(button.whyNot != nil)
        .accessibilityLabel(Text(verbatim: button.label))
        .accessibilityValue(Text(verbatim: button.whyNot ?? ""))
    }
}

private struct PrimaryFace: View {
    let button: Button

    @Environment(\.palette) private var palette

    var body: some View {
        let open = button.whyNot == nil
        Words(button.label, style: .heading, role: open ? .onNeedle : .quietInk, align: .center)
            .padding(.horizontal, Space.margin)
            .padding(.vertical, Space.step)
            .frame(maxWidth: .infinity, minHeight: Space.primaryTarget)
            .card(palette[open ? .needle : .paper], frame: palette[open ? .needle : .line], width: 2)
    }
}

private struct PlainFace: View {
    let button: Button

    @Environment(\.palette) private var palette

    var body: some View {
        let open = button.whyNot == nil
        Words(button.label, style: .strong, role: open ? .ink : .quietInk, align: .center)
            .padding(.horizontal, Space.margin)
            .padding(.vertical, Space.small)
            .frame(maxWidth: .infinity, minHeight: Space.card)
            .card(palette[.raised], frame: palette[open ? .ink : .line], width: open ? 2 : 1)
    }
}

/// Buttons below each other.
struct WideButtons: View {
    let buttons: [Button]

    init(_ buttons: [Button]) {
        self.buttons = buttons
    }

    var body: some View {
        ForEach(Array(buttons.enumerated()), id: \.offset) { _, button in WideButton(button) }
    }
}
