//! Photos: taken or picked, captioned, marked.
//!
//! | event | leads to |
//! |---|---|
//! | `AddPhoto` | the phone is asked for a picture; what it shows is remembered |
//! | `PhotoTaken` | the picture is taken in, on another thread |
//! | `PhotoNotTaken` | nothing |
//! | `WorkDone` of that | logged, or why it was not taken in |
//! | `OpenPhoto` | the photo with its marks |
//! | `Pick` a mark | the next touch sets that mark |
//! | `Touch` | the mark; an arrow needs two, tail and tip |
//! | `Undo` | without the last mark |
//! | `Type` the caption | kept; logged on leaving |
//! | `RemovePhoto` | taken out of the job; the screen before |
//! | `Confirm` | the screen before |

use std::path::PathBuf;

use holdfast_joblog::{
    Dated, EntryKey, ImportError, MarkRecord, MarkShapeRecord, Payload, PhotoMarked, PhotoState, Rendition,
    Subject, Undo,
};
use holdfast_report::{PhotoMark, PhotoScene, Scene, Spot, photo};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::parts::{plain, primary, quiet, text_field};
use crate::protocol::{
    Action, Body, Choice, ChoiceKind, FieldId, FormItem, Frame, Keys, PhotoCard, PhotoScreen, PhotoSource,
    PhotoSubject, Pick, Request,
};
use crate::session::{At, NoticeAt, PhotoAt};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;
use crate::work::{Go, Product, Task};

/// The marks of the palette, by id.
const TOOLS: [&str; 4] = ["ring", "arrow", "pin", "test-point"];
/// Radius of a ring, as a share of the photo's width.
const RING_RADIUS: f64 = 0.09;
/// Width of a photo's scene, scene units.
const SCENE_WIDTH: f64 = 360.0;

/// A photo is wanted, comes, or is opened.
pub(super) fn add(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::AddPhoto { from, about } if core.job.is_some() => {
            core.session.photo_for = Some(about);
            turn.ask(match from {
                PhotoSource::Camera => Request::TakePhoto,
                PhotoSource::Gallery => Request::PickPhoto,
            });
        }
        Action::PhotoTaken { path } if core.job.is_some() => {
            let photos = core.store.photos();
            let id = core.works.offer(import(photos, PathBuf::from(path)));
            core.session.notice = Some(NoticeAt::Words {
                key: "photo-working".to_owned(),
            });
            turn.ask(Request::Work { id });
        }
        Action::PhotoNotTaken => core.session.photo_for = None,
        Action::OpenPhoto { photo } => {
            let before = Box::new(core.session.at.clone());
            core.session.at = At::Photo(PhotoAt {
                photo,
                tool: "ring".to_owned(),
                typed: Typed::default(),
                from: None,
                before,
            });
        }
        _ => {}
    }
    Ok(())
}

fn import(photos: holdfast_joblog::Photos, path: PathBuf) -> Task {
    Box::new(move |go_on| {
        let asked = std::cell::RefCell::new(go_on);
        let imported = photos.import(&path, &|stage| {
            let permille = match stage {
                holdfast_joblog::ImportStage::Reading => 0,
                holdfast_joblog::ImportStage::Decoding => 100,
                holdfast_joblog::ImportStage::Rendering => 600,
                holdfast_joblog::ImportStage::Keeping => 900,
            };
            (asked.borrow_mut())(permille) == Go::On
        });
        match imported {
            Ok(imported) => Product::Photo(Box::new(imported)),
            Err(ImportError::Stopped) => Product::Stopped,
            Err(error) => Product::Failed(problem(&error), error.to_string()),
        }
    })
}

fn problem(error: &ImportError) -> &'static str {
    match error {
        ImportError::NotAPicture | ImportError::Moving => "problem-photo-type",
        ImportError::TooLarge { .. } | ImportError::TooManyPixels { .. } => "problem-photo-too-large-plain",
        ImportError::Truncated | ImportError::Damaged { .. } => "problem-photo-damaged",
        ImportError::Stopped => "photo-stopped",
        ImportError::NoSpace => "problem-full",
        ImportError::ReadOnly => "problem-read-only",
        ImportError::Io(_) => "problem-photo-missing",
    }
}

