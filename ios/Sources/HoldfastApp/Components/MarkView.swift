import HoldfastCore
import SwiftUI

/// A state: its shape, then its word, both in its colour.
struct MarkView: View {
    let mark: Mark
    var style = TypeStyle.strong

    init(_ mark: Mark, style: TypeStyle = .strong) {
        self.mark = mark
        self.style = style
    }

    var body: some View {
        HStack(spacing: Space.small) {
            MarkSign(mark: mark)
            Words(mark.word, style: style, role: mark.role)
        }
        .accessibilityElement(children: .combine)
    }
}

/// The shape alone, about as high as letters.
struct MarkSign: View {
    let mark: Mark

    @Environment(\.palette) private var palette
    @ScaledMetric(relativeTo: .body) private var side = 18.0

    var body: some View {
        Canvas { context, size in draw(mark.shape, context, size, .color(palette[mark.role])) }
            .frame(width: side, height: side)
            .accessibilityHidden(true)
    }

    private func draw(
        _ shape: MarkShape, _ context: GraphicsContext, _ size: CGSize, _ colour: GraphicsContext.Shading
    ) {
        let line = size.width * 0.14
        let box = CGRect(origin: .zero, size: size).insetBy(dx: line / 2, dy: line / 2)
        let ring = Path(ellipseIn: box)
        switch shape {
        case .disc: context.fill(Path(ellipseIn: CGRect(origin: .zero, size: size)), with: colour)
        case .halfDisc:
            context.stroke(ring, with: colour, lineWidth: line)
            context.fill(arc(in: box, from: 90, by: 180), with: colour)
        case .wedge: context.fill(wedge(in: size), with: colour)
        case .ring: context.stroke(ring, with: colour, lineWidth: line)
        case .barredRing:
            context.stroke(ring, with: colour, lineWidth: line)
            var bar = Path()
            bar.move(to: CGPoint(x: 0, y: size.height / 2))
            bar.addLine(to: CGPoint(x: size.width, y: size.height / 2))
            context.stroke(bar, with: colour, lineWidth: line * 1.4)
        case .dottedRing:
            let gap = Double.pi * box.width / 9
            let dots = StrokeStyle(lineWidth: line * 1.3, lineCap: .round, dash: [0.1, gap])
            context.stroke(ring, with: colour, style: dots)
        case .gapRing: context.stroke(arc(in: box, from: -20, by: 280), with: colour, lineWidth: line)
        }
    }

    private func arc(in box: CGRect, from start: Double, by sweep: Double) -> Path {
        var path = Path()
        path.addRelativeArc(
            center: CGPoint(x: box.midX, y: box.midY), radius: box.width / 2, startAngle: .degrees(start),
            delta: .degrees(sweep))
        return path
    }

    private func wedge(in size: CGSize) -> Path {
        var path = Path()
        path.move(to: CGPoint(x: 0, y: size.height * 0.08))
        path.addLine(to: CGPoint(x: size.width, y: size.height * 0.08))
        path.addLine(to: CGPoint(x: size.width / 2, y: size.height * 0.96))
        path.closeSubpath()
        return path
    }
}
