import HoldfastCore
import HoldfastKit
import SwiftUI

/// A photo with its marks: choose a mark, touch the place, drag what is there.
struct PhotoView: View {
    let frame: Frame
    let photo: PhotoScreen

    var body: some View {
        ScreenFrame(frame, key: "photo") {
            PhotoPad(scene: photo.scene)
            WideButton(photo.undo)
            ChoiceGroup(photo.palette)
            if let mark = photo.mark { MarkInHand(mark: mark) }
            if let looks = photo.looks { ChoiceGroup(looks) }
            FieldBox(photo.caption)
            Rule()
            FormItems(photo.more)
            WideButtons(Foot(photo.buttons).page)
        } foot: {
            WideButtons(Foot(photo.buttons).foot)
        }
    }
}

/// What can be done with the mark in hand.
private struct MarkInHand: View {
    let mark: MarkPanel

    var body: some View {
        Words(mark.name, style: .strong)
        if let words = mark.words { FieldBox(words) }
        WideButton(mark.remove)
    }
}
