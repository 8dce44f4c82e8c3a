import HoldfastCore
import SwiftUI

/// The report as it will print; paper is white at night too.
struct ReportView: View {
    let frame: Frame
    let report: ReportScreen

    var body: some View {
        ScreenFrame(frame, key: "report") {
            ForEach(Array(report.pages.enumerated()), id: \.offset) { _, page in Page(scene: page) }
            Sections(report.sections)
        } foot: {
            switch report.state {
            case .toMake(let make): WideButton(make)
            case .working(let text, let stop):
                Words(text).announced(text)
                WideButton(stop)
            case .ready(_, let share, let shareReadings):
                WideButton(share)
                WideButton(shareReadings)
            }
        }
    }
}

/// A page over the width of the screen; a tap brings it to reading size and back.
private struct Page: View {
    let scene: Scene

    @Environment(\.palette) private var palette
    @State private var isLarge = false
    @State private var width = 0.0

    var body: some View {
        ScrollView(isLarge ? .horizontal : []) {
            SceneCanvas(scene: scene)
                .frame(width: isLarge ? width * 2 : width)
                .aspectRatio(Double(scene.width) / Double(scene.height), contentMode: .fit)
                .contentShape(Rectangle())
                .onTapGesture { isLarge.toggle() }
                .environment(\.palette, .day)
                .environment(\.layoutDirection, .leftToRight)
        }
        .background(Palette.day[.paper])
        .overlay(Rectangle().strokeBorder(palette[.line], lineWidth: 1).allowsHitTesting(false))
        .background {
            GeometryReader { space in
                Color.clear.onChange(of: space.size.width, initial: true) { _, now in width = now }
            }
        }
    }
}
