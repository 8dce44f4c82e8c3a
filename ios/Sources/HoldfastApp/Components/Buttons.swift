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
            case .primary: Tappable(button) { ButtonFace.primary(button) }
            case .plain: Tappable(button) { ButtonFace.plain(button) }
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

    var body: some View {
        Tappable(button) { ButtonFace(words: button.label, frame: .ink, line: 3, least: 76) }
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

/// The face of a button as wide as the screen: words in a frame.
private struct ButtonFace: View {
    let words: String
    var style = TypeStyle.heading
    var ink = Role.ink
    var ground = Role.raised
    let frame: Role
    let line: Double
    var least = Space.primaryTarget
    var above = Space.step

    @Environment(\.palette) private var palette

    var body: some View {
        Words(words, style: style, role: ink, align: .center)
            .padding(.horizontal, Space.margin)
            .padding(.vertical, above)
            .frame(maxWidth: .infinity, minHeight: least)
            .card(palette[ground], frame: palette[frame], width: line)
    }

    static func primary(_ button: Button) -> ButtonFace {
        button.whyNot == nil
            ? ButtonFace(words: button.label, ink: .onNeedle, ground: .needle, frame: .needle, line: 2)
            : ButtonFace(words: button.label, ink: .quietInk, ground: .paper, frame: .line, line: 2)
    }

    static func plain(_ button: Button) -> ButtonFace {
        let open = button.whyNot == nil
        return ButtonFace(
            words: button.label, style: .strong, ink: open ? .ink : .quietInk, frame: open ? .ink : .line,
            line: open ? 2 : 1, least: Space.card, above: Space.small)
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
