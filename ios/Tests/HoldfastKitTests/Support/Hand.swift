import Foundation
import HoldfastCore
import XCTest

@testable import HoldfastKit

/// A data folder, a phone whose time a test holds in its hand, and the real core on both.
@MainActor
final class Hand {
    let folder: URL
    let time = HandTime()
    let phone = FakePhone()
    private(set) var model: HoldfastModel

    init() throws {
        folder = FileManager.default.temporaryDirectory.appendingPathComponent("holdfast-\(UUID().uuidString)")
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        model = Hand.open(folder, phone.parts(time))
    }

    /// The process dies and the app is opened anew.
    func newProcess() {
        model = Hand.open(folder, phone.parts(time))
    }

    func clear() throws {
        try FileManager.default.removeItem(at: folder)
    }

    /// What is on the screen now.
    func screen(file: StaticString = #filePath, line: UInt = #line) async throws -> Screen {
        await model.settle()
        switch model.shown {
        case .open(let screen, let refusal):
            XCTAssertNil(refusal, file: file, line: line)
            return screen
        case .stuck(let words): throw Missing(what: "an open core: \(words)")
        case .opening: throw Missing(what: "an open core")
        }
    }

    /// Does it as a person does: what can't be tapped is not tapped, what is typed or drawn goes through its view model.
    func carryOut(_ deed: Deed) async throws {
        time.skip(700)
        switch deed {
        case .tap(let button):
            if let why = button.whyNot { throw Missing(what: "a way to tap \(button.label): \(why)") }
            model.send(button.action)
        case .pick(let action): model.send(action)
        case .write(let field, let text):
            var typed = FieldText(field)
            if let action = typed.type(text) { model.send(action) }
        case .sign(let pad, let stroke): model.send(sign(pad, stroke))
        case .drag(let x, let y): model.send(.drag(x: x, y: y))
        case .wait(let ms): await time.pass(ms, for: model)
        case .leave: break
        }
        await model.settle()
    }

    /// Does what the person wants until they leave or it is enough.
    func play(_ person: inout Person, until enough: (Screen) -> Bool = { _ in false }) async throws {
        for _ in 0..<2_000 {
            let screen = try await screen()
            if enough(screen) { return }
            let deed = try person.next(screen)
            if case .leave = deed { return }
            try await carryOut(deed)
        }
        throw Missing(what: "an end of the job: it stands at \(try await screen().frame.title)")
    }

    private func sign(_ pad: Scene, _ stroke: [Point]) -> Action {
        let frame = SceneFrame(pad, width: 360)
        var pen = Pen()
        for place in stroke { pen.write(at: frame.screen(place)) }
        return pen.lift(in: frame)
    }

    private static func open(_ folder: URL, _ parts: Phone) -> HoldfastModel {
        let able: [PhonePart] = [.camera, .gallery, .barometer, .accelerometer, .speech, .buzzer, .share]
        let facts = PhoneFacts(locale: "en-GB", parts: able, fonts: [])
        return HoldfastModel(core: RustCore(dataFolder: folder.path, facts: facts), phone: parts)
    }
}
