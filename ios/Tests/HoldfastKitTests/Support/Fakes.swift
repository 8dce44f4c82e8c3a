import Foundation
import HoldfastCore

@testable import HoldfastKit

/// Answers with what it was told to, once, and remembers what it was asked.
@MainActor
final class FakeCore: Core {
    let first = Screen.plain("first")
    var acted: [Action] = []
    var worked: [UInt64] = []
    var opening: Result<Screen, Refusal>?
    var next: Update?
    var refusal: Refusal?
    var gate: Gate?

    func open(at clock: Clock) async throws(Refusal) -> Screen {
        try (opening ?? .success(first)).get()
    }

    func act(_ action: Action, at clock: Clock) async throws(Refusal) -> Update {
        acted.append(action)
        await gate?.passed()
        if let refusal { throw refusal }
        defer { next = nil }
        return next ?? Update(requests: [], screen: nil, live: nil)
    }

    func work(_ id: UInt64, progress: @escaping @Sendable (Double) -> Void) async {
        worked.append(id)
        progress(0.5)
    }

    /// What the next action leads to.
    func ask(_ requests: Request...) {
        next = Update(requests: requests, screen: nil, live: nil)
    }
}

/// Holds up whoever comes to it until it is opened.
@MainActor
final class Gate {
    private var waiting: [CheckedContinuation<Void, Never>] = []
    private var isOpen = false

    func passed() async {
        if isOpen { return }
        await withCheckedContinuation { waiting.append($0) }
    }

    func open() {
        isOpen = true
        waiting.forEach { $0.resume() }
        waiting = []
    }
}

/// Every part of a phone: remembers what it was asked for and answers with what it has.
@MainActor
final class FakePhone: ScreenLight, Haptics, Speech, Camera, Pictures, Files, Share, Motion, Barometer {
    var asked: [String] = []
    var photo: String?
    var bundle: String?
    var pressure: Double?
    var shake: VibrationRecording?
    var decoded: String?

    func parts(_ time: any PhoneTime, gaugeReader: (any GaugeReader)? = nil) -> Phone {
        Phone(
            time: time, light: self, haptics: self, speech: self, camera: self, pictures: self, files: self,
            share: self, motion: self, barometer: self, gaugeReader: gaugeReader
        )
    }

    func keepLit() { asked.append("keep lit") }

    func letSleep() { asked.append("let sleep") }

    func buzz(_ pattern: Buzz) { asked.append("buzz \(pattern)") }

    func say(_ text: String, language: String) { asked.append("say \(text) \(language)") }

    func take() async -> String? {
        asked.append("take")
        return photo
    }

    func pick() async -> String? {
        asked.append("pick")
        return photo
    }

    func decode(_ path: String) async -> String? {
        asked.append("decode \(path)")
        return decoded
    }

    func pickBundle() async -> String? {
        asked.append("pick bundle")
        return bundle
    }

    func share(path: String, mime: String, title: String) { asked.append("share \(path) \(mime) \(title)") }

    func record(forMs: UInt32) async -> VibrationRecording? {
        asked.append("record \(forMs)")
        return shake
    }

    func read() async -> Double? {
        asked.append("barometer")
        return pressure
    }
}

/// Sees what it is given, then looks away.
@MainActor
struct FakeGaugeReader: GaugeReader {
    let looks: [GaugeLook]

    func watch(everyMs: UInt32, unit: String, span: Double) -> AsyncStream<GaugeLook> {
        AsyncStream { stream in
            looks.forEach { stream.yield($0) }
            stream.finish()
        }
    }
}

extension Screen {
    /// The core's own first screen, as a phone shows it when nothing was recorded yet.
    private static let first: Screen? = {
        let folder = FileManager.default.temporaryDirectory.appendingPathComponent("holdfast-\(UUID().uuidString)")
        defer { try? FileManager.default.removeItem(at: folder) }
        let facts = PhoneFacts(locale: "en-GB", parts: [], fonts: [])
        let clock = Clock(wallMs: 1_773_651_600_000, offsetMin: 0, monoMs: 0, bootId: "first")
        return try? Holdfast.open(dataDir: folder.path, facts: facts, clock: clock).screen()
    }()

    /// That screen with another title, and another body where one is given.
    static func plain(_ title: String, _ body: Body? = nil) -> Screen {
        guard var screen = first else { fatalError("the core gives no first screen") }
        screen.frame.title = title
        if let body { screen.body = body }
        return screen
    }
}
