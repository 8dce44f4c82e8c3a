import CoreMotion
import HoldfastKit

/// `recordVibration`: the size of the acceleration as fast as the sensor gives it. Small shakes change it by their part
/// along gravity.
@MainActor
final class Accelerometer: Motion {
    /// As fast as phones give it.
    private static let interval = 0.01

    private let sensor = CMMotionManager()

    func record(forMs: UInt32) async -> VibrationRecording? {
        guard sensor.isAccelerometerAvailable, !sensor.isAccelerometerActive else { return nil }
        var sizes: [Double] = []
        var (first, last) = (0.0, 0.0)
        sensor.accelerometerUpdateInterval = Self.interval
        sensor.startAccelerometerUpdates(to: .main) { sample, _ in
            guard let sample else { return }
            MainActor.assumeIsolated {
                // In units of the standard acceleration of free fall.
                let (x, y, z) = (sample.acceleration.x, sample.acceleration.y, sample.acceleration.z)
                if sizes.isEmpty { first = sample.timestamp }
                last = sample.timestamp
                sizes.append((x * x + y * y + z * z).squareRoot() * 1_000)
            }
        }
        try? await Task.sleep(for: .milliseconds(Int(forMs)))
        sensor.stopAccelerometerUpdates()
        guard last > first else { return nil }
        return VibrationRecording(hz: Double(sizes.count - 1) / (last - first), mg: sizes)
    }
}
