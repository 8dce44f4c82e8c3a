import SwiftUI

/// Things side by side, on as many lines as they need.
struct FlowRow: Layout {
    var spacing = Space.margin

    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize {
        let width = proposal.width ?? .infinity
        let lines = lines(subviews, width)
        let used = lines.map(\.width).max() ?? 0
        let height = lines.map(\.height).reduce(0, +) + spacing * Double(max(lines.count - 1, 0))
        return CGSize(width: width.isFinite ? width : used, height: height)
    }

    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {
        var top = bounds.minY
        for line in lines(subviews, bounds.width) {
            var left = bounds.minX
            for place in line.places {
                let size = size(of: subviews[place], bounds.width)
                subviews[place].place(at: CGPoint(x: left, y: top), proposal: ProposedViewSize(size))
                left += size.width + spacing
            }
            top += line.height + spacing
        }
    }

    private struct Line {
        var places: [Int] = []
        var width = 0.0
        var height = 0.0
    }

    private func lines(_ subviews: Subviews, _ width: Double) -> [Line] {
        var lines = [Line()]
        for place in subviews.indices {
            let size = size(of: subviews[place], width)
            let last = lines[lines.count - 1]
            if !last.places.isEmpty, last.width + spacing + size.width > width { lines.append(Line()) }
            var line = lines.removeLast()
            line.width += size.width + (line.places.isEmpty ? 0 : spacing)
            line.height = max(line.height, size.height)
            line.places.append(place)
            lines.append(line)
        }
        return lines
    }

    /// As wide as it likes, but never wider than a line.
    private func size(of view: LayoutSubview, _ width: Double) -> CGSize {
        let ideal = view.sizeThatFits(.unspecified)
        return ideal.width <= width ? ideal : view.sizeThatFits(ProposedViewSize(width: width, height: nil))
    }
}
