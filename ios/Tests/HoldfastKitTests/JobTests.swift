import Foundation
import HoldfastCore
import XCTest

@testable import HoldfastKit

/// Whole jobs through the model, with the real core behind it: the scenario that the Android shell's tests play, too.
@MainActor
final class JobTests: XCTestCase {
    func test_a_job_from_complaint_to_shared_report() async throws {
        let hand = try Hand()
        var person = Person(try Scenario())
        var seen: [String] = []
        try await hand.play(&person) { screen in
            seen.append(screen.body.name)
            return false
        }
        for name in ["vehicle", "prepare", "overview", "test", "hold", "finding", "repaired", "costs", "approval"] {
            XCTAssert(seen.contains(name), "\(name) was not seen")
        }
        let shared = try unwrapped(hand.phone.asked.last { $0.hasPrefix("share ") }, "a shared report")
        let path = String(shared.split(separator: " ")[1])
        let file = try unwrapped(DataFolder(hand.folder).file(path), "a file in the data folder")
        XCTAssertEqual(try Data(contentsOf: file).prefix(4), Data("%PDF".utf8))
        XCTAssertGreaterThan(hand.model.share, 0, "the work told how far it was")
        try hand.clear()
    }

    func test_a_new_process_comes_back_to_a_running_hold_which_was_interrupted() async throws {
        let hand = try Hand()
        var person = Person(try Scenario())
        try await hand.play(&person) { $0.isWatching }
        let before = try await hand.screen()
        XCTAssert(before.isWatching)
        hand.newProcess()
        let after = try await hand.screen()
        XCTAssertEqual(after.frame.title, before.frame.title)
        guard case .hold(let hold) = after.body, case .interrupted = hold.phase else {
            return XCTFail("it stands at \(after.body.name)")
        }
        try hand.clear()
    }

    func test_what_was_typed_is_there_in_a_new_process() async throws {
        let hand = try Hand()
        let jobs = try await hand.screen()
        guard case .jobs(let list) = jobs.body else { return XCTFail("it stands at \(jobs.body.name)") }
        try await hand.carryOut(.tap(list.newJob))
        hand.model.send(.type(field: .plate, text: "HF 7"))
        await hand.model.settle()
        hand.newProcess()
        guard case .vehicle(let form) = try await hand.screen().body else { return XCTFail("another screen") }
        XCTAssertEqual(form.items.compactMap(\.field).first { $0.id == .plate }?.value, "HF 7")
        try hand.clear()
    }
}

extension Screen {
    var isWatching: Bool {
        guard case .hold(let hold) = body, case .watch = hold.phase else { return false }
        return true
    }
}

extension Body {
    /// The case's own name.
    var name: String {
        Mirror(reflecting: self).children.first?.label ?? "\(self)"
    }
}
