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

use holdfast_joblog::{EntryKey, MarkRecord, MarkShapeRecord, Payload, PhotoMarked, Undo};
use holdfast_report::Spot;

use crate::companion::Companion;
use crate::flow::mark_shapes::{
    SCENE_WIDTH, Sheet, far_grip, give_usual_size, grips, is_under, nearest, new_shape, pull, shift,
};
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
