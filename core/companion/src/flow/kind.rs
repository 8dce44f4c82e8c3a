//! What is known of the vehicle's kind: photos that show where its parts are, kept for the next job on such a vehicle.

use holdfast_diagnose::{ComponentId, TestId};
use holdfast_joblog::{Dated, Payload, PhotoState, Rendition, Subject, Undo, VehicleKind, kind};
use holdfast_report::Scene;

use crate::companion::Companion;
use crate::compose::{self, Boxes};
use crate::flow::parts::{plain, quiet, tap, words};
use crate::flow::photo::state;
use crate::protocol::{Action, FormItem, OwnPhoto};
use crate::session::PhotoAt;
use crate::text::Args;
use crate::turn::Turn;

/// The name of the open job's vehicle kind, if it has one.
fn label(core: &Companion) -> Option<String> {
    core.job.as_ref()?.log.vehicle.label.clone()
}

/// The photo of the kind that is the same picture.
fn known<'a>(core: &'a Companion, photo: &PhotoState) -> Option<&'a Dated<PhotoState>> {
    core.kind
        .as_ref()?
        .photos
        .iter()
        .find(|known| known.value.photo.sha256 == photo.photo.sha256)
}

/// Keeps a photo for the vehicle's kind with the marks it has now; or, if it is kept so already, no longer.
pub(super) fn promote(core: &Companion, at: &PhotoAt, turn: &mut Turn<'_>) {
    let (Some(photo), Some(label)) = (state(core, &at.photo), label(core)) else {
        return;
    };
    let Some(stream) = kind::stream(&label) else {
        return;
    };
    match known(core, &photo.value) {
        Some(there) if same(&there.value, &photo.value) => {
            turn.entries
                .push((stream, Payload::Undo(Undo { target: there.key })));
        }
        there => {
            if core.kind.as_ref().is_none_or(|known| known.kind.is_none()) {
                turn.entries
                    .push((stream, Payload::VehicleKind(VehicleKind { label })));
            }
            if let Some(there) = there {
                turn.entries
                    .push((stream, Payload::Undo(Undo { target: there.key })));
            }
            let mut kept = photo.value.photo.clone();
            kept.caption.clone_from(&photo.value.caption);
            kept.marks.clone_from(&photo.value.marks);
            turn.entries.push((stream, Payload::Photo(kept)));
        }
    }
}

/// Whether two photos show the same part with the same words and marks.
fn same(one: &PhotoState, other: &PhotoState) -> bool {
    one.caption == other.caption && one.marks == other.marks && one.photo.about == other.photo.about
}

/// Keeping the open photo for the vehicle's kind, where it can be.
pub(super) fn offer(core: &Companion, _at: &PhotoAt, photo: &PhotoState) -> Vec<FormItem> {
    if photo.photo.about == Subject::Job {
        return vec![words(core.say("kind-needs-part"))];
    }
    let Some(label) = label(core).filter(|label| kind::stream(label).is_some()) else {
        return vec![words(core.say("kind-needs-name"))];
    };
    let args = Args::new().text("kind", label);
    match known(core, photo) {
        None => vec![tap(plain(
            core.say_with("kind-keep", &args),
            Action::PromotePhoto,
        ))],
        Some(there) if same(&there.value, photo) => vec![
            words(core.say_with("kind-kept", &args)),
            tap(quiet(core.say("kind-forget"), Action::PromotePhoto)),
        ],
        Some(_) => vec![tap(plain(
            core.say_with("kind-renew", &args),
            Action::PromotePhoto,
        ))],
    }
}

/// The photo that shows where a test is done: the job's own first, then what is known of the vehicle's kind.
pub(super) fn of_test(core: &Companion, test: &TestId) -> Option<OwnPhoto> {
    let job = core.job.as_ref()?;
    let place = compose::tool_place(&job.circuit, test);
    let of_job = || best(core, &job.log.photos, test, place.as_ref(), false);
    let of_kind = || best(core, &core.kind.as_ref()?.photos, test, place.as_ref(), true);
    of_job().or_else(of_kind)
}

/// The photo of a part that is known of the vehicle's kind.
pub(super) fn of_part(core: &Companion, part: &ComponentId) -> Option<OwnPhoto> {
    let photos = &core.kind.as_ref()?.photos;
    let photo = photos
        .iter()
        .rev()
        .find(|photo| photo.value.photo.about == Subject::Component(part.to_string()))?;
    Some(OwnPhoto {
        scene: drawn(core, &photo.value)?,
        words: told(core, &photo.value, true),
    })
}

/// Of the photos of a test or of the part its tool goes to, the last one with a test point on it, else the last one.
fn best(
    core: &Companion,
    photos: &[Dated<PhotoState>],
    test: &TestId,
    place: Option<&ComponentId>,
    known: bool,
) -> Option<OwnPhoto> {
    let shows = |photo: &&Dated<PhotoState>| match &photo.value.photo.about {
        Subject::Test(about) => *about == test.to_string(),
        Subject::Component(about) => place.is_some_and(|place| place.as_str() == about),
        Subject::Job => false,
    };
    let pointed = |photo: &&Dated<PhotoState>| {
        photo
            .value
            .marks
            .iter()
            .any(|mark| matches!(mark.shape, holdfast_joblog::MarkShapeRecord::TestPoint { .. }))
    };
    let newest = || photos.iter().rev().filter(shows);
    let photo = newest().find(pointed).or_else(|| newest().next())?;
    Some(OwnPhoto {
        scene: drawn(core, &photo.value)?,
        words: told(core, &photo.value, known),
    })
}

fn drawn(core: &Companion, photo: &PhotoState) -> Option<Scene> {
    let file = core.store.photos().find(&photo.photo, Rendition::Screen)?;
    Some(compose::photo_scene(&core.texts, photo, &file, Boxes::Drawn))
}

/// Whose photo it is and what it shows.
fn told(core: &Companion, photo: &PhotoState, known: bool) -> String {
    let part = match &photo.photo.about {
        Subject::Component(part) => core.texts.part_title(&ComponentId::new(part.clone())),
        Subject::Test(test) => core.test_name(test),
        Subject::Job => String::new(),
    };
    let whose = if known {
        core.say_with(
            "kind-here",
            &Args::new()
                .text("part", part)
                .text("kind", label(core).unwrap_or_default()),
        )
    } else {
        core.say_with("kind-own-here", &Args::new().text("part", part))
    };
    let caption = photo.caption.trim();
    if caption.is_empty() {
        whose
    } else {
        format!("{whose} {caption}")
    }
}
