//! What only a phone can do. The core asks; the shell obeys and answers with an [`Action`](super::Action).

/// A thing the shell has to do now.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Request {
    /// Send [`Action::Tick`](super::Action::Tick) every `every_ms` from now on.
    StartTicks {
        /// Milliseconds between ticks.
        every_ms: u32,
    },
    /// Send no more ticks.
    StopTicks,
    /// Keep the screen lit until [`Request::LetScreenSleep`].
    KeepScreenOn,
    /// The screen may go dark again.
    LetScreenSleep,
    /// Shake the phone in a way that can be told apart.
    Buzz {
        /// Which way.
        pattern: Buzz,
    },
    /// Say this aloud, cutting off what is being said.
    Speak {
        /// The words.
        text: String,
        /// BCP 47 language tag of the words.
        language: String,
    },
    /// Open the camera; answer with `PhotoTaken` or `PhotoNotTaken`.
    TakePhoto,
    /// Open the gallery; answer with `PhotoTaken` or `PhotoNotTaken`.
    PickPhoto,
    /// Decode this picture, if the phone can, into an upright JPEG; answer with `PhotoTaken` or `PictureNotDecoded`.
    DecodePicture {
        /// Path of the file that `PhotoTaken` named.
        path: String,
    },
    /// Ask for a file that holds jobs; answer with `BundleTaken` or `BundleNotTaken`.
    PickBundle,
    /// Read the pressure sensor once; answer with `BarometerRead`.
    ReadBarometer,
    /// Watch the gauge by camera: answer with `GaugeSeen` so often, or with `GaugeNotSeen`.
    WatchGauge {
        /// Milliseconds between frames.
        every_ms: u32,
        /// Symbol of the unit on the gauge's scale.
        unit: String,
        /// End of the scale, in that unit.
        span: f64,
    },
    /// Watch the gauge no longer.
    StopWatchingGauge,
    /// Record the vibration of the place where the phone lies; answer with `VibrationRecorded` or
    /// `VibrationNotRecorded`.
    RecordVibration {
        /// For how long, ms.
        for_ms: u32,
    },
    /// Hand a file to another program.
    Share {
        /// Path inside the data folder.
        path: String,
        /// Media type.
        mime: String,
        /// What the file is called to a person.
        title: String,
    },
    /// Fetch this work by its id, run it on another thread, then send `WorkDone`.
    Work {
        /// Which work.
        id: u64,
    },
}

/// Ways to shake that a hand can tell apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Buzz {
    /// One short tick: five more seconds have passed.
    Tick,
    /// Two short: something was taken in, or is reached.
    Done,
    /// Three short: the clock runs.
    Start,
    /// One long: read the gauge now.
    ReadNow,
    /// Two long: over, there is a result.
    End,
    /// Three long: stop, look at the screen.
    Alarm,
}

impl Buzz {
    /// Milliseconds of shaking and of rest by turns, beginning with shaking.
    #[must_use]
    pub fn times_ms(self) -> &'static [u32] {
        match self {
            Self::Tick => &[40],
            Self::Done => &[60, 90, 60],
            Self::Start => &[60, 90, 60, 90, 60],
            Self::ReadNow => &[700],
            Self::End => &[400, 200, 400],
            Self::Alarm => &[500, 200, 500, 200, 500],
        }
    }
}

/// What an action led to.
#[derive(Debug, Clone, PartialEq, Default)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Update {
    /// To be done by the shell, in order.
    pub requests: Vec<Request>,
    /// The new screen, if it changed.
    pub screen: Option<super::Screen>,
    /// The moving part, if it changed.
    pub live: Option<super::Live>,
}