/// A picture was taken in: it becomes part of the job.
pub(super) fn imported(core: &mut Companion, imported: &holdfast_joblog::Imported, turn: &mut Turn<'_>) {
    let about = match core.session.photo_for.take() {
        Some(PhotoSubject::Test { test }) => Subject::Test(test),
        Some(PhotoSubject::Component { component }) => Subject::Component(component),
        Some(PhotoSubject::Job) | None => Subject::Job,
    };
    core.session.notice = Some(NoticeAt::Words {
        key: "photo-kept".to_owned(),
    });
    core.append(Payload::Photo(imported.photo(about, "")), turn);
}

fn state<'a>(core: &'a Companion, key: &str) -> Option<&'a Dated<PhotoState>> {
    core.job
        .as_ref()?
        .log
        .photos
        .iter()
        .find(|photo| photo.key.to_string() == key)
}

pub(super) fn act(
    core: &mut Companion,
    mut at: PhotoAt,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type {
            field: FieldId::Caption,
            text,
        } => {
            at.typed.put(FieldId::Caption, &text);
            core.session.at = At::Photo(at);
        }
        Action::Pick {
            pick: Pick::MarkTool { id },
        } => {
            at.tool = id;
            at.from = None;
            core.session.at = At::Photo(at);
        }
        Action::Touch { x, y } => touch(core, at, x, y, turn),
        Action::Undo => {
            at.from = None;
            let marks = state(core, &at.photo)
                .map(|photo| photo.value.marks.clone())
                .unwrap_or_default();
            let kept = marks.len().saturating_sub(1);
            if !marks.is_empty() {
                mark(core, &at, marks.into_iter().take(kept).collect(), turn);
            }
            core.session.at = At::Photo(at);
        }
        Action::RemovePhoto { photo } => {
            if let Ok(target) = photo.parse::<EntryKey>() {
                core.append(Payload::Undo(Undo { target }), turn);
            }
            core.session.at = *at.before;
        }
        Action::Confirm => {
            settle(core, &at, turn)?;
            core.session.at = *at.before;
        }
        _ => {}
    }
    Ok(())
}

/// Logs the caption, if it changed.
pub(super) fn settle(core: &mut Companion, at: &PhotoAt, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let Some(photo) = state(core, &at.photo) else {
        return Ok(());
    };
    let changed = at
        .typed
        .get(&FieldId::Caption)
        .is_some_and(|text| text.trim() != photo.value.caption);
    if changed {
        let marks = photo.value.marks.clone();
        mark(core, at, marks, turn);
    }
    Ok(())
}

/// Logs caption and marks as they are from now on.
fn mark(core: &Companion, at: &PhotoAt, marks: Vec<MarkRecord>, turn: &mut Turn<'_>) {
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let caption = at
        .typed
        .get(&FieldId::Caption)
        .map_or(photo.value.caption.clone(), |text| text.trim().to_owned());
    core.append(
        Payload::PhotoMarked(PhotoMarked {
            photo: photo.key,
            caption,
            marks,
        }),
        turn,
    );
}

fn touch(core: &mut Companion, mut at: PhotoAt, x: f32, y: f32, turn: &mut Turn<'_>) {
    let Some(photo) = state(core, &at.photo) else {
        return;
    };
    let (width, height) = (
        f64::from(photo.value.photo.width.max(1)),
        f64::from(photo.value.photo.height.max(1)),
    );
    let share = |of: f32, whole: f64| (f64::from(of) / whole).clamp(0.0, 1.0);
    let place = [share(x, SCENE_WIDTH), share(y, SCENE_WIDTH * height / width)];
    let mut marks = photo.value.marks.clone();
    let pins = marks
        .iter()
        .filter(|m| matches!(m.shape, MarkShapeRecord::Pin { .. }))
        .count();
    let shape = match (at.tool.as_str(), at.from.take()) {
        ("arrow", None) => {
            at.from = Some(place);
            None
        }
        ("arrow", Some(from)) => Some(MarkShapeRecord::Arrow { from, to: place }),
        ("pin", _) => Some(MarkShapeRecord::Pin {
            at: place,
            number: u32::try_from(pins + 1).unwrap_or(u32::MAX),
        }),
        ("test-point", _) => Some(MarkShapeRecord::TestPoint { at: place }),
        _ => Some(MarkShapeRecord::Ring {
            at: place,
            radius: RING_RADIUS,
        }),
    };
    if let Some(shape) = shape {
        marks.push(MarkRecord {
            shape,
            text: String::new(),
            style: String::new(),
        });
        mark(core, &at, marks, turn);
    }
    core.session.at = At::Photo(at);
}

