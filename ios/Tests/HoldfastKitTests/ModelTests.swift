import HoldfastCore
import XCTest

@testable import HoldfastKit

/// The model sends what a person does, in order, and does what the core asks for.
@MainActor
final class ModelTests: XCTestCase {
    private let core = FakeCore()
    private let phone = FakePhone()
    private let time = HandTime()

    private func opened(_ reader: FakeGaugeReader? = nil) async -> HoldfastModel {
        let model = HoldfastModel(core: core, phone: phone.parts(time, gaugeReader: reader))
        await model.settle()
        return model
    }

    func test_the_first_screen_is_the_one_the_core_opens_with() async {
        let model = await opened()
        XCTAssertEqual(model.shown, .open(screen: core.first, refusal: nil))
    }

    func test_a_core_that_does_not_open_says_why() async {
        core.opening = .failure(Refusal(words: "newer data", detail: ""))
        let model = await opened()
        model.send(.newJob)
        await model.settle()
        XCTAssertEqual(model.shown, .stuck(words: "newer data"))
        XCTAssertEqual(core.acted, [])
    }

    func test_what_is_sent_before_the_core_is_open_is_not_lost() async {
        let model = HoldfastModel(core: core, phone: phone.parts(time))
        model.send(.resume)
        await model.settle()
        XCTAssertEqual(core.acted, [.resume])
    }

    func test_actions_arrive_in_order() async {
        let model = await opened()
        let sent: [Action] = [.stroke, .stroke, .unStroke, .letGo]
        for action in sent { model.send(action) }
        await model.settle()
        XCTAssertEqual(core.acted, sent)
    }

    func test_of_drags_that_wait_only_the_last_is_sent() async {
        let model = await opened()
        let gate = Gate()
        core.gate = gate
        model.send(.stroke)
        while core.acted.isEmpty { await Task.yield() }
        for step in 1...20 { model.send(.drag(x: Float(step), y: 0)) }
        model.send(.letGo)
        model.send(.drag(x: 0, y: 1))
        gate.open()
        await model.settle()
        XCTAssertEqual(core.acted, [.stroke, .drag(x: 20, y: 0), .letGo, .drag(x: 0, y: 1)])
    }

    func test_ticks_come_until_they_are_stopped() async {
        let model = await opened()
        core.ask(.startTicks(everyMs: 100))
        model.send(.beginTest)
        await time.pass(1_050, for: model)
        XCTAssertEqual(core.acted.filter { $0 == .tick }.count, 10)
        core.ask(.stopTicks)
        model.send(.letGo)
        await time.pass(1_000, for: model)
        XCTAssertEqual(core.acted.filter { $0 == .tick }.count, 10)
        XCTAssertEqual(time.waiting, 0)
    }

    func test_ticks_that_are_asked_for_anew_replace_the_old_ones() async {
        let model = await opened()
        core.ask(.startTicks(everyMs: 100), .startTicks(everyMs: 500))
        model.send(.beginTest)
        await time.pass(1_000, for: model)
        XCTAssertEqual(core.acted.filter { $0 == .tick }.count, 2)
    }

    func test_every_request_of_the_phone_reaches_it() async {
        let model = await opened()
        core.ask(
            .keepScreenOn, .letScreenSleep, .buzz(pattern: .readNow), .speak(text: "stop", language: "en-GB"),
            .share(path: "reports/a.pdf", mime: "application/pdf", title: "Report")
        )
        model.send(.resume)
        await model.settle()
        XCTAssertEqual(
            phone.asked,
            ["keep lit", "let sleep", "buzz readNow", "say stop en-GB", "share reports/a.pdf application/pdf Report"])
    }

    func test_what_the_phone_found_goes_to_the_core() async {
        let model = await opened()
        phone.photo = "a.jpg"
        phone.decoded = "b.jpg"
        phone.bundle = "a.zip"
        phone.pressure = 98_600
        phone.shake = VibrationRecording(hz: 100, mg: [1, -1])
        await expect(model, .takePhoto, .photoTaken(path: "a.jpg"))
        await expect(model, .pickPhoto, .photoTaken(path: "a.jpg"))
        await expect(model, .decodePicture(path: "a.heic"), .photoTaken(path: "b.jpg"))
        await expect(model, .pickBundle, .bundleTaken(path: "a.zip"))
        await expect(model, .readBarometer, .barometerRead(pa: 98_600))
        await expect(model, .recordVibration(forMs: 4_000), .vibrationRecorded(hz: 100, mg: [1, -1]))
        XCTAssertEqual(phone.asked, ["take", "pick", "decode a.heic", "pick bundle", "barometer", "record 4000"])
    }

    func test_what_the_phone_did_not_find_is_told_too() async {
        let model = await opened()
        await expect(model, .takePhoto, .photoNotTaken)
        await expect(model, .pickPhoto, .photoNotTaken)
        await expect(model, .decodePicture(path: "a.heic"), .pictureNotDecoded)
        await expect(model, .pickBundle, .bundleNotTaken)
        await expect(model, .readBarometer, .barometerMissing)
        await expect(model, .recordVibration(forMs: 4_000), .vibrationNotRecorded)
        await expect(model, .watchGauge(everyMs: 100, unit: "inHg", span: 30), .gaugeNotSeen)
    }

    func test_a_watched_gauge_is_told_look_by_look_and_its_end_too() async {
        let model = await opened(FakeGaugeReader(looks: [GaugeLook(vacuum: 19.5), GaugeLook(vacuum: nil)]))
        core.ask(.watchGauge(everyMs: 100, unit: "inHg", span: 30))
        model.send(.watchByCamera)
        await model.settle()
        await model.gauge?.value
        await model.settle()
        XCTAssertEqual(core.acted.dropFirst(), [.gaugeSeen(vacuum: 19.5), .gaugeSeen(vacuum: nil), .gaugeNotSeen])
    }

    func test_work_is_done_and_then_told() async {
        let model = await opened()
        await expect(model, .work(id: 7), .workDone(id: 7))
        XCTAssertEqual(core.worked, [7])
        XCTAssertEqual(model.share, 0.5)
    }

    func test_a_hold_brings_its_moving_part_and_updates_replace_it() async {
        let model = await opened()
        let live = Live(seconds: "14", needleDeg: 300, reading: "", cue: "")
        let gauge = Scene(width: 100, height: 100, alt: "gauge", items: [])
        let hold = HoldScreen(gauge: gauge, live: live, phase: .watch(prompt: "", buttons: []))
        core.next = Update(requests: [], screen: .plain("hold", .hold(hold: hold)), live: nil)
        model.send(.letGo)
        await model.settle()
        XCTAssertEqual(model.live.seconds, "14")
        core.next = Update(requests: [], screen: nil, live: Live(seconds: "15", needleDeg: 301, reading: "", cue: ""))
        model.send(.tick)
        await model.settle()
        XCTAssertEqual(model.live.seconds, "15")
    }

    private func expect(_ model: HoldfastModel, _ request: Request, _ answer: Action) async {
        core.ask(request)
        model.send(.resume)
        await model.settle()
        XCTAssertEqual(core.acted.last, answer)
    }
}
