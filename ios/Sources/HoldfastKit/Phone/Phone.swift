/// What only a phone can do: one part for each kind of request. The app brings Apple's; tests bring their own.
@MainActor
public struct Phone {
    /// Clocks, and waiting.
    public var time: any PhoneTime
    /// Whether the screen stays lit.
    public var light: any ScreenLight
    /// What can be felt.
    public var haptics: any Haptics
    /// What can be heard.
    public var speech: any Speech
    /// Takes photos.
    public var camera: any Camera
    /// Pictures that are there already.
    public var pictures: any Pictures
    /// Files with jobs.
    public var files: any Files
    /// Hands files to other programs.
    public var share: any Share
    /// Feels how the phone shakes.
    public var motion: any Motion
    /// Feels the air's pressure.
    public var barometer: any Barometer
    /// Reads a gauge from the camera's picture; none so far.
    public var gaugeReader: (any GaugeReader)?

    /// A phone of these parts.
    public init(
        time: any PhoneTime,
        light: any ScreenLight,
        haptics: any Haptics,
        speech: any Speech,
        camera: any Camera,
        pictures: any Pictures,
        files: any Files,
        share: any Share,
        motion: any Motion,
        barometer: any Barometer,
        gaugeReader: (any GaugeReader)? = nil
    ) {
        self.time = time
        self.light = light
        self.haptics = haptics
        self.speech = speech
        self.camera = camera
        self.pictures = pictures
        self.files = files
        self.share = share
        self.motion = motion
        self.barometer = barometer
        self.gaugeReader = gaugeReader
    }
}
