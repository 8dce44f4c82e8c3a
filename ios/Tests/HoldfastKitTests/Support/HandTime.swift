import HoldfastCore

@testable import HoldfastKit

/// A phone's clocks that go on only when a test says so.
@MainActor
final class HandTime: PhoneTime {
    /// The monotonic clock.
    private(set) var monoMs: Int64 = 60_000
    /// Changes when the phone is started anew.
    var bootId = "first"
    /// How far the wall clock was set forward or back.
    var wallSetMs: Int64 = 0

    private var sleepers: [Sleeper] = []
    private var begun = 0
    private var expecting: CheckedContinuation<Void, Never>?

    private struct Sleeper {
        let number: Int
        let dueMs: Int64
        let wake: CheckedContinuation<Bool, Never>
    }

    /// How many wait for time to pass.
    var waiting: Int { sleepers.count }

    func now() -> Clock {
        // A morning in March, invented.
        Clock(wallMs: 1_773_651_600_000 + monoMs + wallSetMs, offsetMin: 0, monoMs: monoMs, bootId: bootId)
    }

    func wait(ms: UInt32) async -> Bool {
        begun += 1
        let number = begun
        return await withTaskCancellationHandler {
            await withCheckedContinuation { wake in
                if Task.isCancelled {
                    wake.resume(returning: false)
                } else {
                    sleepers.append(Sleeper(number: number, dueMs: monoMs + Int64(ms), wake: wake))
                }
                expecting?.resume()
                expecting = nil
            }
        } onCancel: {
            MainActor.assumeIsolated { self.wake(number, with: false) }
        }
    }

    /// The phone's hand needs a moment; nobody is woken.
    func skip(_ ms: Int64) {
        monoMs += ms
    }

    /// Time passes: each tick that is due comes in its turn, and the model does what it leads to.
    func pass(_ ms: Int64, for model: HoldfastModel) async {
        await model.settle()
        let end = monoMs + ms
        while let next = sleepers.min(by: { $0.dueMs < $1.dueMs }), next.dueMs <= end {
            monoMs = max(monoMs, next.dueMs)
            await withCheckedContinuation { waitsAgain in
                expecting = waitsAgain
                wake(next.number, with: true)
            }
            await model.settle()
        }
        monoMs = max(monoMs, end)
    }

    private func wake(_ number: Int, with passed: Bool) {
        guard let place = sleepers.firstIndex(where: { $0.number == number }) else { return }
        sleepers.remove(at: place).wake.resume(returning: passed)
    }
}
