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
            Stack(spacing: Space.small) { each { WordCard(option: $0, kind: choice.kind) } }
        } else {
            FlowRow(spacing: Space.small) { each { Chip(option: $0, kind: choice.kind) } }
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

private struct WordCard: View {
    let option: ChoiceOption
    let kind: ChoiceKind

    var body: some View {
        Pickable(option) {
            HStack(spacing: Space.step) {
                PickSign(isPicked: option.picked == .yes, kind: kind)
                Stack(spacing: Space.hair) {
                    Words(option.label, style: .strong)
                    QuietWords(option.detail)
                }
            }
            .padding(Space.step)
            .frame(minHeight: Space.card)
        }
    }
}

private struct Chip: View {
    let option: ChoiceOption
    let kind: ChoiceKind

    var body: some View {
        Pickable(option) {
            HStack(spacing: Space.small) {
                PickSign(isPicked: option.picked == .yes, kind: kind)
                Words(option.label, style: option.picked == .yes ? .strong : .body)
            }
            .padding(.horizontal, Space.step)
            .padding(.vertical, Space.small)
            .frame(minHeight: Space.target)
        }
    }
}
