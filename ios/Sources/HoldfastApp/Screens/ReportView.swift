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

/// A page over the width of the screen; a tap brings it to reading size, to be moved under the finger, and back.
private struct Page: View {
    private static let reading = 2.0

    let scene: Scene

    @Environment(\.palette) private var palette
    @State private var isLarge = false

    var body: some View {
        GeometryReader { space in
            let times = isLarge ? Self.reading : 1
            ScrollView(isLarge ? [.horizontal, .vertical] : []) {
                SceneCanvas(scene: scene)
                    .frame(width: space.size.width * times, height: space.size.height * times)
                    .contentShape(Rectangle())
                    .onTapGesture { isLarge.toggle() }
            }
        }
        .environment(\.palette, .day)
        .environment(\.layoutDirection, .leftToRight)
        .background(Palette.day[.paper])
        .overlay(Rectangle().strokeBorder(palette[.line], lineWidth: 1).allowsHitTesting(false))
        .aspectRatio(Double(scene.width) / Double(scene.height), contentMode: .fit)
    }
}
