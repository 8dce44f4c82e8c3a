//! What changes ten times a second, or while a finger drags: small, so that the screen stays as it is.

/// The moving part of a screen.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Live {
    /// The running seconds, as text to show large; empty when none run.
    pub seconds: String,
    /// Where the needle of the screen's gauge points, degrees as in the scene.
    pub needle_deg: f32,
    /// The reading under the needle, with unit, as text.
    pub reading: String,
    /// One line under the seconds: what to do now.
    pub cue: String,
}
