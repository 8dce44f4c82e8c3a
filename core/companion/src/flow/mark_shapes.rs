//! Shapes of marks on a photo: where they can be gripped, what a finger is on, how they move and grow.

use holdfast_joblog::{MarkRecord, MarkShapeRecord, PhotoState};

/// Width of a photo's scene, scene units.
pub(super) const SCENE_WIDTH: f64 = 360.0;
/// A mark that was only tapped gets this size, as a share of the photo's width.
const USUAL: f64 = 0.14;
/// A drag shorter than this is a tap, as a share of the photo's width.
const TAPPED: f64 = 0.03;
/// Radius of a ring at least, as a share of the photo's width.
const LEAST_RADIUS: f64 = 0.02;

/// The picture's shape: scene units to shares and back.
pub(super) struct Sheet {
    height: f64,
}

impl Sheet {
    pub(super) fn of(photo: &PhotoState) -> Self {
        let (width, height) = (
            f64::from(photo.photo.width.max(1)),
            f64::from(photo.photo.height.max(1)),
        );
        Self {
            height: SCENE_WIDTH * height / width,
        }
    }

    /// Shares of width and height, kept inside the picture.
    pub(super) fn shares(&self, x: f32, y: f32) -> [f64; 2] {
        [f64::from(x) / SCENE_WIDTH, f64::from(y) / self.height].map(within)
    }

    /// Distance in shares of the width.
    fn apart(&self, a: [f64; 2], b: [f64; 2]) -> f64 {
        (a[0] - b[0]).hypot((a[1] - b[1]) * self.height / SCENE_WIDTH)
    }

    /// A step of this many shares of the width, down.
    fn down(&self, share: f64) -> f64 {
        share * SCENE_WIDTH / self.height
    }
}

fn within(share: f64) -> f64 {
    if share.is_finite() {
        share.clamp(0.0, 1.0)
    } else {
        0.5
    }
}

/// Where a mark can be gripped.
pub(super) fn grips(shape: &MarkShapeRecord) -> Vec<[f64; 2]> {
    match shape {
        MarkShapeRecord::Arrow { from, to } | MarkShapeRecord::Measure { from, to } => vec![*from, *to],
        MarkShapeRecord::Blur { from, to } => {
            vec![*from, *to, [from[0], to[1]], [to[0], from[1]]]
        }
        MarkShapeRecord::Ring { at, radius } => {
            let right = at[0] + radius;
            let edge = if right <= 1.0 { right } else { at[0] - radius };
            vec![[within(edge), at[1]]]
        }
        MarkShapeRecord::Pin { .. } | MarkShapeRecord::TestPoint { .. } => Vec::new(),
    }
}

pub(super) fn new_shape(marks: &[MarkRecord], tool: &str, at: [f64; 2]) -> MarkShapeRecord {
    let pin = |mark: &MarkRecord| match mark.shape {
        MarkShapeRecord::Pin { number, .. } => Some(number),
        _ => None,
    };
    match tool {
        "ring" => MarkShapeRecord::Ring {
            at,
            radius: LEAST_RADIUS,
        },
        "arrow" => MarkShapeRecord::Arrow { from: at, to: at },
        "measure" => MarkShapeRecord::Measure { from: at, to: at },
        "blur" => MarkShapeRecord::Blur { from: at, to: at },
        "pin" => MarkShapeRecord::Pin {
            at,
            number: marks.iter().filter_map(pin).max().unwrap_or(0).saturating_add(1),
        },
        _ => MarkShapeRecord::TestPoint { at },
    }
}

/// The nearest of some places within reach.
pub(super) fn nearest(sheet: &Sheet, places: &[[f64; 2]], to: [f64; 2], reach: f64) -> Option<usize> {
    let apart = |at: &[f64; 2]| sheet.apart(*at, to);
    let (index, at) = places
        .iter()
        .enumerate()
        .min_by(|(_, a), (_, b)| apart(a).total_cmp(&apart(b)))?;
    (apart(at) <= reach).then_some(index)
}

/// Whether a finger is on a mark.
pub(super) fn is_under(sheet: &Sheet, shape: &MarkShapeRecord, place: [f64; 2], reach: f64) -> bool {
    match shape {
        MarkShapeRecord::Ring { at, radius } => sheet.apart(*at, place) <= radius + reach,
        // A pin's head stands above its tip.
        MarkShapeRecord::Pin { at, .. } => {
            let head = [at[0], at[1] - sheet.down(30.0 / SCENE_WIDTH)];
            sheet.apart(*at, place) <= reach || sheet.apart(head, place) <= reach
        }
        MarkShapeRecord::TestPoint { at } => sheet.apart(*at, place) <= reach,
        MarkShapeRecord::Arrow { from, to } | MarkShapeRecord::Measure { from, to } => {
            from_line(sheet, *from, *to, place) <= reach
        }
        MarkShapeRecord::Blur { from, to } => {
            let between = |axis: usize| match (from.get(axis), to.get(axis), place.get(axis)) {
                (Some(a), Some(b), Some(at)) => (a.min(*b)..=a.max(*b)).contains(at),
                _ => false,
            };
            between(0) && between(1)
        }
    }
}

