import HoldfastCore

/// What is to be seen.
public enum Shown: Equatable, Sendable {
    /// The core is being opened.
    case opening

    /// The core can't be opened: the words say why and what to do.
    case stuck(words: String)

    /// A screen, and why the last action was refused, if it was.
    case open(screen: Screen, refusal: String?)

    /// The screen, once there is one.
    public var screen: Screen? {
        guard case .open(let screen, _) = self else { return nil }
        return screen
    }
}

extension Screen {
    /// What the back gesture sends, if there is a way back.
    public var backAction: Action? {
        guard let back = frame.back, back.whyNot == nil else { return nil }
        return back.action
    }

    /// The moving part that the screen begins with.
    var firstLive: Live {
        guard case .hold(let hold) = body else { return .still }
        return hold.live
    }
}

extension Live {
    /// Nothing moves.
    public static let still = Live(seconds: "", needleDeg: 0, reading: "", cue: "")
}
