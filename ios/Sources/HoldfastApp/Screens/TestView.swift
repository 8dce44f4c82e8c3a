import HoldfastCore
import HoldfastKit
import SwiftUI

/// A test outside its measurement: the briefing, a question about a reading, the result.
struct TestView: View {
    let frame: Frame
    let test: TestScreen

    var body: some View {
        switch test.stage {
        case .brief(let why, let needs, let steps, let means, let start, let cannot, let extras):
            ScreenFrame(frame, key: key("brief")) {
                place
                Words(why)
                Points(needs)
                Rule()
                Steps(steps: steps)
                if !means.isEmpty { Rule() }
                Meanings(means: means)
                FormItems(extras)
                if !cannot.isEmpty { Rule() }
                WideButtons(cannot)
            } foot: {
                WideButton(start)
            }
        case .question(let text, let entered, let buttons):
            ScreenFrame(frame, key: key("question")) {
                place
                Words(text, style: .heading).announced(text)
                EnteredView(entered: entered)
            } foot: {
                WideButtons(buttons)
            }
        case .result(let mark, let sentence, let meaning, let details, let chart, let buttons, let extras):
            ScreenFrame(frame, key: key("result")) {
                MarkView(mark, style: .title)
                Words(sentence, style: .heading).announced(sentence)
                Words(meaning)
                if let chart { Drawing(chart) }
                spot
                Stack(spacing: Space.hair) {
                    ForEach(Array(details.enumerated()), id: \.offset) { _, line in QuietWords(line) }
                }
                FormItems(extras)
                WideButtons(Foot(buttons).page)
            } foot: {
                WideButtons(Foot(buttons).foot)
            }
        }
    }

    private func key(_ stage: String) -> String { "\(frame.title)/\(stage)" }

    @ViewBuilder
    private var spot: some View {
        if let picture = test.picture { Drawing(picture) }
        Words(test.place, style: .strong)
    }

    @ViewBuilder
    private var place: some View {
        spot
        if let own = test.own { OwnPhotoView(own) }
    }
}

/// A reading as it was entered, to be held against the instrument.
private struct EnteredView: View {
    let entered: Entered

    @Environment(\.palette) private var palette

    var body: some View {
        Stack(spacing: Space.small) {
            Words(entered.label, style: .strong)
            ForEach(Array(entered.lines.enumerated()), id: \.offset) { _, line in Words(line, style: .heading) }
            ForEach(Array(entered.taken.enumerated()), id: \.offset) { _, line in QuietWords(line) }
        }
        .padding(Space.margin)
        .card(palette[.raised], frame: palette[.line], width: 2)
        .accessibilityElement(children: .combine)
    }
}

/// The steps, each with the cautions that belong before it.
private struct Steps: View {
    let steps: [Step]

    var body: some View {
        ForEach(Array(steps.enumerated()), id: \.offset) { place, step in
            Stack(spacing: Space.step) {
                ForEach(Array(step.cautions.enumerated()), id: \.offset) { _, caution in CautionCard(caution) }
                HStack(alignment: .firstTextBaseline, spacing: Space.step) {
                    Words((place + 1).formatted(), style: .heading, role: .needle).frame(minWidth: 28)
                    Words(step.text)
                }
                .accessibilityElement(children: .combine)
            }
        }
    }
}

/// What each result would mean.
private struct Meanings: View {
    let means: [Meaning]

    var body: some View {
        ForEach(Array(means.enumerated()), id: \.offset) { _, meaning in
            Stack(spacing: Space.hair) {
                MarkView(meaning.mark)
                Words(meaning.text)
            }
            .accessibilityElement(children: .combine)
        }
    }
}