/// How far a place is from a line, in shares of the width.
fn from_line(sheet: &Sheet, from: [f64; 2], to: [f64; 2], place: [f64; 2]) -> f64 {
    let tall = sheet.height / SCENE_WIDTH;
    let along = [to[0] - from[0], (to[1] - from[1]) * tall];
    let off = [place[0] - from[0], (place[1] - from[1]) * tall];
    let square = along[0] * along[0] + along[1] * along[1];
    let share = if square > 0.0 {
        ((off[0] * along[0] + off[1] * along[1]) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (off[0] - share * along[0]).hypot(off[1] - share * along[1])
}

/// The grip that a new mark is drawn out by.
pub(super) fn far_grip(shape: &MarkShapeRecord) -> usize {
    usize::from(!matches!(shape, MarkShapeRecord::Ring { .. }))
}

/// Moves all of a mark, no further than the picture's edge.
pub(super) fn shift(shape: &mut MarkShapeRecord, step: [f64; 2]) {
    let (first, second) = match shape {
        MarkShapeRecord::Arrow { from, to }
        | MarkShapeRecord::Measure { from, to }
        | MarkShapeRecord::Blur { from, to } => (from, Some(to)),
        MarkShapeRecord::Ring { at, .. }
        | MarkShapeRecord::Pin { at, .. }
        | MarkShapeRecord::TestPoint { at } => (at, None),
    };
    let ends = [Some(*first), second.as_ref().map(|end| **end)];
    let clipped = |axis: usize| {
        let of = |point: &[f64; 2]| point.get(axis).copied().unwrap_or(0.0);
        let coordinates = || ends.iter().flatten().map(of);
        let least = coordinates().fold(1.0, f64::min);
        let most = coordinates().fold(0.0, f64::max);
        of(&step).clamp(-least, 1.0 - most)
    };
    let step = [clipped(0), clipped(1)];
    let moved = |[x, y]: [f64; 2]| [within(x + step[0]), within(y + step[1])];
    *first = moved(*first);
    if let Some(end) = second {
        *end = moved(*end);
    }
}

/// Moves one grip of a mark.
pub(super) fn pull(sheet: &Sheet, shape: &mut MarkShapeRecord, grip: usize, place: [f64; 2]) {
    match shape {
        MarkShapeRecord::Arrow { from, to } | MarkShapeRecord::Measure { from, to } => {
            *(if grip == 0 { from } else { to }) = place;
        }
        MarkShapeRecord::Blur { from, to } => match grip {
            0 => *from = place,
            1 => *to = place,
            2 => (from[0], to[1]) = (place[0], place[1]),
            _ => (to[0], from[1]) = (place[0], place[1]),
        },
        MarkShapeRecord::Ring { at, radius } => *radius = sheet.apart(*at, place).clamp(LEAST_RADIUS, 0.5),
        MarkShapeRecord::Pin { at, .. } | MarkShapeRecord::TestPoint { at } => *at = place,
    }
}

/// A new mark that was only tapped: what was tapped is at its tip, its centre or in its middle.
pub(super) fn give_usual_size(sheet: &Sheet, shape: &mut MarkShapeRecord) {
    let (across, down) = (USUAL, sheet.down(USUAL));
    match shape {
        MarkShapeRecord::Ring { radius, .. } if *radius < TAPPED => *radius = USUAL / 2.0,
        MarkShapeRecord::Arrow { from, to } if sheet.apart(*from, *to) < TAPPED => {
            let side = if to[0] < 0.5 { across } else { -across };
            let under = if to[1] < 0.5 { down } else { -down };
            *from = [within(to[0] + side), within(to[1] + under)];
        }
        MarkShapeRecord::Measure { from, to } if sheet.apart(*from, *to) < TAPPED => {
            (*from, *to) = ([within(to[0] - across), to[1]], [within(to[0] + across), to[1]]);
        }
        MarkShapeRecord::Blur { from, to } if sheet.apart(*from, *to) < TAPPED => {
            let middle = *to;
            *from = [within(middle[0] - across), within(middle[1] - down / 2.0)];
            *to = [within(middle[0] + across), within(middle[1] + down / 2.0)];
        }
        _ => {}
    }
}
