import CoreHaptics
import HoldfastCore
import HoldfastKit

/// `buzz`: patterns that a hand can tell apart.
@MainActor
final class Buzzer: Haptics {
    private var engine: CHHapticEngine?

    func buzz(_ pattern: Buzz) {
        do {
            let engine = try started()
            try engine.makePlayer(with: CHHapticPattern(events: events(of: pattern), parameters: [])).start(atTime: 0)
        } catch {
            // Nothing is lost: what the buzz means stands on the screen. The next one tries a new engine.
            engine = nil
        }
    }

    private func started() throws -> CHHapticEngine {
        let engine = try self.engine ?? CHHapticEngine()
        engine.isAutoShutdownEnabled = true
        try engine.start()
        self.engine = engine
        return engine
    }

    private func events(of pattern: Buzz) -> [CHHapticEvent] {
        let strong = [
            CHHapticEventParameter(parameterID: .hapticIntensity, value: 1),
            CHHapticEventParameter(parameterID: .hapticSharpness, value: 0.5),
        ]
        var events: [CHHapticEvent] = []
        var at = 0.0
        for (place, ms) in buzzTimes(pattern: pattern).enumerated() {
            if place.isMultiple(of: 2) {
                events.append(
                    CHHapticEvent(
                        eventType: .hapticContinuous, parameters: strong, relativeTime: at, duration: Double(ms) / 1_000
                    ))
            }
            at += Double(ms) / 1_000
        }
        return events
    }
}
