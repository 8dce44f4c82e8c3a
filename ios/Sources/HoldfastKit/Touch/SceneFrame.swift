import Foundation
import HoldfastCore

/// A scene laid out over a width: places on the screen, in points, and in the scene, in its units.
public struct SceneFrame: Equatable, Sendable {
    /// The least side of anything to tap, points.
    public static let target = 48.0

    /// Points for a scene unit.
    public let unit: Double

    /// A scene over so many points.
    public init(_ scene: Scene, width: Double) {
        unit = width / Double(scene.width)
    }

    /// A place on the screen as one in the scene.
    public func scene(_ at: CGPoint) -> Point {
        Point(x: Float(at.x / unit), y: Float(at.y / unit))
    }

    /// A place in the scene as one on the screen.
    public func screen(_ at: Point) -> CGPoint {
        CGPoint(x: Double(at.x) * unit, y: Double(at.y) * unit)
    }

    /// What a finger at this place drags.
    public func drag(_ at: CGPoint) -> Action {
        let place = scene(at)
        return Action.drag(x: place.x, y: place.y)
    }

    /// Where a region can be tapped: around its middle, never smaller than a finger needs.
    public func target(of region: Region) -> CGRect {
        let middle = screen(region.middle)
        let width = max(Double(region.width) * unit, Self.target)
        let height = max(Double(region.height) * unit, Self.target)
        return CGRect(x: middle.x - width / 2, y: middle.y - height / 2, width: width, height: height)
    }
}

/// A part of a scene with a name: to be tapped, and for those who can't see the scene.
public struct Region: Equatable, Sendable, Identifiable {
    /// Its id in the scene.
    public let id: String
    /// What it is called.
    public let label: String
    /// Its width, scene units.
    public let width: Float
    /// Its height, scene units.
    public let height: Float
    /// Its middle, scene units.
    public let middle: Point

    /// What tapping it sends.
    public var tap: Action { Action.tap(region: id) }
}

extension Scene {
    /// The parts that have a name.
    public var regions: [Region] {
        items.compactMap { item in
            guard case .region(let id, let at, let width, let height, let label) = item else { return nil }
            let middle = Point(x: at.x + width / 2, y: at.y + height / 2)
            return Region(id: id, label: label, width: width, height: height, middle: middle)
        }
    }

    /// The files of the pictures in it.
    public var pictures: [String] {
        items.compactMap { item in
            guard case .image(let path, _, _, _) = item else { return nil }
            return path
        }
    }
}
