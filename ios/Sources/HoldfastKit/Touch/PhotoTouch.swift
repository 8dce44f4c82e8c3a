import Foundation
import HoldfastCore

/// Fingers on a photo: one marks, two zoom. Places go to the core in the scene's units, whatever part is seen.
public struct PhotoTouch: Equatable, Sendable {
    /// Half of what a finger covers, points.
    public static let reach = 24.0
    /// A finger that has moved less than this still rests, points.
    static let slop = 8.0

    /// What part of the photo is seen.
    public private(set) var view = ZoomedView()
    private var doing = Doing.nothing
    private var down = CGPoint.zero
    private var last = CGPoint.zero

    private enum Doing { case nothing, undecided, marking, zooming }

    /// A photo seen whole.
    public init() {}

    /// One finger is at this place: what that sends.
    public mutating func touch(at place: CGPoint, in frame: SceneFrame, pad: CGSize) -> [Action] {
        defer { last = place }
        switch doing {
        case .nothing:
            (doing, down) = (.undecided, place)
            return []
        case .undecided:
            guard hypot(place.x - down.x, place.y - down.y) > Self.slop else { return [] }
            doing = .marking
            return [grab(in: frame), drag(to: place, in: frame)]
        case .marking:
            return [drag(to: place, in: frame)]
        case .zooming:
            view.move(by: CGSize(width: place.x - last.x, height: place.y - last.y), in: pad)
            return []
        }
    }

    /// Two fingers spread around this place, by so much since they came down. A mark under way goes on.
    public mutating func pinch(to factor: Double, around place: CGPoint, pad: CGSize) {
        guard doing != .marking else { return }
        if doing != .zooming { view.hold() }
        doing = .zooming
        view.zoom(by: factor, around: place, in: pad)
    }

    /// The fingers leave the photo: what that sends.
    public mutating func lift(in frame: SceneFrame) -> [Action] {
        defer { doing = .nothing }
        switch doing {
        case .nothing, .zooming: return []
        case .undecided: return [grab(in: frame), Action.release]
        case .marking: return [Action.release]
        }
    }

    /// What takes a mark in hand for those who can't see it.
    public static func take(_ mark: Region) -> [Action] {
        [Action.grab(x: mark.middle.x, y: mark.middle.y, reach: mark.width / 2), Action.release]
    }

    private func grab(in frame: SceneFrame) -> Action {
        let place = frame.scene(view.onPhoto(down))
        return Action.grab(x: place.x, y: place.y, reach: Float(Self.reach / frame.unit / view.zoom))
    }

    private func drag(to place: CGPoint, in frame: SceneFrame) -> Action {
        frame.drag(view.onPhoto(place))
    }
}

/// Which part of a photo is seen: it is shown `zoom` times as large, moved by `moved`.
public struct ZoomedView: Equatable, Sendable {
    /// As large as it gets.
    static let most = 8.0

    /// Times its usual size.
    public private(set) var zoom = 1.0
    /// How far the photo's corner lies from the pad's, points.
    public private(set) var moved = CGSize.zero
    private var heldZoom = 1.0

    /// Two fingers come down.
    mutating func hold() {
        heldZoom = zoom
    }

    /// They spread; what is between them stays there.
    mutating func zoom(by factor: Double, around place: CGPoint, in pad: CGSize) {
        let before = zoom
        zoom = min(max(heldZoom * factor, 1), Self.most)
        let grown = zoom / before
        moved = CGSize(
            width: place.x - (place.x - moved.width) * grown,
            height: place.y - (place.y - moved.height) * grown
        )
        keepInside(pad)
    }

    /// They move together.
    mutating func move(by way: CGSize, in pad: CGSize) {
        moved = CGSize(width: moved.width + way.width, height: moved.height + way.height)
        keepInside(pad)
    }

    /// A place on the pad as one on the photo.
    func onPhoto(_ at: CGPoint) -> CGPoint {
        CGPoint(x: (at.x - moved.width) / zoom, y: (at.y - moved.height) / zoom)
    }

    private mutating func keepInside(_ pad: CGSize) {
        moved = CGSize(
            width: min(max(moved.width, pad.width * (1 - zoom)), 0),
            height: min(max(moved.height, pad.height * (1 - zoom)), 0)
        )
    }
}
