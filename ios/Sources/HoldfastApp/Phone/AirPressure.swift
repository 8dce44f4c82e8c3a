import CoreMotion
import HoldfastKit

/// `readBarometer`: one reading of the pressure sensor, or none within two seconds, or where the person doesn't allow it.
@MainActor
final class AirPressure: Barometer {
    private static let patience = Duration.seconds(2)

    private let sensor = CMAltimeter()
    private var waiting: CheckedContinuation<Double?, Never>?

    func read() async -> Double? {
        guard CMAltimeter.isRelativeAltitudeAvailable(), waiting == nil else { return nil }
        let late = Task {
            try? await Task.sleep(for: Self.patience)
            end(nil)
        }
        defer { late.cancel() }
        return await withCheckedContinuation { waiting in
            self.waiting = waiting
            sensor.startRelativeAltitudeUpdates(to: .main) { sample, _ in
                // The sensor reports kPa.
                let pa = sample.map { $0.pressure.doubleValue * 1_000 }
                MainActor.assumeIsolated { self.end(pa) }
            }
        }
    }

    private func end(_ pa: Double?) {
        guard let waiting else { return }
        self.waiting = nil
        sensor.stopRelativeAltitudeUpdates()
        waiting.resume(returning: pa)
    }
}
