//! The screens of one test, exclusive states as enums.

use holdfast_report::Scene;

use super::{Button, Caution, Choice, Field, FormItem, Live, Mark};

/// A test before, between and after.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct TestScreen {
    /// Where: map or connector face.
    pub picture: Option<Scene>,
    /// Where, on the person's own photo, if there is one.
    pub own: Option<OwnPhoto>,
    /// Where, in words.
    pub place: String,
    /// What is shown of the test now.
    pub stage: TestStage,
}

/// The stages of a test outside its measurement.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum TestStage {
    /// Before: why, what, how.
    Brief {
        /// Why now, one sentence.
        why: String,
        /// What is needed and how the car must be.
        needs: Vec<String>,
        /// The steps with the cautions that belong to them.
        steps: Vec<Step>,
        /// What each result would mean.
        means: Vec<Meaning>,
        /// Starts it.
        start: Button,
        /// Reasons why it can't be done.
        cannot: Vec<Button>,
        /// Photos and other extras.
        extras: Vec<FormItem>,
    },
    /// A reading that can hardly be right is asked about, once.
    Question {
        /// What is odd and the likely slip.
        text: String,
        /// The reading it is about, to be held against the instrument.
        entered: Entered,
        /// Keep or change.
        buttons: Vec<Button>,
    },
    /// After: the result and what it means.
    Result {
        /// The result.
        mark: Mark,
        /// One sentence.
        sentence: String,
        /// What it means for the circuit.
        meaning: String,
        /// The numbers behind it, small.
        details: Vec<String>,
        /// The chart or band, where there is one.
        chart: Option<Scene>,
        /// Go on, do again, put right.
        buttons: Vec<Button>,
        /// Photos and other extras.
        extras: Vec<FormItem>,
    },
}

/// A reading as it was entered.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Entered {
    /// Says that this is what was entered.
    pub label: String,
    /// Each figure as it was typed, with its unit; each answer in words.
    pub lines: Vec<String>,
    /// The instrument and the time.
    pub taken: Vec<String>,
}

/// One step of a test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Step {
    /// What to be careful of before it.
    pub cautions: Vec<Caution>,
    /// What to do.
    pub text: String,
}

/// What a result would mean.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Meaning {
    /// The result.
    pub mark: Mark,
    /// What it would mean.
    pub text: String,
}

/// A vacuum hold test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct HoldScreen {
    /// The gauge with the target band.
    pub gauge: Scene,
    /// The moving part as it is now.
    pub live: Live,
    /// What is going on.
    pub phase: HoldPhase,
}

/// The phases of a hold test.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum HoldPhase {
    /// Pumping up to the target.
    Pump {
        /// What to pump to and why.
        target: String,
        /// Strokes so far, in words.
        strokes: String,
        /// One more, one less.
        count: Vec<Button>,
        /// Pumping has stopped.
        let_go: Button,
        /// Other ways on: the target can't be reached; the camera watches instead of the eye, or the other way round.
        others: Vec<Button>,
    },
    /// A reading is asked for: the first, a later one, or the highest reached.
    Read {
        /// Which reading.
        prompt: String,
        /// Keypad entry; dragging the needle fills it too.
        field: Field,
        /// Takes it.
        confirm: Button,
        /// Other ways on.
        others: Vec<Button>,
    },
    /// Watching the needle.
    Watch {
        /// What to do meanwhile.
        prompt: String,
        /// Read before time, stop.
        buttons: Vec<Button>,
    },
    /// The hold was cut off: what there is of it.
    Interrupted {
        /// What happened and what was kept.
        text: String,
        /// Ways on.
        buttons: Vec<Button>,
    },
}

/// Readings with a meter or gauge.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MeterScreen {
    /// The connector face with the leads, or the dial.
    pub picture: Option<Scene>,
    /// Where on the map, where the picture doesn't say it.
    pub map: Option<Scene>,
    /// Where, on the person's own photo, if there is one.
    pub own: Option<OwnPhoto>,
    /// Where each lead goes, in words; colour named.
    pub leads: Vec<String>,
    /// AC or DC, range, what to watch.
    pub hint: String,
    /// What to enter.
    pub items: Vec<FormItem>,
    /// The expected band with the reading on it, where it is known before.
    pub band: Option<Scene>,
    /// Takes it.
    pub confirm: Button,
}

/// One question with two large answers.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct YesNoScreen {
    /// Where.
    pub picture: Option<Scene>,
    /// Where, on the person's own photo, if there is one.
    pub own: Option<OwnPhoto>,
    /// What is asked.
    pub question: String,
    /// What to look or listen for.
    pub look_for: Vec<String>,
    /// Words that say what was seen.
    pub answers: Vec<Button>,
    /// Not sure.
    pub not_sure: Button,
}

/// The circuit as a checklist.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LookScreen {
    /// The circuit with what was ticked.
    pub map: Scene,
    /// Part by part.
    pub rows: Vec<LookRow>,
    /// All looked over.
    pub done: Button,
}

/// One component in the look-over.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct LookRow {
    /// Its state now.
    pub mark: Mark,
    /// The states it can be in.
    pub states: Choice,
    /// Where it is, on a photo from an earlier job on this kind of vehicle.
    pub own: Option<OwnPhoto>,
    /// Takes a photo of it.
    pub photo: Button,
}

/// The person's own photo of a place, with what it shows.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct OwnPhoto {
    /// The photo with its marks.
    pub scene: Scene,
    /// What it shows, and from where it is known.
    pub words: String,
}

/// A photo and its marks.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PhotoScreen {
    /// The photo with its marks. One finger sends `Grab`, `Drag` and `Release`, two zoom. Its regions are the marks, for
    /// those who can't see them.
    pub scene: Scene,
    /// The marks to choose from.
    pub palette: Choice,
    /// How the mark in hand looks, or the next one.
    pub looks: Option<Choice>,
    /// The mark in hand.
    pub mark: Option<MarkPanel>,
    /// The caption.
    pub caption: Field,
    /// What it shows, keeping it for the vehicle's kind, handing it on.
    pub more: Vec<FormItem>,
    /// Takes the last change of the marks or the caption back.
    pub undo: Button,
    /// Done, remove.
    pub buttons: Vec<Button>,
}

/// What can be done with the mark in hand.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MarkPanel {
    /// What kind of mark it is.
    pub name: String,
    /// The words beside it, where it has some.
    pub words: Option<Field>,
    /// Takes it away.
    pub remove: Button,
}
