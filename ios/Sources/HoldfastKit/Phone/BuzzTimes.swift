import HoldfastCore

extension Buzz {
    /// Milliseconds of shaking and of rest by turns: patterns that a hand can tell apart.
    public var times: [Int] {
        switch self {
        case .tick: [40]
        case .done: [60, 90, 60]
        case .readNow: [700]
        case .alarm: [500, 200, 500, 200, 500]
        }
    }
}
