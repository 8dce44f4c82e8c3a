//! What a hold tells the ear and the hand, so that nobody has to look at the phone: when, and in which words.
//!
//! | moment | said | felt |
//! |---|---|---|
//! | pumping, half, three quarters and nine tenths of the target | the figure | |
//! | pumping, the target | let go | two short |
//! | pumping has stopped, the clock runs | so, and that the gauge is to be read | three short |
//! | watching, a minute, half a minute, 20, 10 s left | how many seconds | a tick each five seconds |
//! | watching, 5, 3, 2, 1 s left | the figure | |
//! | the time is up | read it | one long |
//! | the reading is judged | the result | two long |
//! | the hold was cut off | so | three long |
//!
//! The words are the script: lines of `texts/`, each of which a person can write anew in the settings, language by
//! language. A line left empty is not said.

use crate::companion::Companion;
use crate::compose;
use crate::flow::hold::{HoldAt, Running};
use crate::protocol::Buzz;
use crate::session::{At, Purpose, Stage, TestAt};
use crate::text::Args;
use crate::turn::Turn;

/// A moment of a hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Cue {
    /// A figure on the way up, or on the way down of the last seconds.
    Figure,
    /// The target is reached.
    LetGo,
    /// The clock runs.
    Start,
    /// So many seconds are left.
    Left,
    /// The gauge is to be read.
    ReadNow,
    /// The camera has seen enough.
    Seen,
    /// The reading is judged.
    End,
    /// The hold was cut off.
    Stop,
}

impl Cue {
    /// The script's lines in the order of a hold.
    pub(crate) const ALL: [Self; 8] = [
        Self::Figure,
        Self::LetGo,
        Self::Start,
        Self::Left,
        Self::ReadNow,
        Self::Seen,
        Self::End,
        Self::Stop,
    ];

    /// Its id: the line is `speak-<id>`, its label in the settings `script-<id>`.
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Figure => "figure",
            Self::LetGo => "let-go",
            Self::Start => "start",
            Self::Left => "left",
            Self::ReadNow => "read-now",
            Self::Seen => "seen",
            Self::End => "end",
            Self::Stop => "stop",
        }
    }

    /// What stands for the value in its line, where it has one.
    const fn value(self) -> Option<&'static str> {
        match self {
            Self::Figure => Some("figure"),
            Self::Left => Some("seconds"),
            Self::End => Some("result"),
            Self::LetGo | Self::Start | Self::ReadNow | Self::Seen | Self::Stop => None,
        }
    }

    /// How it feels.
    const fn buzz(self) -> Option<Buzz> {
        match self {
            Self::Figure | Self::Left => None,
            Self::LetGo => Some(Buzz::Done),
            Self::Start => Some(Buzz::Start),
            Self::ReadNow | Self::Seen => Some(Buzz::ReadNow),
            Self::End => Some(Buzz::End),
            Self::Stop => Some(Buzz::Alarm),
        }
    }
}

/// The script's line for a moment: the person's own, else that of the texts, its value in braces.
pub(super) fn line(core: &Companion, cue: Cue) -> String {
    let tag = core.texts.language().tag();
    let own = core
        .session
        .settings
        .script
        .get(tag)
        .and_then(|lines| lines.get(cue.id()));
    own.cloned().unwrap_or_else(|| {
        let args = cue
            .value()
            .map_or_else(Args::new, |value| Args::new().text(value, format!("{{{value}}}")));
        core.say_with(&format!("speak-{}", cue.id()), &args)
    })
}

/// Tells a moment by ear and by feel, as far as both are wanted. `value` is what the line's braces stand for.
pub(super) fn tell(core: &Companion, cue: Cue, value: &str, turn: &mut Turn<'_>) {
    let said = match cue.value() {
        Some(name) => line(core, cue).replace(&format!("{{{name}}}"), value),
        None => line(core, cue),
    };
    if !said.trim().is_empty() {
        core.speak(said, turn);
    }
    if let Some(pattern) = cue.buzz() {
        turn.buzz_if(core.session.settings.buzz, pattern);
    }
}

/// Seconds left at which that is said.
const LEFT_S: [f64; 13] = [
    600.0, 300.0, 240.0, 180.0, 120.0, 60.0, 30.0, 20.0, 10.0, 5.0, 3.0, 2.0, 1.0,
];
/// From here on down only the figure.
const COUNTED_S: f64 = 5.0;
/// Later than this it would be wrong, s.
const FRESH_S: f64 = 0.7;

/// Says how long is left, once for each mark that is passed.
pub(super) fn count_down(core: &mut Companion, running: &Running, elapsed_s: f64, turn: &mut Turn<'_>) {
    let left = running.due_s - elapsed_s;
    let Some(mark) = LEFT_S.into_iter().rev().find(|mark| *mark >= left) else {
        return;
    };
    if left <= 0.0 || core.moving.left.replace(mark) == Some(mark) || mark - left > FRESH_S {
        return;
    }
    let cue = if mark <= COUNTED_S { Cue::Figure } else { Cue::Left };
    let figure = core.texts.number(mark, 0);
    tell(core, cue, &figure, turn);
}

/// Tells what the last action led to, now that it is on disk: a hold judged, a hold cut off.
pub(super) fn told_by_screen(core: &Companion, before: &At, turn: &mut Turn<'_>) {
    let (At::Test(before), At::Test(now)) = (before, &core.session.at) else {
        return;
    };
    let Stage::Hold(hold) = &before.stage else { return };
    let was_cut_off = matches!(hold, HoldAt::Interrupted { .. });
    match &now.stage {
        Stage::Result { .. } => tell(core, Cue::End, &result(core, now), turn),
        Stage::Hold(HoldAt::Interrupted { .. }) if !was_cut_off => tell(core, Cue::Stop, "", turn),
        _ => {}
    }
}

/// The result of a test in a sentence.
fn result(core: &Companion, at: &TestAt) -> String {
    let spoken = || {
        let job = core.job.as_ref()?;
        let test = at.test.parse().ok()?;
        let (reading, result, _) = job.last(&test, at.purpose == Purpose::Retest)?;
        Some(compose::result(&core.texts, job, reading, result).sentence)
    };
    spoken().unwrap_or_default()
}