/// A photo with its marks; none where its file is missing.
pub(crate) fn scene(core: &Companion, photo_state: &PhotoState, rendition: Rendition) -> Option<Scene> {
    let file = core.store.photos().find(&photo_state.photo, rendition)?;
    let spot = |at: &[f64; 2]| Spot { x: at[0], y: at[1] };
    let marks = photo_state
        .marks
        .iter()
        .map(|mark| match &mark.shape {
            MarkShapeRecord::Arrow { from, to } | MarkShapeRecord::Measure { from, to } => PhotoMark::Arrow {
                from: spot(from),
                to: spot(to),
            },
            MarkShapeRecord::Ring { at, radius } => PhotoMark::Ring {
                centre: spot(at),
                radius: *radius,
            },
            MarkShapeRecord::Pin { at, number } => PhotoMark::Pin {
                at: spot(at),
                number: number.to_string(),
            },
            MarkShapeRecord::TestPoint { at } => PhotoMark::TestPoint {
                at: spot(at),
                lead: None,
                words: mark.text.clone(),
            },
            MarkShapeRecord::Blur { from, to } => PhotoMark::Ring {
                centre: Spot {
                    x: f64::midpoint(from[0], to[0]),
                    y: f64::midpoint(from[1], to[1]),
                },
                radius: (to[0] - from[0]).abs() / 2.0,
            },
        })
        .collect();
    let alt = if photo_state.caption.is_empty() {
        core.say("photo-alt")
    } else {
        photo_state.caption.clone()
    };
    Some(photo(&PhotoScene {
        alt,
        path: file.to_string_lossy().into_owned(),
        width_px: photo_state.photo.width,
        height_px: photo_state.photo.height,
        marks,
    }))
}

/// The photos of a subject, or of the whole job, as cards.
pub(super) fn cards(core: &Companion, about: Option<&PhotoSubject>) -> Vec<FormItem> {
    let Some(job) = &core.job else { return Vec::new() };
    let wanted = |subject: &Subject| match about {
        None => true,
        Some(PhotoSubject::Job) => false,
        Some(PhotoSubject::Test { test }) => *subject == Subject::Test(test.clone()),
        Some(PhotoSubject::Component { component }) => *subject == Subject::Component(component.clone()),
    };
    job.log
        .photos
        .iter()
        .filter(|photo| wanted(&photo.value.photo.about))
        .filter_map(|photo| {
            let card = PhotoCard {
                scene: scene(core, &photo.value, Rendition::Screen)?,
                caption: photo.value.caption.clone(),
                open: Action::OpenPhoto {
                    photo: photo.key.to_string(),
                },
            };
            Some(FormItem::Photo { photo: card })
        })
        .collect()
}

pub(super) fn screen(core: &Companion, at: &PhotoAt) -> (Frame, Body) {
    let frame = Frame::titled(core.say("photo-title"));
    let Some(photo) = state(core, &at.photo) else {
        return (frame, core.nothing());
    };
    let Some(scene) = scene(core, &photo.value, Rendition::Screen) else {
        return (frame, core.nothing());
    };
    let options = TOOLS
        .iter()
        .map(|tool| {
            crate::flow::parts::option(
                core.say(&format!("mark-{tool}")),
                at.tool == *tool,
                Pick::MarkTool {
                    id: (*tool).to_owned(),
                },
            )
        })
        .collect();
    let caption = at
        .typed
        .get(&FieldId::Caption)
        .map_or(photo.value.caption.clone(), str::to_owned);
    let none = photo.value.marks.is_empty().then(|| core.say("photo-no-marks"));
    let label = if at.from.is_some() {
        core.say("mark-arrow-tip")
    } else {
        core.say("photo-mark")
    };
    let screen = PhotoScreen {
        scene,
        palette: Choice {
            label,
            kind: ChoiceKind::One,
            options,
        },
        caption: text_field(FieldId::Caption, core.say("photo-caption"), caption, Keys::Text),
        buttons: vec![
            primary(core.say("photo-done"), Action::Confirm),
            plain(core.say("photo-undo"), Action::Undo).unless(none),
            quiet(
                core.say_with("photo-remove", &Args::new()),
                Action::RemovePhoto {
                    photo: at.photo.clone(),
                },
            ),
        ],
    };
    (frame, Body::Photo { photo: screen })
}
