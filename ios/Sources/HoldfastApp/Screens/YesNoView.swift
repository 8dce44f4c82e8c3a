import HoldfastCore
import SwiftUI

/// One question with large answers in reach of a thumb.
struct YesNoView: View {
    let frame: Frame
    let ask: YesNoScreen

    var body: some View {
        ScreenFrame(frame, key: ask.question) {
            Heading(ask.question, style: .title)
            if let picture = ask.picture { Drawing(picture) }
            Points(ask.lookFor)
            if let own = ask.own { OwnPhotoView(own) }
        } foot: {
            ForEach(Array(ask.answers.enumerated()), id: \.offset) { _, answer in AnswerButton(button: answer) }
            WideButton(ask.notSure)
        }
    }
}
