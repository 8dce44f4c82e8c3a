import HoldfastCore
import HoldfastKit
import SwiftUI

/// What is asked, and its options.
struct ChoiceGroup: View {
    let choice: Choice

    init(_ choice: Choice) {
        self.choice = choice
    }

    var body: some View {
        Stack(spacing: Space.small) {
            Words(choice.label, style: .strong)
            ChoiceOptions(choice)
        }
    }
}

/// The options alone, where what is asked stands elsewhere: short ones side by side, those with a second line below
/// each other, drawings two abreast, so that they can be compared at a glance.
struct ChoiceOptions: View {
    let choice: Choice

    init(_ choice: Choice) {
        self.choice = choice
    }

    var body: some View {
        if choice.options.contains(where: { $0.picture != nil }) {
            LazyVGrid(columns: [GridItem(spacing: Space.small), GridItem()], spacing: Space.small) {
                each { DrawnCard(option: $0, kind: choice.kind) }
            }
        } else if choice.options.contains(where: { !$0.detail.isEmpty }) {
            Stack(spacing: Space.small) { each { WordOption(option: $0, kind: choice.kind) } }
        } else {
            FlowRow(spacing: Space.small) { each { WordOption(option: $0, kind: choice.kind) } }
        }
    }

    private func each<Face: View>(@ViewBuilder _ face: @escaping (ChoiceOption) -> Face) -> some View {
        ForEach(Array(choice.options.enumerated()), id: \.offset) { _, option in face(option) }
    }
}

/// Something to pick, with the ground and frame of what is picked.
private struct Pickable<Face: View>: View {
    let option: ChoiceOption
    let face: Face

    @Environment(\.palette) private var palette
    @Environment(HoldfastModel.self) private var model

    init(_ option: ChoiceOption, @ViewBuilder face: () -> Face) {
        self.option = option
        self.face = face()
    }

    var body: some View {
        let isPicked = option.picked == .yes
        SwiftUI.Button {
            model.send(option.action)
        } label: {
            face
                .card(
                    palette[isPicked ? .band : .raised], frame: palette[isPicked ? .ink : .line],
                    width: isPicked ? 3 : 1
                )
                .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityElement(children: .combine)
        .accessibilityAddTraits(isPicked ? [.isButton, .isSelected] : .isButton)
    }
}

private struct DrawnCard: View {
    let option: ChoiceOption
    let kind: ChoiceKind

    var body: some View {
        Pickable(option) {
            Stack(spacing: Space.hair) {
                HStack(alignment: .top, spacing: Space.small) {
                    PickSign(isPicked: option.picked == .yes, kind: kind)
                    Words(option.label, style: option.picked == .yes ? .smallStrong : .small)
                }
                QuietWords(option.detail)
                // The card says it in words already.
                if let picture = option.picture { SceneStill(scene: picture).accessibilityHidden(true) }
            }
            .padding(Space.small)
            .frame(maxHeight: .infinity, alignment: .top)
        }
    }
}

/// Words, as wide as they are; with a second line as wide as the screen.
private struct WordOption: View {
    let option: ChoiceOption
    let kind: ChoiceKind

    var body: some View {
        let isCard = !option.detail.isEmpty
        Pickable(option) {
            HStack(spacing: isCard ? Space.step : Space.small) {
                PickSign(isPicked: option.picked == .yes, kind: kind)
                VStack(alignment: .leading, spacing: Space.hair) {
                    Words(option.label, style: isCard || option.picked == .yes ? .strong : .body)
                    QuietWords(option.detail)
                }
            }
            .padding(.horizontal, Space.step)
            .padding(.vertical, isCard ? Space.step : Space.small)
            .frame(minHeight: isCard ? Space.card : Space.target)
            .frame(maxWidth: isCard ? .infinity : nil, alignment: .leading)
        }
    }
}
