import HoldfastCore
import SwiftUI

/// Draws a scene's items on a canvas; `scale` is points for a scene unit.
struct SceneDrawing {
    let palette: Palette
    let scale: Double
    var needleDeg: Float?
    var pictures: [String: Image] = [:]

    func draw(_ items: [Item], in context: GraphicsContext) {
        for item in items { draw(item, in: context) }
    }

    private func draw(_ item: Item, in context: GraphicsContext) {
        switch item {
        case .path(let points, let ends, let stroke, let fill):
            paint(path(points, ends), stroke, fill, in: context)
        case .circle(let centre, let radius, let stroke, let fill):
            let (at, r) = (place(centre), Double(radius) * scale)
            let box = CGRect(x: at.x - r, y: at.y - r, width: r * 2, height: r * 2)
            paint(Path(ellipseIn: box), stroke, fill, in: context)
        case .arc(let centre, let radius, let start, let sweep, let stroke):
            var arc = Path()
            arc.addRelativeArc(
                center: place(centre), radius: Double(radius) * scale, startAngle: .degrees(Double(start)),
                delta: .degrees(Double(sweep)))
            context.stroke(arc, with: .color(palette[stroke.role]), style: style(stroke, cap: .butt))
        case .text(let at, let anchor, let size, let weight, let role, let text):
            write(text, at: at, anchor, size, weight, role, in: context)
        case .image(let path, let at, let width, let height):
            let size = CGSize(width: Double(width) * scale, height: Double(height) * scale)
            show(path, in: CGRect(origin: place(at), size: size), context)
        case .needle(let pivot, let length, let angle, let doubt, let role):
            let degrees = needleDeg ?? angle
            for shape in needleShapes(pivot: pivot, length: length, angleDeg: degrees, doubtDeg: doubt) {
                let colour = palette[role].opacity(Double(shape.opacity))
                context.fill(path(shape.points, .closed), with: .color(colour))
            }
        case .region: break
        }
    }

    private func paint(_ path: Path, _ stroke: Stroke?, _ fill: Role?, in context: GraphicsContext) {
        if let fill { context.fill(path, with: .color(palette[fill])) }
        if let stroke { context.stroke(path, with: .color(palette[stroke.role]), style: style(stroke, cap: .round)) }
    }

    private func path(_ points: [Point], _ ends: Ends) -> Path {
        var path = Path()
        path.addLines(points.map(place))
        if ends == .closed { path.closeSubpath() }
        return path
    }

    /// Scene text grows with the scene; where the phone's text size asks for more, the core lays the scene out anew. The
    /// scene's place is on the words' baseline.
    private func write(
        _ text: String, at: Point, _ anchor: Anchor, _ size: Float, _ weight: Weight, _ role: Role,
        in context: GraphicsContext
    ) {
        let face = weight == .bold ? Face.bold : Face.regular
        let font = Font.custom(face, fixedSize: Double(size) * scale).monospacedDigit()
        let words = context.resolve(Text(verbatim: text).font(font).foregroundStyle(palette[role]))
        let room = CGSize(width: Double.infinity, height: .infinity)
        let (measured, baseline) = (words.measure(in: room), words.firstBaseline(in: room))
        let left = measured.width * anchor.share
        let corner = place(at)
        context.draw(words, at: CGPoint(x: corner.x - left, y: corner.y - baseline), anchor: .topLeading)
    }

    private func show(_ path: String, in box: CGRect, _ context: GraphicsContext) {
        if let picture = pictures[path] {
            context.draw(picture, in: box)
        } else {
            context.fill(Path(box), with: .color(palette[.line].opacity(0.3)))
        }
    }

    private func place(_ point: Point) -> CGPoint {
        CGPoint(x: Double(point.x) * scale, y: Double(point.y) * scale)
    }

    private func style(_ stroke: Stroke, cap: CGLineCap) -> StrokeStyle {
        StrokeStyle(
            lineWidth: Double(stroke.width) * scale,
            lineCap: stroke.dash == .dotted ? .round : cap,
            lineJoin: .round,
            dash: (dashLengths(stroke: stroke) ?? []).map { Double($0) * scale }
        )
    }
}

extension Anchor {
    /// How much of the words lies to the left of their place.
    fileprivate var share: Double {
        switch self {
        case .start: 0
        case .middle: 0.5
        case .end: 1
        }
    }
}
