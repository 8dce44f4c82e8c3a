//! The photo that is open: the picture with its marks, the palette, what can be done with the mark in hand.

use holdfast_joblog::{MarkRecord, MarkShapeRecord, PhotoState, Rendition, Subject};
use holdfast_report::{Item, Point, Scene};

use crate::companion::Companion;
use crate::compose::{self, Boxes};
use crate::flow::kind;
use crate::flow::marks::{self, TOOLS};
use crate::flow::parts::{one_of, option, plain, primary, quiet, text_field, words};
use crate::flow::photo::state;
use crate::protocol::{
    Action, Body, Button, Choice, ChoiceKind, Field, FieldId, FormItem, Frame, Keys, MarkPanel, PhonePart,
    PhotoScreen, Pick,
};
use crate::session::PhotoAt;

pub(super) fn screen(core: &Companion, at: &PhotoAt) -> (Frame, Body) {
    let frame = Frame::titled(core.say("photo-title"));
    let Some(photo) = state(core, &at.photo) else {
        return (frame, core.nothing());
    };
    let marks = marks::marks_now(core, at);
    let in_hand = marks::in_hand(core, at);
    let Some(scene) = scene(core, &photo.value, &marks, in_hand) else {
        return (frame, missing(core, &at.photo));
    };
    let held = in_hand.and_then(|index| marks.get(index));
    let photo = PhotoScreen {
        scene,
        palette: palette(core, at),
        looks: looks(core, at, held),
        mark: held.map(|mark| panel(core, at, mark)),
        caption: text_field(
            FieldId::Caption,
            core.say("photo-caption"),
            at.typed
                .get(&FieldId::Caption)
                .map_or(photo.value.caption.clone(), str::to_owned),
            Keys::Text,
        ),
        more: more(core, at, &photo.value),
        undo: undo(core, at),
        buttons: vec![
            primary(core.say("photo-done"), Action::Confirm),
            remove_photo(core, &at.photo),
        ],
    };
    (frame, Body::Photo { photo })
}

/// The picture, large enough to zoom in, with its marks and the grips of the one in hand.
fn scene(
    core: &Companion,
    photo: &PhotoState,
    marks: &[MarkRecord],
    in_hand: Option<usize>,
) -> Option<Scene> {
    let file = core.store.photos().find(&photo.photo, Rendition::Print)?;
    let grips = in_hand
        .and_then(|index| marks.get(index))
        .map(|mark| marks::grip_spots(&mark.shape))
        .unwrap_or_default();
    let drawn = compose::photo_marks(&core.texts, marks, Boxes::Drawn);
    let mut scene = compose::marked_scene(&core.texts, photo, &file, drawn, grips);
    let regions: Vec<Item> = marks
        .iter()
        .enumerate()
        .map(|(index, mark)| region(core, &scene, index, mark))
        .collect();
    scene.items.extend(regions);
    Some(scene)
}

/// Half the side of a mark's region, scene units.
const HALF: f32 = 22.0;

/// Where a screen reader finds a mark.
fn region(core: &Companion, scene: &Scene, index: usize, mark: &MarkRecord) -> Item {
    let [x, y] = match mark.shape {
        MarkShapeRecord::Ring { at, .. }
        | MarkShapeRecord::Pin { at, .. }
        | MarkShapeRecord::TestPoint { at } => at,
        MarkShapeRecord::Arrow { to, .. } => to,
        MarkShapeRecord::Measure { from, to } | MarkShapeRecord::Blur { from, to } => {
            [f64::midpoint(from[0], to[0]), f64::midpoint(from[1], to[1])]
        }
    };
    let name = core.say(name_of(&mark.shape));
    Item::Region {
        id: index.to_string(),
        at: Point {
            x: scene.width * x as f32 - HALF,
            y: scene.height * y as f32 - HALF,
        },
        width: 2.0 * HALF,
        height: 2.0 * HALF,
        label: if mark.text.trim().is_empty() {
            name
        } else {
            format!("{name}: {}", mark.text.trim())
        },
    }
}

fn name_of(shape: &MarkShapeRecord) -> &'static str {
    match shape {
        MarkShapeRecord::Ring { .. } => "mark-ring",
        MarkShapeRecord::Arrow { .. } => "mark-arrow",
        MarkShapeRecord::Pin { .. } => "mark-pin",
        MarkShapeRecord::TestPoint { .. } => "mark-test-point",
        MarkShapeRecord::Measure { .. } => "mark-measure",
        MarkShapeRecord::Blur { .. } => "mark-blur",
    }
}

