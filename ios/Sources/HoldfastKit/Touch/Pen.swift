import Foundation
import HoldfastCore

/// A finger that writes: the stroke under way is drawn by the pad until it is part of the scene.
public struct Pen: Equatable, Sendable {
    /// Where the stroke went so far, points.
    public private(set) var wet: [CGPoint] = []
    private var isWriting = false

    /// A pen that has not written yet.
    public init() {}

    /// The finger is at this place.
    public mutating func write(at place: CGPoint) {
        if !isWriting { wet = [] }
        isWriting = true
        wet.append(place)
    }

    /// The finger leaves the pad: what the stroke sends.
    public mutating func lift(in frame: SceneFrame) -> Action {
        isWriting = false
        return Action.ink(stroke: wet.map(frame.scene))
    }

    /// The scene has changed: what was drawn is in it, unless the next stroke has begun already.
    public mutating func dry() {
        if !isWriting { wet = [] }
    }
}
