//! Marks on the photo that is open: set, taken hold of, dragged, written beside, given another look.
//!
//! | event | leads to |
//! |---|---|
//! | `Grab` a grip of the mark in hand | that end follows the finger |
//! | `Grab` a mark | it is in hand and follows the finger |
//! | `Grab` elsewhere | a new mark of the tool begins there |
//! | `Drag` | the mark follows, nothing is logged |
//! | `Release` | all marks are logged as they are now, if any changed |
//! | `Pick` a look | the mark in hand looks so, and the next new ones |
//! | `RemoveMark` | the mark in hand is gone |
//! | `Undo` | marks and caption as they were before the last change |

use holdfast_joblog::{EntryKey, MarkRecord, MarkShapeRecord, Payload, PhotoMarked, PhotoState, Undo};
use holdfast_report::Spot;

use crate::companion::Companion;
use crate::flow::photo::state;
use crate::protocol::FieldId;
use crate::session::{At, PhotoAt};
use crate::turn::Turn;

/// The marks of the palette, by id.
pub(super) const TOOLS: [(&str, &str); 6] = [
    ("test-point", "mark-test-point"),
    ("ring", "mark-ring"),
    ("arrow", "mark-arrow"),
    ("pin", "mark-pin"),
    ("measure", "mark-measure"),
    ("blur", "mark-blur"),
];

/// Width of a photo's scene, scene units.
const SCENE_WIDTH: f64 = 360.0;
/// A mark that was only tapped gets this size, as a share of the photo's width.
const USUAL: f64 = 0.14;
/// A drag shorter than this is a tap, as a share of the photo's width.
const TAPPED: f64 = 0.03;
/// Radius of a ring at least, as a share of the photo's width.
const LEAST_RADIUS: f64 = 0.02;
/// Marks on one photo at most.
const MOST_MARKS: usize = 60;

/// A mark that follows the finger.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Held {
    /// All marks of the photo as they are now.
    pub marks: Vec<MarkRecord>,
    /// Which of them.
    pub index: usize,
    /// By what it is held.
    by: Hold,
    /// Where the finger was last, shares of width and height.
    last: [f64; 2],
}

/// By what a mark is held.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Hold {
    /// All of it moves.
    Whole,
    /// One of its grips moves, by number.
    Grip(usize),
    /// It is new: its far end follows the finger.
    New,
}

/// The picture's shape: scene units to shares and back.
struct Sheet {
    height: f64,
}

impl Sheet {
    fn of(photo: &PhotoState) -> Self {
        let (width, height) = (
            f64::from(photo.photo.width.max(1)),
            f64::from(photo.photo.height.max(1)),
        );
        Self {
            height: SCENE_WIDTH * height / width,
        }
    }