fn palette(core: &Companion, at: &PhotoAt) -> Choice {
    let options = TOOLS
        .iter()
        .map(|(id, key)| {
            option(
                core.say(key),
                at.tool == *id,
                Pick::MarkTool { id: (*id).to_owned() },
            )
        })
        .collect();
    Choice {
        label: core.say("photo-mark"),
        kind: ChoiceKind::One,
        options,
    }
}

/// How the mark in hand looks, or the next one; a box that hides has no look.
fn looks(core: &Companion, at: &PhotoAt, held: Option<&MarkRecord>) -> Option<Choice> {
    let (is_lead, hides, now) = match held {
        Some(mark) => (
            matches!(mark.shape, MarkShapeRecord::TestPoint { .. }),
            matches!(mark.shape, MarkShapeRecord::Blur { .. }),
            compose::look_of(mark).0,
        ),
        None => (
            at.tool == "test-point",
            at.tool == "blur",
            if at.tool == "test-point" {
                at.lead.as_str()
            } else {
                at.style.as_str()
            },
        ),
    };
    let (table, label) = if is_lead {
        (compose::LEADS.as_slice(), "mark-lead")
    } else {
        (compose::STYLES.as_slice(), "mark-style")
    };
    let options = table
        .iter()
        .map(|(id, _, key)| {
            option(
                core.say(key),
                now == *id,
                Pick::MarkStyle { id: (*id).to_owned() },
            )
        })
        .collect();
    (!hides).then(|| Choice {
        label: core.say(label),
        kind: ChoiceKind::One,
        options,
    })
}

fn panel(core: &Companion, at: &PhotoAt, mark: &MarkRecord) -> MarkPanel {
    let measure = matches!(mark.shape, MarkShapeRecord::Measure { .. });
    let field = |hint: &str| {
        let typed = at.typed.get(&FieldId::MarkText).map(str::to_owned);
        Field {
            hint: core.say(hint),
            ..text_field(
                FieldId::MarkText,
                core.say("mark-words"),
                typed.unwrap_or_else(|| mark.text.clone()),
                Keys::Text,
            )
        }
    };
    let hides = matches!(mark.shape, MarkShapeRecord::Blur { .. });
    MarkPanel {
        name: core.say(name_of(&mark.shape)),
        words: (!hides).then(|| {
            field(if measure {
                "mark-measure-hint"
            } else {
                "mark-words-hint"
            })
        }),
        remove: quiet(core.say("mark-remove"), Action::RemoveMark),
    }
}

/// What the photo shows, and what is known of the vehicle's kind.
fn more(core: &Companion, at: &PhotoAt, photo: &PhotoState) -> Vec<FormItem> {
    let mut items = Vec::new();
    if let (Subject::Job, Some(job)) = (&photo.photo.about, &core.job) {
        let options = job
            .circuit
            .components
            .iter()
            .map(|part| {
                let component = part.id.to_string();
                option(
                    core.texts.part_title(&part.id),
                    false,
                    Pick::PhotoShows { component },
                )
            })
            .collect();
        items.push(one_of(core.say("photo-shows"), options));
    }
    if photo
        .marks
        .iter()
        .any(|mark| matches!(mark.shape, MarkShapeRecord::Blur { .. }))
    {
        items.push(words(core.say("photo-blur-hint")));
    }
    items.extend(kind::offer(core, at, photo));
    if core.has(PhonePart::Share) {
        items.push(crate::flow::parts::tap(plain(
            core.say("photo-share"),
            Action::SharePhoto,
        )));
    }
    items
}

fn undo(core: &Companion, at: &PhotoAt) -> Button {
    let nothing = marks::last_change(core, at)
        .is_none()
        .then(|| core.say("photo-nothing-to-undo"));
    quiet(core.say("photo-undo"), Action::Undo).unless(nothing)
}

fn remove_photo(core: &Companion, photo: &str) -> Button {
    quiet(
        core.say("photo-remove"),
        Action::RemovePhoto {
            photo: photo.to_owned(),
        },
    )
}

/// The photo's file is gone: its entry can still be read and taken out.
fn missing(core: &Companion, photo: &str) -> Body {
    let items = vec![
        words(core.say("problem-photo-missing")),
        crate::flow::parts::tap(remove_photo(core, photo)),
    ];
    Body::Settings {
        form: crate::protocol::FormScreen {
            sections: vec![crate::flow::parts::section(String::new(), items)],
            next: None,
        },
    }
}
