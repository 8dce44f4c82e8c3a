import HoldfastCore
import SwiftUI

/// The circuit as a checklist, part by part.
struct LookView: View {
    let frame: Frame
    let look: LookScreen

    var body: some View {
        ScreenFrame(frame, key: "look") {
            Drawing(look.map)
            ForEach(Array(look.rows.enumerated()), id: \.offset) { _, row in PartView(row: row) }
        } foot: {
            WideButton(look.done)
        }
    }
}

private struct PartView: View {
    let row: LookRow

    var body: some View {
        Rule()
        Stack(spacing: Space.small) {
            FlowRow {
                VStack(alignment: .leading, spacing: Space.hair) {
                    Heading(row.states.label)
                    MarkView(row.mark, style: .body)
                }
                QuietButton(row.photo)
            }
            ChoiceOptions(row.states)
            if let own = row.own { OwnPhotoView(own) }
        }
    }
}
