import HoldfastCore
import SwiftUI

/// The list of jobs.
struct JobsView: View {
    let frame: Frame
    let jobs: JobsScreen

    var body: some View {
        ScreenFrame(frame, key: "jobs") {
            FieldBox(jobs.search)
            QuietButton(jobs.narrow)
            ForEach(Array(jobs.filters.enumerated()), id: \.offset) { _, filter in ChoiceGroup(filter) }
            ForEach(Array(jobs.dates.enumerated()), id: \.offset) { _, field in FieldBox(field) }
            Words(jobs.empty, role: .quietInk).padding(.vertical, Space.wide)
            Stack(spacing: 0) {
                ForEach(Array(jobs.rows.enumerated()), id: \.offset) { _, row in JobRowView(row: row) }
                if !jobs.rows.isEmpty { Rule() }
            }
            if let more = jobs.more { WideButton(more) }
            WideButtons(jobs.buttons)
        } foot: {
            WideButton(jobs.newJob)
        }
    }
}

private struct JobRowView: View {
    let row: JobRow

    var body: some View {
        Rule()
        RowButton(row.open) { face }
            .accessibilityAddTraits(row.picked == .yes ? .isSelected : [])
        FlowRow { ForEach(Array(row.buttons.enumerated()), id: \.offset) { _, way in QuietButton(way) } }
    }

    private var face: some View {
        Stack(spacing: Space.hair) {
            HStack(spacing: Space.step) {
                if let picked = row.picked { PickSign(isPicked: picked == .yes, kind: .many) }
                Stack(spacing: 0) {
                    Words(row.plate, style: .heading)
                    Words(row.vehicle)
                    QuietWords(row.found)
                }
            }
            HStack(spacing: Space.step) {
                MarkView(row.mark)
                QuietWords(row.when)
            }
        }
        .padding(.vertical, Space.step)
        .frame(minHeight: Space.card)
    }
}
