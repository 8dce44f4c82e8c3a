//! What the phone tells the core: about itself once, and the time with every action.

/// What is known of the phone when the core is opened.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PhoneFacts {
    /// BCP 47 language tag, such as `en-GB`.
    pub locale: String,
    /// What this phone can do.
    pub parts: Vec<PhonePart>,
    /// Paths of font files that this phone has, for names in scripts that the report's own family lacks.
    pub fonts: Vec<String>,
}

/// Something a phone may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum PhonePart {
    /// A camera that [`Request::TakePhoto`](super::Request::TakePhoto) can use.
    Camera,
    /// A gallery or file picker.
    Gallery,
    /// A pressure sensor.
    Barometer,
    /// A camera with a program that reads a gauge's needle from its picture.
    GaugeReader,
    /// An accelerometer.
    Accelerometer,
    /// A voice.
    Speech,
    /// A vibration motor.
    Buzzer,
    /// A way to hand a file to another program.
    Share,
}

/// The phone's clocks at the moment of an action.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Clock {
    /// Wall clock, milliseconds since 1970-01-01T00:00Z. Never used for timing.
    pub wall_ms: i64,
    /// Local time's offset from UTC in minutes.
    pub offset_min: i32,
    /// Monotonic clock that counts sleep, milliseconds since an arbitrary start.
    pub mono_ms: i64,
    /// Changes at each boot: a monotonic time of another boot can't be compared.
    pub boot_id: String,
}
