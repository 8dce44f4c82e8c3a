import Darwin
import Foundation
import HoldfastCore
import HoldfastKit

/// The phone's clocks; the monotonic one counts sleep and begins anew at each boot.
struct PhoneClock: PhoneTime {
    private let bootId = Self.boot()

    func now() -> Clock {
        let wall = Date()
        return Clock(
            wallMs: Int64((wall.timeIntervalSince1970 * 1_000).rounded()),
            offsetMin: Int32(TimeZone.current.secondsFromGMT(for: wall) / 60),
            monoMs: Int64(Self.continuousNs() / 1_000_000),
            bootId: bootId
        )
    }

    func wait(ms: UInt32) async -> Bool {
        do {
            try await Task.sleep(for: .milliseconds(Int(ms)), clock: .continuous)
            return true
        } catch {
            return false
        }
    }

    private static func continuousNs() -> UInt64 {
        var base = mach_timebase_info_data_t()
        mach_timebase_info(&base)
        return mach_continuous_time() * UInt64(base.numer) / UInt64(base.denom)
    }

    /// The system's own number of this boot. Where it isn't told, a new one each time: a hold then counts as interrupted
    /// when the app was closed, which is never wrong.
    private static func boot() -> String {
        var size = 0
        guard sysctlbyname("kern.bootsessionuuid", nil, &size, nil, 0) == 0, size > 1 else {
            return UUID().uuidString
        }
        var bytes = [UInt8](repeating: 0, count: size)
        guard sysctlbyname("kern.bootsessionuuid", &bytes, &size, nil, 0) == 0 else { return UUID().uuidString }
        return String(decoding: bytes.prefix { $0 != 0 }, as: UTF8.self)
    }
}
