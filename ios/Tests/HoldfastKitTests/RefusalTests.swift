import Foundation
import XCTest

@testable import HoldfastCore
@testable import HoldfastKit

/// What the core can't do is told in its own words, which say what a person can do.
@MainActor
final class RefusalTests: XCTestCase {
    func test_a_folder_that_can_t_be_made_leaves_nothing_but_the_words() async throws {
        let hand = try Hand()
        let blocked = hand.folder.appendingPathComponent("file")
        try Data().write(to: blocked)
        let facts = PhoneFacts(locale: "en-GB", parts: [], fonts: [])
        let core = RustCore(dataFolder: blocked.appendingPathComponent("data").path, facts: facts)
        let model = HoldfastModel(core: core, phone: hand.phone.parts(hand.time))
        await model.settle()
        guard case .stuck(let words) = model.shown else { return XCTFail("\(model.shown)") }
        XCTAssertFalse(words.isEmpty)
        XCTAssertFalse(words.contains(blocked.path), "the detail is for a log")
        await hand.model.settle()
        try hand.clear()
    }

    func test_a_refusal_is_shown_over_the_screen_until_it_is_dismissed() async {
        let core = FakeCore()
        let model = HoldfastModel(core: core, phone: FakePhone().parts(HandTime()))
        core.refusal = Refusal(words: "The phone is full.", detail: "no space")
        model.send(.confirm)
        await model.settle()
        XCTAssertEqual(model.shown, .open(screen: core.first, refusal: "The phone is full."))
        model.dismiss()
        XCTAssertEqual(model.shown, .open(screen: core.first, refusal: nil))
    }

    func test_each_kind_of_error_keeps_the_words_for_the_person() async {
        let errors: [HoldfastError] = [
            .CorrectEntry(text: "a", detail: "x"), .FreeSpace(text: "a", detail: "x"),
            .UpdateApp(text: "a", detail: "x"), .TryAgain(text: "a", detail: "x"), .ExportData(text: "a", detail: "x"),
        ]
        for error in errors { XCTAssertEqual(Refusal(error), Refusal(words: "a", detail: "x")) }
    }

    func test_a_file_outside_the_data_folder_is_not_handed_on() async {
        let folder = DataFolder(URL(fileURLWithPath: "/data/holdfast"))
        XCTAssertEqual(folder.file("reports/a.pdf")?.path, "/data/holdfast/reports/a.pdf")
        XCTAssertEqual(folder.file("/data/holdfast/reports/a.pdf")?.path, "/data/holdfast/reports/a.pdf")
        XCTAssertNil(folder.file("../other"))
        XCTAssertNil(folder.file("/data/holdfast-other/a.pdf"))
        XCTAssertNil(folder.file("/etc/passwd"))
    }
}
