//! The vacuum hold test: pump → let go → watch → read.
//!
//! All timing is monotonic: the wall clock may be set back in the middle and nothing changes. The clock starts when
//! the person lets go; a reading belongs to the moment when it was asked for or when the person said "read now",
//! not to the moment when typing ended.
//!
//! | event | in | leads to |
//! |---|---|---|
//! | `Stroke`, `UnStroke` | pumping | pumping, one stroke more or less |
//! | `LetGo` | pumping | first reading asked for, the clock runs |
//! | `WillNotBuild` | pumping | highest reading asked for |
//! | `Confirm` with a valid reading | first reading | watching until the set time |
//! | `Confirm` with a valid reading | highest reading | reading handed in |
//! | `KeepReading` | first, highest, later reading | as `Confirm`, with a figure outside the gauge's range |
//! | `Tick` before the set time | watching | watching; a buzz each five seconds |
//! | `Tick` at the set time | watching | reading asked for, a long buzz, "read it now" |
//! | `ReadNow` | watching | reading asked for, at this moment |
//! | `Confirm` with a valid reading | reading | reading handed in |
//! | any, on another boot | watching, reading | interrupted |
//! | reopened after a kill | first reading, watching, reading | interrupted |
//! | `GoOn` | interrupted, same boot | watching, from where it is |
//! | `UseWhatThereIs` | interrupted, with a later reading | reading handed in |
//! | `StartAgain` | interrupted, first reading, watching, reading | pumping from nothing |
//! | `WatchByCamera`, `WatchByEye` | pumping | pumping, watched that way; by camera see [`super::hold_camera`] |

use holdfast_diagnose::{Answer, HoldAnswer, HoldCourse};
use holdfast_measure::PressureUnit;
use serde::{Deserialize, Serialize};

use crate::protocol::Clock;

/// Frames a second of a gauge watched by camera.
pub(crate) const FRAMES_HZ: f64 = 10.0;

/// Where a hold test stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) enum HoldAt {
    /// Pumping up to the target.
    Pump {
        /// Strokes so far.
        strokes: u32,
        /// Who watches the gauge.
        #[serde(default)]
        watcher: Watcher,
    },
    /// The reading at the moment of letting go is asked for.
    First {
        /// Strokes made.
        strokes: u32,
        /// When pumping stopped.
        since: Moment,
        /// As typed.
        typed: String,
    },
    /// The highest reading is asked for: the target is never reached.
    Highest {
        /// Strokes made.
        strokes: u32,
        /// As typed.
        typed: String,
    },
    /// Watching the needle.
    Watch(Running),
    /// A later reading is asked for.
    Read {
        /// The hold.
        hold: Running,
        /// Seconds since pumping stopped at which it was asked for.
        at_s: f64,
        /// As typed.
        typed: String,
    },
    /// Cut off.
    Interrupted {
        /// What there is of it.
        hold: Running,
        /// By what.
        by: CutOff,
    },
}

/// Who watches the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) enum Watcher {
    /// A person, who reads it when asked.
    #[default]
    Eye,
    /// The phone's camera, ten times a second.
    Camera,
}

/// What cut a hold off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) enum CutOff {
    /// The process was ended; the phone's monotonic clock still counts.
    Killed,
    /// The phone was started anew; nothing is known of the time between.
    Restarted,
    /// The camera did not see the needle.
    Unseen,
}

/// A moment on the monotonic clock of one boot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Moment {
    /// Milliseconds on that clock.
    pub mono_ms: i64,
    /// Which boot.
    pub boot_id: String,
}

impl Moment {
    /// Now.
    pub(crate) fn now(clock: &Clock) -> Self {
        Self {
            mono_ms: clock.mono_ms,
            boot_id: clock.boot_id.clone(),
        }
    }

    /// Seconds from this moment to now; none on another boot, where the two can't be compared.
    pub(crate) fn elapsed_s(&self, clock: &Clock) -> Option<f64> {
        (self.boot_id == clock.boot_id).then(|| seconds(clock.mono_ms.saturating_sub(self.mono_ms)))
    }
}

/// Whole milliseconds as seconds; a clock that runs back counts as standing still.
fn seconds(ms: i64) -> f64 {
    i32::try_from(ms.max(0)).map_or(f64::from(i32::MAX), f64::from) / 1_000.0
}

/// A hold under way: what it has so far.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Running {
    /// Strokes made.
    pub strokes: u32,
    /// When pumping stopped.
    pub since: Moment,
    /// Who watches the gauge.
    #[serde(default)]
    pub watcher: Watcher,
    /// The reading when pumping stopped, in `unit`; none: cut off before it was entered or seen.
    pub start: Option<f64>,
    /// Symbol of the unit the gauge is read in.
    pub unit: String,
    /// Seconds since pumping stopped, and the reading then; of a camera's only the last that is in the log.
    pub readings: Vec<(f64, f64)>,
    /// Seconds since pumping stopped at which the next reading is due.
    pub due_s: f64,
    /// Longest time without a tick while watching, s, where it was longer than ticks should be apart.
    pub gap_s: Option<f64>,
}

impl Running {
    /// Whether there is a later reading, so that something can be handed in.
    pub(crate) fn is_read(&self) -> bool {
        self.start.is_some() && !self.readings.is_empty()
    }

