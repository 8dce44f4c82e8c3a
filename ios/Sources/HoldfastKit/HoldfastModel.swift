import HoldfastCore
import Observation

/// Holds what is to be seen, sends what a person does, and does what the core asks for. After the process dies the core
/// itself knows where the person was.
@MainActor
@Observable
public final class HoldfastModel {
    /// What is to be seen.
    public private(set) var shown = Shown.opening

    /// The part of it that moves.
    public internal(set) var live = Live.still

    /// How much of the work that the person waits for is done, 0 to 1.
    public internal(set) var share = 0.0

    @ObservationIgnored let core: any Core
    @ObservationIgnored let phone: Phone
    @ObservationIgnored private var waiting: [Action] = []
    @ObservationIgnored private var isSending = false
    @ObservationIgnored private var isOpen = false
    @ObservationIgnored var ticks: Task<Void, Never>?
    @ObservationIgnored var gauge: Task<Void, Never>?
    @ObservationIgnored private var errands: [Int: Task<Void, Never>] = [:]
    @ObservationIgnored private var errandsBegun = 0

    /// A model that begins to open the core at once.
    public init(core: any Core, phone: Phone) {
        self.core = core
        self.phone = phone
        errand { await $0.open() }
    }

    /// Sends an action; they arrive in order.
    public func send(_ action: Action) {
        if let last = waiting.last, action.replaces(last) {
            waiting[waiting.count - 1] = action
        } else {
            waiting.append(action)
        }
        sendWaiting()
    }

    /// The refusal shown across the screen has been read.
    public func dismiss() {
        guard case .open(let screen, _) = shown else { return }
        shown = .open(screen: screen, refusal: nil)
    }

    /// Does something that takes its time, beside all else.
    func errand(_ work: @escaping @MainActor (HoldfastModel) async -> Void) {
        errandsBegun += 1
        let number = errandsBegun
        errands[number] = Task {
            await work(self)
            errands[number] = nil
        }
    }

    /// Comes back when all that was sent or asked for has been done; ticks and a watched gauge go on.
    func settle() async {
        while let errand = errands.values.first { await errand.value }
    }

    private func open() async {
        do {
            show(try await core.open(at: phone.time.now()))
            isOpen = true
            sendWaiting()
        } catch {
            shown = .stuck(words: error.words)
        }
    }

    /// One call of the core at a time, in the order in which they were sent.
    private func sendWaiting() {
        guard isOpen, !isSending, !waiting.isEmpty else { return }
        isSending = true
        errand { model in
            while !model.waiting.isEmpty { await model.perform(model.waiting.removeFirst()) }
            model.isSending = false
        }
    }

    private func perform(_ action: Action) async {
        do {
            take(try await core.act(action, at: phone.time.now()))
        } catch {
            guard case .open(let screen, _) = shown else { return }
            shown = .open(screen: screen, refusal: error.words)
        }
    }

    private func take(_ update: Update) {
        if let screen = update.screen { show(screen) }
        if let moving = update.live { live = moving }
        for request in update.requests { fulfil(request) }
    }

    private func show(_ screen: Screen) {
        live = screen.firstLive
        shown = .open(screen: screen, refusal: nil)
    }
}

extension Action {
    /// Whether this makes one that still waits needless: the finger has moved on, the clock comes with the next tick.
    fileprivate func replaces(_ earlier: Action) -> Bool {
        switch (self, earlier) {
        case (.drag, .drag), (.tick, .tick): true
        default: false
        }
    }
}
