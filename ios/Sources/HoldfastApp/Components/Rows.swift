import HoldfastCore
import HoldfastKit
import SwiftUI

/// Possible causes with their certainty as number and bar.
struct Causes: View {
    let causes: [CauseRow]

    init(_ causes: [CauseRow]) {
        self.causes = causes
    }

    var body: some View {
        Stack(spacing: Space.step) {
            ForEach(Array(causes.enumerated()), id: \.offset) { _, cause in
                Stack(spacing: Space.hair) {
                    HStack(alignment: .lastTextBaseline, spacing: Space.step) {
                        Words(cause.name)
                        Spacer(minLength: 0)
                        Words(cause.percent, style: .strong)
                    }
                    Bar(share: Double(cause.barPermille) / 1_000, ground: .band, ink: .ink, height: 10)
                }
                .accessibilityElement(children: .combine)
            }
        }
    }
}

/// A bar that is full so far.
struct Bar: View {
    let share: Double
    let ground: Role
    let ink: Role
    let height: Double

    @Environment(\.palette) private var palette

    var body: some View {
        Capsule()
            .fill(palette[ground])
            .overlay(alignment: .leading) {
                GeometryReader { space in
                    Capsule().fill(palette[ink]).frame(width: space.size.width * min(max(share, 0), 1))
                }
            }
            .frame(height: height)
            .accessibilityHidden(true)
    }
}

/// Tests with their state; each row opens its test.
struct TestRows: View {
    let tests: [TestRow]

    init(_ tests: [TestRow]) {
        self.tests = tests
    }

    var body: some View {
        Stack(spacing: 0) {
            ForEach(Array(tests.enumerated()), id: \.offset) { _, test in
                Rule()
                RowButton(test.open) { face(test) }
            }
            if !tests.isEmpty { Rule() }
        }
    }

    private func face(_ test: TestRow) -> some View {
        HStack(spacing: Space.step) {
            MarkSign(mark: test.mark)
            Stack(spacing: 0) {
                Words(test.title)
                QuietWords(test.detail)
            }
            Words(test.mark.word, style: .small, role: test.mark.role)
        }
        .padding(.vertical, Space.small)
        .frame(minHeight: Space.card)
    }
}

/// A row that is tapped as a whole: its words are read out, then what tapping it does.
struct RowButton<Face: View>: View {
    let open: Button
    let face: Face

    @Environment(HoldfastModel.self) private var model

    init(_ open: Button, @ViewBuilder face: () -> Face) {
        self.open = open
        self.face = face()
    }

    var body: some View {
        SwiftUI.Button {
            model.send(open.action)
        } label: {
            face.contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .disabled(open.whyNot != nil)
        .accessibilityElement(children: .combine)
        .accessibilityAddTraits(.isButton)
        .accessibilityHint(Text(verbatim: open.whyNot ?? open.label))
    }
}

/// Lines that begin with a short dash, as points that stand side by side.
struct Points: View {
    let lines: [String]

    @Environment(\.palette) private var palette

    init(_ lines: [String]) {
        self.lines = lines
    }

    var body: some View {
        Stack(spacing: Space.small) {
            ForEach(Array(lines.enumerated()), id: \.offset) { _, line in
                HStack(alignment: .top, spacing: Space.step) {
                    Rectangle().fill(palette[.needle]).frame(width: 12, height: 3).padding(.top, 11)
                    Words(line)
                }
            }
        }
    }
}