    /// The answer to hand in, `seen` being the camera's trace; none while there is no later reading.
    pub(crate) fn answer(&self, seen: Vec<Option<f64>>) -> Option<Answer> {
        let start = self.start.filter(|_| self.is_read())?;
        let course = match self.watcher {
            Watcher::Eye => HoldCourse::Spots {
                start,
                readings: self.readings.clone(),
            },
            Watcher::Camera => HoldCourse::Trace {
                hz: FRAMES_HZ,
                readings: seen,
            },
        };
        Some(Answer::Hold(HoldAnswer {
            unit: PressureUnit::from_symbol(&self.unit)?,
            course,
            strokes: counted(self.strokes),
            hand_timed: false,
        }))
    }

    /// The same hold with what the eye has to go on from: the camera's first and last reading.
    pub(crate) fn by_eye(self) -> Self {
        Self {
            watcher: Watcher::Eye,
            ..self
        }
    }

    /// The last reading taken.
    pub(crate) fn last(&self) -> Option<f64> {
        self.readings.last().map(|(_, reading)| *reading).or(self.start)
    }

    /// The same hold, watched on for `more_s` after the last reading, or read as soon as possible if that has passed.
    pub(crate) fn gone_on(mut self, more_s: f64) -> Self {
        let last = self.readings.last().map_or(0.0, |(at, _)| *at);
        self.due_s = last + more_s.max(1.0);
        self
    }
}

/// The answer when the target was never reached.
pub(crate) fn never_reached(highest: f64, unit: PressureUnit, strokes: u32) -> Answer {
    Answer::Hold(HoldAnswer {
        unit,
        course: HoldCourse::NeverReached { highest },
        strokes: counted(strokes),
        hand_timed: false,
    })
}

/// Strokes as the physics wants them; none counted means not known.
fn counted(strokes: u32) -> Option<f64> {
    (strokes > 0).then(|| f64::from(strokes))
}

impl HoldAt {
    /// A hold from the beginning.
    pub(crate) fn begin() -> Self {
        Self::begin_watched(Watcher::Eye)
    }

    /// A hold from the beginning, watched in a way.
    pub(crate) fn begin_watched(watcher: Watcher) -> Self {
        Self::Pump { strokes: 0, watcher }
    }

    /// Who watches the gauge.
    pub(crate) fn watcher(&self) -> Watcher {
        match self {
            Self::Pump { watcher, .. } => *watcher,
            Self::First { .. } | Self::Highest { .. } => Watcher::Eye,
            Self::Watch(hold) | Self::Read { hold, .. } | Self::Interrupted { hold, .. } => hold.watcher,
        }
    }

    /// Whether the camera has to watch now.
    pub(crate) fn is_watched_by_camera(&self) -> bool {
        matches!(self, Self::Pump { .. } | Self::Watch(_)) && self.watcher() == Watcher::Camera
    }

    /// The hold under way, where there is one to be cut off. `unit` is used where none was fixed yet.
    fn cut_off(self, by: CutOff, unit: &str) -> Self {
        match self {
            Self::Watch(hold) | Self::Read { hold, .. } | Self::Interrupted { hold, .. } => {
                Self::Interrupted { hold, by }
            }
            Self::First { strokes, since, .. } => Self::Interrupted {
                hold: Running {
                    strokes,
                    since,
                    watcher: Watcher::Eye,
                    start: None,
                    unit: unit.to_owned(),
                    readings: Vec::new(),
                    due_s: 0.0,
                    gap_s: None,
                },
                by,
            },
            other => other,
        }
    }

    /// As it stands after the process was ended and opened again.
    pub(crate) fn reopened(self, clock: &Clock, unit: &str) -> Self {
        let by = match self.since() {
            Some(since) if since.boot_id != clock.boot_id => CutOff::Restarted,
            _ => CutOff::Killed,
        };
        self.cut_off(by, unit)
    }

    /// As it stands on this clock: another boot cuts it off.
    pub(crate) fn checked(self, clock: &Clock, unit: &str) -> Self {
        match self.since() {
            Some(since) if since.boot_id != clock.boot_id => self.cut_off(CutOff::Restarted, unit),
            _ => self,
        }
    }

    /// When pumping stopped.
    pub(crate) fn since(&self) -> Option<&Moment> {
        match self {
            Self::Pump { .. } | Self::Highest { .. } => None,
            Self::First { since, .. } => Some(since),
            Self::Watch(hold) | Self::Read { hold, .. } | Self::Interrupted { hold, .. } => Some(&hold.since),
        }
    }

    /// What there is of it, once pumping has stopped and a first reading was asked for.
    pub(crate) fn running(&self) -> Option<&Running> {
        match self {
            Self::Watch(hold) | Self::Read { hold, .. } | Self::Interrupted { hold, .. } => Some(hold),
            Self::Pump { .. } | Self::First { .. } | Self::Highest { .. } => None,
        }
    }

    /// The same with another text in its reading's field.
    pub(crate) fn typed(mut self, text: &str) -> Self {
        if let Self::First { typed, .. } | Self::Highest { typed, .. } | Self::Read { typed, .. } = &mut self
        {
            *typed = text.chars().take(40).collect();
        }
        self
    }

    /// What broke it off, as the log says it.
    pub(crate) fn cut_off_by(&self) -> &'static str {
        match self {
            Self::Interrupted {
                by: CutOff::Killed, ..
            } => "killed",
            Self::Interrupted {
                by: CutOff::Restarted,
                ..
            } => "restarted",
            Self::Interrupted {
                by: CutOff::Unseen, ..
            } => "unseen",
            _ => "left",
        }
    }

    /// Whether seconds run.
    pub(crate) fn is_timed(&self) -> bool {
        matches!(self, Self::First { .. } | Self::Watch(_))
    }
}
