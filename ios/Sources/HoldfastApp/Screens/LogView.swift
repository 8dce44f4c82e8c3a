import HoldfastCore
import SwiftUI

/// The job's photos and all its entries, newest first.
struct LogView: View {
    let frame: Frame
    let log: LogScreen

    var body: some View {
        ScreenFrame(frame, key: "log") {
            FormItems(log.photos)
            LazyVStack(spacing: 0) {
                ForEach(Array(log.rows.enumerated()), id: \.offset) { _, row in EntryView(row: row) }
            }
        }
    }
}

private struct EntryView: View {
    let row: LogRow

    var body: some View {
        Stack(spacing: Space.hair) {
            Rule().padding(.bottom, Space.small)
            QuietWords(row.when)
            Words(row.text)
            Words(row.state, style: .strong, role: .quietInk)
        }
        .padding(.bottom, Space.step)
        .accessibilityElement(children: .combine)
    }
}
