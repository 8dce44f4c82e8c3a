import Dispatch

/// The real core: one call at a time and in order, never on the thread that draws. Long work runs beside it.
public actor RustCore {
    private let dataFolder: String
    private let facts: PhoneFacts
    private var handle: Holdfast?

    /// The core on this data folder, not opened yet.
    public init(dataFolder: String, facts: PhoneFacts) {
        self.dataFolder = dataFolder
        self.facts = facts
    }

    /// Opens the data and gives the first screen.
    public func open(at clock: Clock) throws(Refusal) -> Screen {
        try opened(at: clock).screen()
    }

    /// Takes in what a person did or what the phone has to tell.
    public func act(_ action: Action, at clock: Clock) throws(Refusal) -> Update {
        let core = try opened(at: clock)
        return try asked { try core.act(action: action, clock: clock) }
    }

    /// Does the long work of this number, telling its share done, and comes back when it has ended, well or not.
    public func work(_ id: UInt64, progress: @escaping @Sendable (Double) -> Void) async {
        guard let work = handle?.work(id: id) else { return }
        await withCheckedContinuation { (ended: CheckedContinuation<Void, Never>) in
            DispatchQueue.global(qos: .userInitiated).async {
                // How it ended is told by the screen that follows.
                _ = work.run(progress: Told(progress))
                ended.resume()
            }
        }
    }

    private func opened(at clock: Clock) throws(Refusal) -> Holdfast {
        if let handle { return handle }
        let opened = try asked { try Holdfast.open(dataDir: dataFolder, facts: facts, clock: clock) }
        handle = opened
        return opened
    }

    private func asked<T>(_ call: () throws -> T) throws(Refusal) -> T {
        do {
            return try call()
        } catch let error as HoldfastError {
            throw Refusal(error)
        } catch {
            // The library and its Swift face don't fit each other: nothing a person can act on has a word here.
            throw Refusal(words: "", detail: String(describing: error))
        }
    }
}

/// Why the core could not do what it was asked, in words for the person; they say what can be done about it.
public struct Refusal: Error, Equatable {
    /// For the person.
    public let words: String

    /// For a log, never shown.
    public let detail: String

    /// A refusal in these words.
    public init(words: String, detail: String) {
        self.words = words
        self.detail = detail
    }

    init(_ error: HoldfastError) {
        switch error {
        case .CorrectEntry(let text, let detail),
            .FreeSpace(let text, let detail),
            .UpdateApp(let text, let detail),
            .TryAgain(let text, let detail),
            .ExportData(let text, let detail):
            self.init(words: text, detail: detail)
        }
    }
}

/// Passes on how far a work is, from whatever thread it runs on.
private final class Told: Progress {
    private let progress: @Sendable (Double) -> Void

    init(_ progress: @escaping @Sendable (Double) -> Void) {
        self.progress = progress
    }

    func at(permille: UInt16) {
        progress(Double(permille) / 1_000)
    }
}
