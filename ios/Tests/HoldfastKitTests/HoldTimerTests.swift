import HoldfastCore
import XCTest

@testable import HoldfastKit

/// The running seconds of a hold go by the monotonic clock, whatever the wall clock does.
@MainActor
final class HoldTimerTests: XCTestCase {
    private func watching() async throws -> Hand {
        let hand = try Hand()
        var person = Person(try Scenario())
        try await hand.play(&person) { $0.isWatching }
        return hand
    }

    func test_seconds_run_with_the_monotonic_clock() async throws {
        let hand = try await watching()
        await hand.time.pass(5_000, for: hand.model)
        let before = try unwrapped(Double(hand.model.live.seconds), "seconds")
        await hand.time.pass(3_000, for: hand.model)
        let after = try unwrapped(Double(hand.model.live.seconds), "seconds")
        XCTAssertEqual(after - before, 3)
        XCTAssertEqual(hand.time.waiting, 1, "one clockwork runs")
        try hand.clear()
    }

    func test_a_wall_clock_that_is_set_changes_no_seconds() async throws {
        let hand = try await watching()
        await hand.time.pass(4_000, for: hand.model)
        let before = try unwrapped(Double(hand.model.live.seconds), "seconds")
        hand.time.wallSetMs = 3_600_000
        await hand.time.pass(1_000, for: hand.model)
        XCTAssertEqual(Double(hand.model.live.seconds), before + 1)
        try hand.clear()
    }

    func test_when_the_time_is_up_the_phone_buzzes_and_speaks_and_the_ticks_end() async throws {
        let hand = try await watching()
        hand.phone.asked = []
        for _ in 0..<600 where try await hand.screen().isWatching { await hand.time.pass(1_000, for: hand.model) }
        guard case .hold(let hold) = try await hand.screen().body, case .read = hold.phase else {
            return XCTFail("no reading is asked for")
        }
        XCTAssert(hand.phone.asked.contains("buzz readNow"), "\(hand.phone.asked)")
        XCTAssert(hand.phone.asked.contains { $0.hasPrefix("say ") && $0.hasSuffix(" en-GB") }, "\(hand.phone.asked)")
        XCTAssertEqual(hand.time.waiting, 0)
        try hand.clear()
    }

    func test_another_boot_interrupts_the_hold() async throws {
        let hand = try await watching()
        hand.time.bootId = "second"
        await hand.time.pass(1_000, for: hand.model)
        guard case .hold(let hold) = try await hand.screen().body, case .interrupted = hold.phase else {
            return XCTFail("it goes on as if nothing had happened")
        }
        try hand.clear()
    }
}
