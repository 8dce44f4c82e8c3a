import SwiftUI

/// Distances, in steps of 4 points, and the sizes that fingers need.
enum Space {
    static let hair = 4.0
    static let small = 8.0
    static let step = 12.0
    static let margin = 16.0
    static let wide = 24.0

    /// The least height of the thing to do next.
    static let primaryTarget = 64.0

    /// The least height of anything else to tap.
    static let target = 52.0

    /// The least height of a row or a card to tap.
    static let card = 56.0

    /// The widest gauge: the words around it have to fit on the screen too.
    static let gauge = 330.0

    /// The widest gauge beside figures for two metres.
    static let smallGauge = 220.0

    /// The widest drawing: on a phone on its side it would leave no room for the words.
    static let drawing = 440.0

    /// Wider than this, text lines get hard to follow.
    static let column = 640.0

    /// A window lower than this and wider than high has its ways on at the side.
    static let low = 520.0

    /// How wide that side is.
    static let side = 280.0

    static let corner = 12.0
}

extension View {
    /// A card: raised ground in a frame.
    func card(_ ground: Color, frame: Color, width: Double) -> some View {
        background(ground, in: RoundedRectangle(cornerRadius: Space.corner))
            .overlay(RoundedRectangle(cornerRadius: Space.corner).strokeBorder(frame, lineWidth: width))
    }
}
