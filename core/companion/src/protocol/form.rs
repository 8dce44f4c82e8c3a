//! The parts that screens are made of: words, fields, choices, buttons, state marks, cautions.

use holdfast_report::{Role, Scene};

use super::{Action, FieldId};

/// Something to tap. With `why_not` it is drawn as unavailable, and the reason is shown.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Button {
    /// The words on it.
    pub label: String,
    /// What tapping it sends.
    pub action: Action,
    /// How much it weighs on the screen.
    pub weight: ButtonWeight,
    /// Why it can't be tapped now.
    pub why_not: Option<String>,
}

/// How much a button weighs: at most one primary a screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum ButtonWeight {
    /// The thing to do next, largest, in reach of a thumb.
    Primary,
    /// One of several things to do.
    Plain,
    /// A way out, or something rare.
    Quiet,
}

/// A state as shape and word; the colour comes from its role.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Mark {
    /// The shape, different for each state.
    pub shape: MarkShape,
    /// The colour's role.
    pub role: Role,
    /// The word.
    pub word: String,
}

/// Shapes of states (the drawing is the shell's, the meaning the core's).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum MarkShape {
    /// Filled disc: holds, as expected.
    Disc,
    /// Half disc: slow leak.
    HalfDisc,
    /// Wedge pointing down: leaks, not as expected.
    Wedge,
    /// Open ring: undecided.
    Ring,
    /// Bar across a ring: will not build vacuum.
    BarredRing,
    /// Dotted ring: not done.
    DottedRing,
    /// Ring with a gap: can't do.
    GapRing,
}

/// A caution with its signal word, shown before the step it belongs to.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Caution {
    /// Which of the signal words; the three for harm to people carry the triangle, NOTICE doesn't.
    pub signal: Signal,
    /// The signal word in the person's language.
    pub word: String,
    /// One or two short sentences.
    pub text: String,
    /// Whether it has to be ticked, and what ticking sends.
    pub ack: Acknowledgement,
}

/// How grave, in the sense of ISO 3864 and ANSI Z535.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Signal {
    /// Will kill or maim if not avoided.
    Danger,
    /// Can kill or maim.
    Warning,
    /// Can hurt.
    Caution,
    /// Can damage things.
    Notice,
}

/// Whether a caution is to be ticked.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Acknowledgement {
    /// Only to be read.
    NotAsked,
    /// To be ticked.
    Open {
        /// What ticking sends.
        action: Action,
    },
    /// Ticked.
    Given,
}

/// Something to type.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Field {
    /// Goes back in `Action::Type`.
    pub id: FieldId,
    /// What is asked.
    pub label: String,
    /// What stands in it.
    pub value: String,
    /// Unit shown behind it, or empty.
    pub unit: String,
    /// Help under it: an example, the allowed range.
    pub hint: String,
    /// What is wrong with it and how to put it right.
    pub problem: Option<String>,
    /// Which keys to offer.
    pub keys: Keys,
}

/// Which keyboard suits a field.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Keys {
    /// Words.
    Text,
    /// Several lines.
    Lines,
    /// Capital letters and digits: a plate, a VIN.
    Code,
    /// A number with a decimal mark, minus allowed.
    Number,
}

/// Options of which one or several hold.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Choice {
    /// What is asked.
    pub label: String,
    /// Whether picking one drops the others.
    pub kind: ChoiceKind,
    /// The options in order.
    pub options: Vec<ChoiceOption>,
}

/// One of, or any of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum ChoiceKind {
    /// One holds.
    One,
    /// Any number hold.
    Many,
}

/// One option.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct ChoiceOption {
    /// The words.
    pub label: String,
    /// A second line, or empty.
    pub detail: String,
    /// A drawn card, if it has one.
    pub picture: Option<Scene>,
    /// Whether it holds now.
    pub picked: Picked,
    /// What tapping it sends.
    pub action: Action,
}

/// Whether an option holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Picked {
    /// It holds.
    Yes,
    /// It does not.
    No,
}

/// A part of a form with its heading.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Section {
    /// The heading, or empty.
    pub heading: String,
    /// What it holds, from the top.
    pub items: Vec<FormItem>,
}

/// One thing in a form.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum FormItem {
    /// A paragraph.
    Words {
        /// The paragraph.
        text: String,
    },
    /// Something to type.
    Entry {
        /// The field.
        field: Field,
    },
    /// Options.
    Options {
        /// The choice.
        choice: Choice,
    },
    /// A drawing.
    Picture {
        /// The drawing.
        scene: Scene,
    },
    /// Something to tap.
    Tap {
        /// The button.
        button: Button,
    },
    /// A caution.
    Care {
        /// The caution.
        caution: Caution,
    },
    /// A state with a line of words.
    State {
        /// The state.
        mark: Mark,
        /// The words.
        text: String,
    },
    /// A photo of the job.
    Photo {
        /// The photo.
        photo: PhotoCard,
    },
}

/// A photo in a list: its screen rendition and its caption.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PhotoCard {
    /// The photo with its marks.
    pub scene: Scene,
    /// The caption, or empty.
    pub caption: String,
    /// Opens it.
    pub open: Action,
}
