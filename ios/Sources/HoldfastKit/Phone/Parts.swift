import HoldfastCore

/// The phone's clocks. Timing goes by the monotonic one, which counts sleep and begins anew at each boot.
@MainActor
public protocol PhoneTime {
    /// What the clocks show now.
    func now() -> Clock

    /// Lets so much time pass; false if the waiting was called off.
    func wait(ms: UInt32) async -> Bool
}

/// `keepScreenOn` and `letScreenSleep`.
@MainActor
public protocol ScreenLight {
    /// Keeps the screen lit from now on.
    func keepLit()

    /// The screen may go dark again.
    func letSleep()
}

/// `buzz`: patterns that a hand can tell apart.
@MainActor
public protocol Haptics {
    /// Shakes the phone once in this way.
    func buzz(_ pattern: Buzz)
}

/// `speak`.
@MainActor
public protocol Speech {
    /// Says this aloud, cutting off what is being said; the language is a BCP 47 tag.
    func say(_ text: String, language: String)
}

/// `takePhoto`.
@MainActor
public protocol Camera {
    /// Opens the camera; the path of the photo, or nil if none was taken.
    func take() async -> String?
}

/// `pickPhoto` and `decodePicture`.
@MainActor
public protocol Pictures {
    /// Lets the person pick a picture; the path of a copy of it as it is, or nil if none was picked.
    func pick() async -> String?

    /// Decodes a picture that the core can't; the path of an upright JPEG, or nil if the phone can't either.
    func decode(_ path: String) async -> String?
}

/// `pickBundle`.
@MainActor
public protocol Files {
    /// Lets the person pick a file that holds jobs; the path of a copy of it, or nil if none was picked.
    func pickBundle() async -> String?
}

/// `share`.
@MainActor
public protocol Share {
    /// Hands a file inside the data folder to another program.
    func share(path: String, mime: String, title: String)
}

/// `recordVibration`.
@MainActor
public protocol Motion {
    /// Records for so long how the phone shakes; nil if it can't.
    func record(forMs: UInt32) async -> VibrationRecording?
}

/// How the phone shook.
public struct VibrationRecording: Equatable, Sendable {
    /// Samples a second.
    public let hz: Double
    /// The acceleration in thousandths of the standard acceleration of free fall.
    public let mg: [Double]

    /// A recording of so many samples a second.
    public init(hz: Double, mg: [Double]) {
        self.hz = hz
        self.mg = mg
    }
}

/// `readBarometer`.
@MainActor
public protocol Barometer {
    /// Absolute pressure in Pa, or nil if there is no sensor or no reading.
    func read() async -> Double?
}

/// `watchGauge`: a camera with a program that reads the needle from its picture. There is none in this app yet, so it
/// does not tell the core of one and the core does not offer it.
@MainActor
public protocol GaugeReader {
    /// Looks so often at a gauge with a scale from 0 to `span`; the stream ends when nobody looks any longer.
    func watch(everyMs: UInt32, unit: String, span: Double) -> AsyncStream<GaugeLook>
}

/// What one look at a gauge brings.
public struct GaugeLook: Equatable, Sendable {
    /// Where the needle stands, in the gauge's unit; nil if it was not seen this time.
    public let vacuum: Double?

    /// One look.
    public init(vacuum: Double?) {
        self.vacuum = vacuum
    }
}
