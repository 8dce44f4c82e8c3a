//! The report crate's scene types restated for the boundary: the compiler checks that they match.

use holdfast_report::{Anchor, Dash, Ends, Item, Point, Role, Scene, Stroke, Weight};

#[uniffi::remote(Record)]
pub struct Scene {
    pub width: f32,
    pub height: f32,
    pub alt: String,
    pub items: Vec<Item>,
}

#[uniffi::remote(Enum)]
pub enum Item {
    Path {
        points: Vec<Point>,
        ends: Ends,
        stroke: Option<Stroke>,
        fill: Option<Role>,
    },
    Circle {
        centre: Point,
        radius: f32,
        stroke: Option<Stroke>,
        fill: Option<Role>,
    },
    Arc {
        centre: Point,
        radius: f32,
        start_deg: f32,
        sweep_deg: f32,
        stroke: Stroke,
    },
    Text {
        at: Point,
        anchor: Anchor,
        size: f32,
        weight: Weight,
        role: Role,
        text: String,
    },
    Image {
        path: String,
        at: Point,
        width: f32,
        height: f32,
    },
    Needle {
        pivot: Point,
        length: f32,
        angle_deg: f32,
        doubt_deg: f32,
        role: Role,
    },
    Region {
        id: String,
        at: Point,
        width: f32,
        height: f32,
        label: String,
    },
}

#[uniffi::remote(Record)]
pub struct Point {
    pub x: f32,
    pub y: f32,
}

#[uniffi::remote(Record)]
pub struct Stroke {
    pub width: f32,
    pub role: Role,
    pub dash: Dash,
}

#[uniffi::remote(Enum)]
pub enum Ends {
    Open,
    Closed,
}

#[uniffi::remote(Enum)]
pub enum Dash {
    Solid,
    Dashed,
    Dotted,
}

#[uniffi::remote(Enum)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

#[uniffi::remote(Enum)]
pub enum Weight {
    Regular,
    Bold,
}

#[uniffi::remote(Enum)]
pub enum Role {
    Paper,
    Raised,
    Ink,
    QuietInk,
    Line,
    Needle,
    OnNeedle,
    Band,
    Suspect,
    Holds,
    SlowLeak,
    Leaks,
    Undecided,
    WontBuild,
    NotDone,
    CantDo,
    Vacuum,
    Electric,
    LeadRed,
    LeadBlack,
    Danger,
    Warning,
    Caution,
    Notice,
}
