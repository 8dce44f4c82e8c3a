import HoldfastCore

/// Buttons for the foot of the screen, in reach of a thumb, and those that stand in the page.
public struct Foot: Equatable, Sendable {
    /// Those a thumb should reach.
    public let foot: [Button]
    /// The others, in order.
    public let page: [Button]

    /// The primary one is for the thumb; without one the first.
    public init(_ buttons: [Button]) {
        let primary = buttons.filter { $0.weight == .primary }
        foot = primary.isEmpty ? Array(buttons.prefix(1)) : primary
        page = primary.isEmpty ? Array(buttons.dropFirst()) : buttons.filter { $0.weight != .primary }
    }
}
