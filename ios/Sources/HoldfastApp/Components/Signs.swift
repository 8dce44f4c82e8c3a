import HoldfastCore
import SwiftUI

/// A box that is ticked or not.
struct TickBox: View {
    let isTicked: Bool

    @Environment(\.palette) private var palette

    var body: some View {
        Canvas { context, size in
            let line = 2.5
            let box = Path(
                roundedRect: CGRect(origin: .zero, size: size).insetBy(dx: line / 2, dy: line / 2), cornerRadius: 6)
            if isTicked { context.fill(box, with: .color(palette[.ink])) }
            context.stroke(box, with: .color(palette[.ink]), lineWidth: line)
            guard isTicked else { return }
            var tick = Path()
            tick.move(to: CGPoint(x: size.width * 0.25, y: size.height * 0.53))
            tick.addLine(to: CGPoint(x: size.width * 0.43, y: size.height * 0.70))
            tick.addLine(to: CGPoint(x: size.width * 0.76, y: size.height * 0.32))
            let style = StrokeStyle(lineWidth: line * 1.2, lineCap: .round, lineJoin: .round)
            context.stroke(tick, with: .color(palette[.paper]), style: style)
        }
        .frame(width: 28, height: 28)
        .accessibilityHidden(true)
    }
}

/// One of: a disc in a ring. Any of: a tick in a box.
struct PickSign: View {
    let isPicked: Bool
    let kind: ChoiceKind

    @Environment(\.palette) private var palette

    var body: some View {
        switch kind {
        case .many: TickBox(isTicked: isPicked)
        case .one:
            ZStack {
                Circle().strokeBorder(palette[.ink], lineWidth: 2.5)
                if isPicked { Circle().fill(palette[.ink]).padding(5) }
            }
            .frame(width: 24, height: 24)
            .accessibilityHidden(true)
        }
    }
}

/// The general warning sign: a triangle with an exclamation mark.
struct WarningTriangle: View {
    let ground: Color
    let mark: Color

    var body: some View {
        Canvas { context, size in
            let (w, h) = (size.width, size.height)
            var triangle = Path()
            triangle.move(to: CGPoint(x: w * 0.5, y: h * 0.1))
            triangle.addLine(to: CGPoint(x: w * 0.96, y: h * 0.9))
            triangle.addLine(to: CGPoint(x: w * 0.04, y: h * 0.9))
            triangle.closeSubpath()
            context.fill(triangle, with: .color(ground))
            var stem = Path()
            stem.move(to: CGPoint(x: w * 0.5, y: h * 0.38))
            stem.addLine(to: CGPoint(x: w * 0.5, y: h * 0.62))
            context.stroke(stem, with: .color(mark), style: StrokeStyle(lineWidth: w * 0.1, lineCap: .round))
            let dot = CGRect(x: w * 0.44, y: h * 0.77 - w * 0.06, width: w * 0.12, height: w * 0.12)
            context.fill(Path(ellipseIn: dot), with: .color(mark))
        }
        .frame(width: 24, height: 24)
        .accessibilityHidden(true)
    }
}

/// The app's own sign: a dial with its band and one needle. Decoration: a screen reader passes it by.
struct DialSign: View {
    @Environment(\.palette) private var palette

    var body: some View {
        Canvas { context, size in
            let line = size.width * 0.11
            let centre = CGPoint(x: size.width / 2, y: size.height / 2)
            let radius = (size.width - line) / 2
            let style = StrokeStyle(lineWidth: line, lineCap: .round)
            context.stroke(arc(centre, radius, 135, 180), with: .color(palette[.ink]), style: style)
            context.stroke(arc(centre, radius, 330, 75), with: .color(palette[.holds]), style: style)
            var needle = Path()
            needle.move(to: centre)
            needle.addLine(to: CGPoint(x: centre.x + size.width * 0.3, y: centre.y - size.height * 0.17))
            context.stroke(needle, with: .color(palette[.needle]), style: style)
            let hub = CGRect(x: centre.x - line, y: centre.y - line, width: line * 2, height: line * 2)
            context.fill(Path(ellipseIn: hub), with: .color(palette[.needle]))
        }
        .frame(width: 28, height: 28)
        .accessibilityHidden(true)
    }

    private func arc(_ centre: CGPoint, _ radius: Double, _ start: Double, _ sweep: Double) -> Path {
        var path = Path()
        path.addRelativeArc(
            center: centre, radius: radius, startAngle: .degrees(start), delta: .degrees(sweep))
        return path
    }
}
