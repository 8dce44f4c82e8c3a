//! Photos: taken or picked, captioned, marked ([`marks`]), kept for the vehicle's kind ([`kind`]).
//!
//! | event | leads to |
//! |---|---|
//! | `AddPhoto` | the phone is asked for a picture; what it shows is remembered |
//! | `PhotoTaken` | the picture is taken in, on another thread |
//! | `PhotoNotTaken` | nothing |
//! | `WorkDone` of that | logged; HEIF goes to the phone to be decoded, once; or why it was not taken in |
//! | `OpenPhoto` | the photo with its marks |
//! | `Pick` a mark | the next touch sets that mark |
//! | `Pick` what it shows | put right in the photo's entry |
//! | `Type` caption or words | kept; logged on leaving |
//! | `RemovePhoto` | taken out of the job; the screen before |
//! | `PromotePhoto` | known of the vehicle's kind from now on, or no longer |
//! | `SharePhoto` | a copy with the marks burnt in is made and handed on |
//! | `Confirm` | the screen before |

use std::path::PathBuf;

use holdfast_joblog::{
    Correction, Dated, EntryKey, ImportError, Payload, PhotoState, Rendition, Subject, Undo,
};
use holdfast_report::theme::Theme;
use holdfast_report::{PhotoScene, Scene, render_png};

use crate::companion::Companion;
use crate::compose::{self, Boxes};
use crate::error::ActError;
use crate::flow::{kind, marks};
use crate::protocol::{Action, FieldId, FormItem, PhotoCard, PhotoSource, PhotoSubject, Pick, Request};
use crate::session::{At, NoticeAt, PhotoAt};
use crate::turn::Turn;
use crate::typed::Typed;
use crate::work::{Go, Product, Task, ToShare, write_whole};

/// Width of a shared picture, pixels: the long side of a print rendition.
const SHARED_WIDTH: u32 = 1_600;
/// Media type of a shared picture.
const PNG: &str = "image/png";

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
        Action::PhotoTaken { path } if core.job.is_some() => take_in(core, path, turn),
        Action::PictureNotDecoded => core.session.notice = Some(NoticeAt::words("problem-photo-type")),
        Action::PhotoNotTaken => core.session.photo_for = None,
        Action::OpenPhoto { photo } => {
            let before = Box::new(core.session.at.clone());
            core.session.notice = None;
            core.session.at = At::Photo(PhotoAt {
                photo,
                tool: "test-point".to_owned(),
                style: "accent".to_owned(),
                lead: "tool".to_owned(),
                mark: None,
                typed: Typed::default(),
                before,
            });
        }
        _ => {}
    }
    Ok(())
}

fn take_in(core: &mut Companion, path: String, turn: &mut Turn<'_>) {
    let task = import(core.store.photos(), path);
    core.begin_work(task, "photo-working", turn);
}

