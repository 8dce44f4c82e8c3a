import HoldfastCore
import HoldfastKit
import SwiftUI

/// One thing of a form.
struct FormItemView: View {
    let item: FormItem

    init(_ item: FormItem) {
        self.item = item
    }

    var body: some View {
        switch item {
        case .words(let text): Words(text)
        case .entry(let field): FieldBox(field)
        case .options(let choice): ChoiceGroup(choice)
        case .picture(let scene): Drawing(scene)
        case .tap(let button): WideButton(button)
        case .care(let caution): CautionCard(caution)
        case .state(let mark, let text):
            Stack(spacing: Space.hair) {
                MarkView(mark)
                Words(text)
            }
        case .photo(let photo): PhotoCardView(photo: photo)
        }
    }
}

/// Things of a form from the top.
struct FormItems: View {
    let items: [FormItem]

    init(_ items: [FormItem]) {
        self.items = items
    }

    var body: some View {
        ForEach(Array(items.enumerated()), id: \.offset) { _, item in FormItemView(item) }
    }
}

/// Parts of a form with their headings.
struct Sections: View {
    let sections: [Section]

    init(_ sections: [Section]) {
        self.sections = sections
    }

    var body: some View {
        ForEach(Array(sections.enumerated()), id: \.offset) { place, section in
            Stack {
                Heading(section.heading)
                FormItems(section.items)
            }
            .padding(.top, place == 0 ? Space.hair : Space.margin)
        }
    }
}

private struct PhotoCardView: View {
    let photo: PhotoCard

    @Environment(\.palette) private var palette
    @Environment(HoldfastModel.self) private var model

    var body: some View {
        SwiftUI.Button {
            model.send(photo.open)
        } label: {
            Stack(spacing: 0) {
                SceneStill(scene: photo.scene)
                if !photo.caption.isEmpty { Words(photo.caption).padding(Space.step) }
            }
            .clipShape(RoundedRectangle(cornerRadius: Space.corner))
            .card(palette[.raised], frame: palette[.line], width: 1)
        }
        .buttonStyle(.plain)
    }
}

/// The person's own photo of the place, under what it shows.
struct OwnPhotoView: View {
    let photo: OwnPhoto

    @Environment(\.palette) private var palette

    init(_ photo: OwnPhoto) {
        self.photo = photo
    }

    var body: some View {
        Stack(spacing: 0) {
            Words(photo.words, style: .strong).padding(Space.step)
            SceneStill(scene: photo.scene)
        }
        .clipShape(RoundedRectangle(cornerRadius: Space.corner))
        .card(palette[.raised], frame: palette[.line], width: 1)
    }
}
