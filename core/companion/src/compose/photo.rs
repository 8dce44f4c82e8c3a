//! Photos and their marks as drawings.

use std::path::Path;

use holdfast_joblog::{BlurBox, MarkRecord, MarkShapeRecord, PhotoState};
use holdfast_report::{PhotoMark, PhotoScene, PhotoShape, Role, Scene, Spot, photo};

use crate::text::{Args, Texts};

/// The looks a mark can have, by the id that stands in the log; the first is the usual one.
pub(crate) const STYLES: [(&str, Role, &str); 4] = [
    ("accent", Role::Needle, "mark-style-accent"),
    ("blue", Role::Undecided, "mark-style-blue"),
    ("green", Role::Holds, "mark-style-green"),
    ("ink", Role::Ink, "mark-style-ink"),
];

/// What goes to a test point, by the id that stands in the log; the first is the usual one.
pub(crate) const LEADS: [(&str, Role, &str); 5] = [
    ("tool", Role::Needle, "mark-lead-tool"),
    ("red", Role::LeadRed, "mark-lead-red"),
    ("black", Role::LeadBlack, "mark-lead-black"),
    ("pump", Role::Needle, "mark-lead-pump"),
    ("gauge", Role::Needle, "mark-lead-gauge"),
];

/// What becomes of boxes to be made unreadable.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Boxes {
    /// Drawn hatched: the picture itself is as it was taken.
    Drawn,
    /// Not drawn: they are unreadable in the picture's pixels.
    Burnt,
}

/// Marks as the drawing wants them.
#[must_use]
pub(crate) fn photo_marks(texts: &Texts, marks: &[MarkRecord], boxes: Boxes) -> Vec<PhotoMark> {
    marks
        .iter()
        .filter(|mark| boxes == Boxes::Drawn || !matches!(mark.shape, MarkShapeRecord::Blur { .. }))
        .map(|mark| photo_mark(texts, mark))
        .collect()
}

fn photo_mark(texts: &Texts, mark: &MarkRecord) -> PhotoMark {
    let spot = |[x, y]: [f64; 2]| Spot { x, y };
    let shape = match &mark.shape {
        MarkShapeRecord::Arrow { from, to } => PhotoShape::Arrow {
            from: spot(*from),
            to: spot(*to),
        },
        MarkShapeRecord::Measure { from, to } => PhotoShape::Measure {
            from: spot(*from),
            to: spot(*to),
        },
        MarkShapeRecord::Blur { from, to } => PhotoShape::Blur {
            from: spot(*from),
            to: spot(*to),
        },
        MarkShapeRecord::Ring { at, radius } => PhotoShape::Ring {
            centre: spot(*at),
            radius: *radius,
        },
        MarkShapeRecord::Pin { at, number } => PhotoShape::Pin {
            at: spot(*at),
            number: number.to_string(),
        },
        MarkShapeRecord::TestPoint { at } => PhotoShape::TestPoint { at: spot(*at) },
    };
    PhotoMark {
        shape,
        role: look_of(mark).1,
        words: mark_words(texts, mark),
    }
}

/// How a mark looks: id, colour, text key. An id from a newer version looks as usual.
#[must_use]
pub(crate) fn look_of(mark: &MarkRecord) -> (&'static str, Role, &'static str) {
    let looks = if matches!(mark.shape, MarkShapeRecord::TestPoint { .. }) {
        LEADS.as_slice()
    } else {
        STYLES.as_slice()
    };
    let named = looks.iter().find(|(id, ..)| *id == mark.style);
    named.or(looks.first()).copied().unwrap_or(STYLES[0])
}

/// What stands beside a mark: at a test point the lead's colour or the tool first, then the person's words.
fn mark_words(texts: &Texts, mark: &MarkRecord) -> String {
    let words = mark.text.trim();
    if !matches!(mark.shape, MarkShapeRecord::TestPoint { .. }) {
        return words.to_owned();
    }
    let lead = texts.say(look_of(mark).2);
    if words.is_empty() {
        return lead;
    }
    texts.say_with(
        "mark-lead-words",
        &Args::new().text("lead", lead).text("words", words),
    )
}

/// The boxes to be made unreadable.
#[must_use]
pub(crate) fn blur_boxes(marks: &[MarkRecord]) -> Vec<BlurBox> {
    let corners = |mark: &MarkRecord| match mark.shape {
        MarkShapeRecord::Blur { from, to } => Some((from, to)),
        _ => None,
    };
    marks.iter().filter_map(corners).collect()
}

/// A photo with its marks, out of a file of its upright picture.
#[must_use]
pub(crate) fn photo_scene(texts: &Texts, state: &PhotoState, file: &Path, boxes: Boxes) -> Scene {
    marked_scene(
        texts,
        state,
        file,
        photo_marks(texts, &state.marks, boxes),
        Vec::new(),
    )
}

/// A photo with these marks, and the places where the one in hand can be gripped.
#[must_use]
pub(crate) fn marked_scene(
    texts: &Texts,
    state: &PhotoState,
    file: &Path,
    marks: Vec<PhotoMark>,
    grips: Vec<Spot>,
) -> Scene {
    let caption = state.caption.trim();
    let mut alt = vec![if caption.is_empty() {
        texts.say("photo-alt")
    } else {
        caption.to_owned()
    }];
    alt.extend(
        marks
            .iter()
            .map(|mark| mark.words.clone())
            .filter(|words| !words.is_empty()),
    );
    photo(&PhotoScene {
        alt: alt.join(". "),
        path: file.to_string_lossy().into_owned(),
        width_px: state.photo.width,
        height_px: state.photo.height,
        marks,
        grips,
    })
}