fn import(photos: holdfast_joblog::Photos, path: String) -> Task {
    Box::new(move |go_on| {
        let asked = std::cell::RefCell::new(go_on);
        let imported = photos.import(&PathBuf::from(&path), &|stage| {
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
            Err(ImportError::Heif) => Product::Heif(path),
            Err(error) => Product::Failed(problem(&error), error.to_string()),
        }
    })
}

fn problem(error: &ImportError) -> &'static str {
    match error {
        ImportError::NotAPicture | ImportError::Heif | ImportError::Moving => "problem-photo-type",
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
    core.session.notice = Some(NoticeAt::words("photo-kept"));
    core.append(Payload::Photo(imported.photo(about, "")), turn);
}

/// A photo of the open job by its entry.
pub(super) fn state<'a>(core: &'a Companion, key: &str) -> Option<&'a Dated<PhotoState>> {
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
            field: field @ (FieldId::Caption | FieldId::MarkText),
            text,
        } => {
            at.typed.put(field, &text);
            core.session.at = At::Photo(at);
        }
        Action::Pick {
            pick: Pick::MarkTool { id },
        } => {
            settle(core, &at, turn)?;
            at.typed.forget(&FieldId::MarkText);
            at.tool = id;
            at.mark = None;
            core.session.at = At::Photo(at);
        }
        Action::Pick {
            pick: Pick::MarkStyle { id },
        } => marks::restyle(core, at, &id, turn),
        Action::Pick {
            pick: Pick::PhotoShows { component },
        } => show(core, &at, component, turn)?,
        Action::Grab { x, y, reach } => marks::grab(core, &at, x, y, reach),
        Action::Release => marks::release(core, at, turn),
        Action::RemoveMark => marks::remove(core, at, turn),
        Action::Undo => marks::undo(core, at, turn),
        Action::RemovePhoto { photo } => {
            if let Ok(target) = photo.parse::<EntryKey>() {
                core.append(Payload::Undo(Undo { target }), turn);
            }
            core.session.at = *at.before;
        }
        Action::PromotePhoto => {
            settle(core, &at, turn)?;
            kind::promote(core, &at, turn);
        }
        Action::SharePhoto => share(core, &at, turn),
        Action::Confirm => {
            settle(core, &at, turn)?;
            core.session.at = *at.before;
        }
        _ => {}
    }
    Ok(())
}

/// Logs caption and words, if they changed.
pub(super) fn settle(core: &mut Companion, at: &PhotoAt, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let marks = marks::marks_now(core, at);
    marks::log(core, at, marks, turn);
    core.moving.held = None;
    Ok(())
}

/// Puts right what a photo shows.
fn show(core: &Companion, at: &PhotoAt, component: String, turn: &mut Turn<'_>) -> Result<(), ActError> {
    if let Some(photo) = state(core, &at.photo) {
        let mut shown = photo.value.photo.clone();
        shown.about = Subject::Component(component);
        let instead = Correction::of(photo.key, &Payload::Photo(shown))?;
        core.append(Payload::Correction(instead), turn);
    }
    Ok(())
}

/// Makes a copy with the marks burnt in, to be handed on.
fn share(core: &mut Companion, at: &PhotoAt, turn: &mut Turn<'_>) {
    let Some(photo) = state(core, &at.photo).map(|photo| photo.value.clone()) else {
        return;
    };
    let photos = core.store.photos();
    let marks = compose::photo_marks(&core.texts, &photo.marks, Boxes::Burnt);
    let boxes = compose::blur_boxes(&photo.marks);
    let to = core.data_dir.join("exports").join("photo.png");
    let task: Task = Box::new(move |go_on| {
        let file = match photos.blurred(&photo.photo, &boxes) {
            Ok(Some(file)) => file,
            Ok(None) => return Product::Failed("problem-photo-missing", String::new()),
            Err(error) => return Product::Failed(problem(&error), error.to_string()),
        };
        if go_on(300) == Go::Stop {
            return Product::Stopped;
        }
        let scene = holdfast_report::photo(&PhotoScene {
            path: file.to_string_lossy().into_owned(),
            width_px: photo.photo.width,
            height_px: photo.photo.height,
            marks,
            ..PhotoScene::default()
        });
        let written = match render_png(&scene, Theme::Day, SHARED_WIDTH) {
            Ok(bytes) => write_whole(&to, &bytes),
            Err(error) => return Product::Failed("problem-photo-damaged", error.to_string()),
        };
        match written {
            Ok(()) => Product::ToShare(ToShare {
                path: to,
                mime: PNG,
                title: "photo-shared-title",
            }),
            Err(error) => Product::Failed("problem-full", error.to_string()),
        }
    });
    core.begin_work(task, "photo-sharing", turn);
}

/// A photo with its marks; none where its file is missing.
pub(crate) fn scene(core: &Companion, photo: &PhotoState, rendition: Rendition) -> Option<Scene> {
    let file = core.store.photos().find(&photo.photo, rendition)?;
    Some(compose::photo_scene(&core.texts, photo, &file, Boxes::Drawn))
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