    /// Shares of width and height, kept inside the picture.
    fn shares(&self, x: f32, y: f32) -> [f64; 2] {
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

/// The marks as they are now, what is typed beside the one in hand included.
pub(super) fn marks_now(core: &Companion, at: &PhotoAt) -> Vec<MarkRecord> {
    let mut marks = match (&core.moving.held, state(core, &at.photo)) {
        (Some(held), _) => held.marks.clone(),
        (None, Some(photo)) => photo.value.marks.clone(),
        (None, None) => Vec::new(),
    };
    let typed = at.typed.get(&FieldId::MarkText);
    if let (Some(mark), Some(text)) = (at.mark.and_then(|index| marks.get_mut(index)), typed) {
        text.trim().clone_into(&mut mark.text);
    }
    marks
}

/// The mark in hand.
pub(super) fn in_hand(core: &Companion, at: &PhotoAt) -> Option<usize> {
    let index = core.moving.held.as_ref().map(|held| held.index).or(at.mark)?;
    (index < marks_now(core, at).len()).then_some(index)
}

/// Logs caption and marks, if they are not what is logged already.
pub(super) fn log(core: &Companion, at: &PhotoAt, marks: Vec<MarkRecord>, turn: &mut Turn<'_>) {
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let caption = at
        .typed
        .get(&FieldId::Caption)
        .map_or(photo.value.caption.clone(), |text| text.trim().to_owned());
    if caption == photo.value.caption && marks == photo.value.marks {
        return;
    }
    core.append(
        Payload::PhotoMarked(PhotoMarked {
            photo: photo.key,
            caption,
            marks,
        }),
        turn,
    );
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

pub(super) fn grip_spots(shape: &MarkShapeRecord) -> Vec<Spot> {
    grips(shape).into_iter().map(|[x, y]| Spot { x, y }).collect()
}

/// A finger comes down; it covers `reach` scene units to each side.
pub(super) fn grab(core: &mut Companion, at: &PhotoAt, x: f32, y: f32, reach: f32) {
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let sheet = Sheet::of(&photo.value);
    let place = sheet.shares(x, y);
    let reach = f64::from(reach).clamp(1.0, 60.0) / SCENE_WIDTH;
    let mut marks = marks_now(core, at);
    let by_grip = in_hand(core, at).and_then(|index| {
        let mark = marks.get(index)?;
        let grip = nearest(&sheet, &grips(&mark.shape), place, reach)?;
        Some((index, Hold::Grip(grip)))
    });
    let by_mark = || {
        let touched = |mark: &MarkRecord| is_under(&sheet, &mark.shape, place, reach);
        marks.iter().rposition(touched).map(|index| (index, Hold::Whole))
    };
    let (index, by) = match by_grip.or_else(by_mark) {
        Some(held) => held,
        None if marks.len() >= MOST_MARKS => return,
        None => {
            marks.push(MarkRecord {
                shape: new_shape(&marks, &at.tool, place),
                text: String::new(),
                style: look_of_new(at),
            });
            (marks.len() - 1, Hold::New)
        }
    };
    core.moving.held = Some(Held {
        marks,
        index,
        by,
        last: place,
    });
}

fn look_of_new(at: &PhotoAt) -> String {
    if at.tool == "test-point" {
        at.lead.clone()
    } else {
        at.style.clone()
    }
}

fn new_shape(marks: &[MarkRecord], tool: &str, at: [f64; 2]) -> MarkShapeRecord {
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
fn nearest(sheet: &Sheet, places: &[[f64; 2]], to: [f64; 2], reach: f64) -> Option<usize> {
    let apart = |at: &[f64; 2]| sheet.apart(*at, to);
    let (index, at) = places
        .iter()
        .enumerate()
        .min_by(|(_, a), (_, b)| apart(a).total_cmp(&apart(b)))?;
    (apart(at) <= reach).then_some(index)
}

/// Whether a finger is on a mark.
fn is_under(sheet: &Sheet, shape: &MarkShapeRecord, place: [f64; 2], reach: f64) -> bool {
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

/// The finger moves.
pub(super) fn drag(core: &mut Companion, at: &PhotoAt, x: f32, y: f32) {
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let sheet = Sheet::of(&photo.value);
    let place = sheet.shares(x, y);
    let Some(held) = &mut core.moving.held else { return };
    let step = [place[0] - held.last[0], place[1] - held.last[1]];
    held.last = place;
    let by = held.by;
    if let Some(mark) = held.marks.get_mut(held.index) {
        match by {
            Hold::Whole => shift(&mut mark.shape, step),
            Hold::Grip(grip) => pull(&sheet, &mut mark.shape, grip, place),
            Hold::New => {
                let grip = far_grip(&mark.shape);
                pull(&sheet, &mut mark.shape, grip, place);
            }
        }
    }
}

/// The grip that a new mark is drawn out by.
fn far_grip(shape: &MarkShapeRecord) -> usize {
    usize::from(!matches!(shape, MarkShapeRecord::Ring { .. }))
}

/// Moves all of a mark, no further than the picture's edge.
fn shift(shape: &mut MarkShapeRecord, step: [f64; 2]) {
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
fn pull(sheet: &Sheet, shape: &mut MarkShapeRecord, grip: usize, place: [f64; 2]) {
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

/// The finger leaves: what it did is logged, and the mark stays in hand.
pub(super) fn release(core: &mut Companion, mut at: PhotoAt, turn: &mut Turn<'_>) {
    let Some(held) = core.moving.held.take() else {
        return;
    };
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let sheet = Sheet::of(&photo.value);
    let Held {
        mut marks, index, by, ..
    } = held;
    if let (Hold::New, Some(mark)) = (by, marks.get_mut(index)) {
        give_usual_size(&sheet, &mut mark.shape);
    }
    if at.mark != Some(index) {
        at.typed.forget(&FieldId::MarkText);
    }
    at.mark = Some(index);
    log(core, &at, marks, turn);
    core.session.at = At::Photo(at);
}

/// A new mark that was only tapped: what was tapped is at its tip, its centre or in its middle.
fn give_usual_size(sheet: &Sheet, shape: &mut MarkShapeRecord) {
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

/// Gives the mark in hand another look; the next new ones look so too.
pub(super) fn restyle(core: &mut Companion, mut at: PhotoAt, id: &str, turn: &mut Turn<'_>) {
    let mut marks = marks_now(core, &at);
    let mark = in_hand(core, &at).and_then(|index| marks.get_mut(index));
    let is_lead = match &mark {
        Some(mark) => matches!(mark.shape, MarkShapeRecord::TestPoint { .. }),
        None => at.tool == "test-point",
    };
    id.clone_into(if is_lead { &mut at.lead } else { &mut at.style });
    if let Some(mark) = mark {
        id.clone_into(&mut mark.style);
        log(core, &at, marks, turn);
    }
    core.session.at = At::Photo(at);
}

/// Takes the mark in hand away.
pub(super) fn remove(core: &mut Companion, mut at: PhotoAt, turn: &mut Turn<'_>) {
    let mut marks = marks_now(core, &at);
    if let Some(index) = in_hand(core, &at) {
        marks.remove(index);
        at.typed.forget(&FieldId::MarkText);
        log(core, &at, marks, turn);
    }
    at.mark = None;
    core.session.at = At::Photo(at);
}

/// The last change of marks or caption, to be taken back.
pub(super) fn last_change(core: &Companion, at: &PhotoAt) -> Option<EntryKey> {
    let photo = at.photo.parse::<EntryKey>().ok()?;
    core.job.as_ref()?.log.last_marking(photo)
}

/// Takes the last change back.
pub(super) fn undo(core: &mut Companion, mut at: PhotoAt, turn: &mut Turn<'_>) {
    if let Some(target) = last_change(core, &at) {
        core.append(Payload::Undo(Undo { target }), turn);
    }
    at.mark = None;
    at.typed.forget(&FieldId::MarkText);
    core.session.at = At::Photo(at);
}
