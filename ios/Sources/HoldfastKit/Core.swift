import HoldfastCore

/// The core as the model knows it: actions in, screens out.
public protocol Core: Sendable {
    /// Opens the data and gives the first screen.
    func open(at clock: Clock) async throws(Refusal) -> Screen

    /// Takes in what a person did or what the phone has to tell.
    func act(_ action: Action, at clock: Clock) async throws(Refusal) -> Update

    /// Does the long work of this number, telling its share done, and comes back when it has ended, well or not.
    func work(_ id: UInt64, progress: @escaping @Sendable (Double) -> Void) async
}

extension RustCore: Core {}
