//! The display list: what every drawing of Holdfast is made of.
//!
//! A [`Scene`] is drawn by the phone shells, to PNG and to PDF alike. Lengths are scene units (the shells
//! scale the whole scene to the width they have); angles are degrees, clockwise, zero to the right.
//! Colours are *roles* ([`Role`]): each renderer has one table from role to colour, for day and for night.

mod needle;
mod outline;
mod placement;

pub use needle::{NeedleShape, needle_shapes};
pub(crate) use outline::arc_points;
pub use outline::dash_lengths;
pub(crate) use placement::Placement;

/// A picture: a display list with its size and the words that stand for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Scene {
    /// Width in scene units, above zero.
    pub width: f32,
    /// Height in scene units, above zero.
    pub height: f32,
    /// Alternative text: what a person who can't see the picture needs to know.
    pub alt: String,
    /// Drawn in order, later ones on top.
    pub items: Vec<Item>,
}

/// One thing to draw.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// A straight or broken line, or a filled shape if `fill` is given.
    Path {
        /// Corners in order.
        points: Vec<Point>,
        /// Whether the last corner joins the first.
        ends: Ends,
        /// Outline, if any.
        stroke: Option<Stroke>,
        /// Inside, if any.
        fill: Option<Role>,
    },
    /// A full circle.
    Circle {
        /// Centre.
        centre: Point,
        /// Radius in scene units.
        radius: f32,
        /// Outline, if any.
        stroke: Option<Stroke>,
        /// Inside, if any.
        fill: Option<Role>,
    },
    /// Part of a circle's line.
    Arc {
        /// Centre.
        centre: Point,
        /// Radius in scene units.
        radius: f32,
        /// Where the arc starts, degrees clockwise from the right.
        start_deg: f32,
        /// How far it goes, degrees clockwise.
        sweep_deg: f32,
        /// The line.
        stroke: Stroke,
    },
    /// One line of text; its baseline starts, is centred or ends at `at`.
    Text {
        /// Where the anchor sits, on the baseline.
        at: Point,
        /// Which part of the text sits at `at`.
        anchor: Anchor,
        /// Type size in scene units.
        size: f32,
        /// Weight.
        weight: Weight,
        /// Colour role.
        role: Role,
        /// The words.
        text: String,
    },
    /// A picture file, already upright.
    Image {
        /// Path of a JPEG or PNG file.
        path: String,
        /// Upper left corner.
        at: Point,
        /// Width in scene units.
        width: f32,
        /// Height in scene units.
        height: f32,
    },
    /// The pointer of a gauge: the one thing that turns while a person watches.
    Needle {
        /// The axis.
        pivot: Point,
        /// From axis to tip.
        length: f32,
        /// Where it points now; `Live::needle_deg` replaces it.
        angle_deg: f32,
        /// Half width of the fuzzy edge: the doubt of the reading, degrees.
        doubt_deg: f32,
        /// Colour role.
        role: Role,
    },
    /// A place that can be touched; the shell sends its `id` back and draws nothing.
    Region {
        /// What the core calls it.
        id: String,
        /// Upper left corner.
        at: Point,
        /// Width in scene units.
        width: f32,
        /// Height in scene units.
        height: f32,
        /// What a screen reader says.
        label: String,
    },
}

/// A place in scene units, from the upper left corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f32,
    /// Down.
    pub y: f32,
}

/// A line's look.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// Width in scene units.
    pub width: f32,
    /// Colour role.
    pub role: Role,
    /// Whole or broken.
    pub dash: Dash,
}

/// Whether a path is closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ends {
    /// The two ends stay apart.
    Open,
    /// The last corner is joined to the first.
    Closed,
}

/// A whole or broken line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dash {
    /// A whole line.
    Solid,
    /// Long strokes.
    Dashed,
    /// Dots.
    Dotted,
}

/// Which part of a text sits at its point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// Its start.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// Weight of type.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// For reading.
    Regular,
    /// For headings and numbers that matter.
    Bold,
}

/// What a colour means; never the colour itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// The ground everything sits on.
    Paper,
    /// A card on the ground.
    Raised,
    /// Text and strong lines.
    Ink,
    /// Secondary text, still 7:1 on paper.
    QuietInk,
    /// Hairlines and frames.
    Line,
    /// The one accent: the needle and the thing to do next.
    Needle,
    /// Text on the accent.
    OnNeedle,
    /// The band a reading should fall in.
    Band,
    /// The shade behind a suspected part.
    Suspect,
    /// State: vacuum holds, reading as expected.
    Holds,
    /// State: slow leak.
    SlowLeak,
    /// State: leaks, reading not as expected.
    Leaks,
    /// State: undecided.
    Undecided,
    /// State: will not build vacuum.
    WontBuild,
    /// State: not done yet.
    NotDone,
    /// State: can't be done.
    CantDo,
    /// Vacuum lines.
    Vacuum,
    /// Electric lines.
    Electric,
    /// The red meter lead.
    LeadRed,
    /// The black meter lead.
    LeadBlack,
    /// Signal word DANGER.
    Danger,
    /// Signal word WARNING.
    Warning,
    /// Signal word CAUTION.
    Caution,
    /// Signal word NOTICE.
    Notice,
}
