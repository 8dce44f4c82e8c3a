//! Jobs that travel: packed into a bundle and handed on, taken in from one.
//!
//! | event | leads to |
//! |---|---|
//! | `ExportJobs` | the jobs are packed on another thread; then the phone hands the file on |
//! | `ImportBundle` | the phone is asked for a file |
//! | `BundleTaken` | it is looked over and taken in, on another thread |
//! | `BundleNotTaken` | nothing |
//! | `TakeAgain` | jobs that were deleted here and stand in the last bundle are let in again, and it is taken in once more |

use std::path::{Path, PathBuf};

use holdfast_joblog::{BundleError, JobId, Received, Selection, UseError};

use crate::companion::Companion;
use crate::error::{ActError, key_in_use};
use crate::flow::jobs;
use crate::flow::parts::{plain, primary};
use crate::protocol::{Action, Button, ExportOf, PhonePart, Request};
use crate::session::{NoticeAt, Took};
use crate::text::Args;
use crate::turn::Turn;
use crate::work::{Go, Product, Task, ToShare};

/// Media type of a bundle.
const ZIP: &str = "application/zip";

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::ExportJobs { of } => export(core, of, turn),
        Action::ImportBundle => turn.ask(Request::PickBundle),
        Action::BundleTaken { path } => take_in(core, path, turn),
        Action::TakeAgain => {
            if let Some(NoticeAt::Took { took }) = core.session.notice.take()
                && let Some(path) = took.again
            {
                for job in took.deleted.iter().filter_map(|job| job.parse::<JobId>().ok()) {
                    core.store.allow_again(job)?;
                }
                take_in(core, path, turn);
            }
        }
        _ => {}
    }
    Ok(())
}

fn export(core: &mut Companion, of: ExportOf, turn: &mut Turn<'_>) {
    let ids = |jobs: &[String]| {
        jobs.iter()
            .filter_map(|job| job.parse::<JobId>().ok())
            .collect::<Vec<_>>()
    };
    let selection = match of {
        ExportOf::All => Selection::All,
        ExportOf::Picked => Selection::Jobs(ids(&jobs::list_at(core).picked.unwrap_or_default())),
        ExportOf::Open => Selection::Jobs(core.job.iter().map(|job| job.id).collect()),
    };
    if selection == Selection::Jobs(Vec::new()) {
        return;
    }
    let exporter = core.store.exporter(env!("CARGO_PKG_VERSION"));
    let to = file(core, turn);
    let made = turn.stamp();
    let task: Task = Box::new(move |go_on| {
        let packed = exporter.export(&selection, &to, made, &mut |permille| go_on(permille) == Go::On);
        match packed {
            Ok(()) => Product::ToShare(ToShare {
                path: to,
                mime: ZIP,
                title: "bundle-file-title",
            }),
            Err(BundleError::Stopped) => Product::Stopped,
            Err(error) => Product::Failed(problem(&error), error.to_string()),
        }
    });
    core.begin_work(task, "bundle-packing", turn);
}

/// Where a bundle goes; what was exported before has been handed on and makes room.
fn file(core: &Companion, turn: &Turn<'_>) -> PathBuf {
    let folder = core.data_dir.join("exports");
    let _gone = std::fs::remove_dir_all(&folder);
    let day = crate::compose::day_in_file_name(turn.clock.wall_ms, turn.clock.offset_min);
    folder.join(format!("jobs-{day}.zip"))
}

fn take_in(core: &mut Companion, path: String, turn: &mut Turn<'_>) {
    let importer = core.store.importer();
    let task: Task = Box::new(move |go_on| {
        let taken = importer.import(Path::new(&path), &mut |permille| go_on(permille) == Go::On);
        match taken {
            Ok(received) => Product::Received(Box::new((path, received))),
            Err(BundleError::Stopped) => Product::Stopped,
            Err(error) => Product::Failed(problem(&error), error.to_string()),
        }
    });
    core.begin_work(task, "bundle-taking-in", turn);
}

/// A bundle was taken in: the list and the open job show what it brought.
pub(super) fn received(core: &mut Companion, path: String, received: &Received) -> Result<(), ActError> {
    let merged = &received.merged;
    core.session.notice = Some(NoticeAt::Took {
        took: Took {
            jobs: merged.jobs.len(),
            left_out: merged.clashing.len() + merged.refused.len(),
            broken_photos: received.broken_photos,
            deleted: merged.purged.iter().map(ToString::to_string).collect(),
            again: (!merged.purged.is_empty()).then_some(path),
        },
    });
    core.take_up_job()?;
    Ok(())
}

/// What came of taking a bundle in, in words.
pub(super) fn took_words(core: &Companion, took: &Took) -> String {
    let counted =
        |key: &str, count: usize| (count > 0).then(|| core.say_with(key, &Args::new().count("count", count)));
    let first = counted("bundle-took", took.jobs).unwrap_or_else(|| core.say("bundle-took-nothing"));
    let more = [
        counted("bundle-left-out", took.left_out),
        counted("bundle-broken-photos", took.broken_photos),
        counted("bundle-deleted", took.deleted.len()),
    ];
    std::iter::once(first)
        .chain(more.into_iter().flatten())
        .collect::<Vec<_>>()
        .join(" ")
}

/// The way to let deleted jobs in again, where there are any.
pub(super) fn took_buttons(core: &Companion, took: &Took) -> Vec<Button> {
    let again = took
        .again
        .is_some()
        .then(|| plain(core.say("bundle-take-again"), Action::TakeAgain));
    again.into_iter().collect()
}

fn problem(error: &BundleError) -> &'static str {
    match error {
        BundleError::NotABundle => "problem-bundle-none",
        BundleError::Newer { .. } => "problem-bundle-newer",
        BundleError::Truncated => "problem-bundle-cut",
        BundleError::Strange { .. }
        | BundleError::TooLarge { .. }
        | BundleError::WrongDigest { .. }
        | BundleError::Damaged { .. } => "problem-bundle-damaged",
        BundleError::Stopped => "bundle-stopped",
        BundleError::Log(UseError::Io(_)) => "problem-bundle-file",
        BundleError::Log(error) => key_in_use(error),
    }
}

/// Exports what is picked.
pub(super) fn export_picked(core: &Companion, count: usize) -> Button {
    let label = core.say_with("jobs-export-picked", &Args::new().count("count", count));
    let none = (count == 0).then(|| core.say("jobs-none-picked"));
    primary(label, Action::ExportJobs { of: ExportOf::Picked }).unless(none.or_else(|| cannot_share(core)))
}

fn cannot_share(core: &Companion) -> Option<String> {
    (!core.has(PhonePart::Share)).then(|| core.say("report-no-share"))
}

/// Export of the whole log, and import.
pub(super) fn buttons(core: &Companion, none: bool) -> Vec<Button> {
    let all = plain(
        core.say("jobs-export-all"),
        Action::ExportJobs { of: ExportOf::All },
    );
    let import = plain(core.say("jobs-import"), Action::ImportBundle);
    let mut buttons = Vec::new();
    if !none {
        buttons.push(all.unless(cannot_share(core)));
    }
    if core.has(PhonePart::Gallery) {
        buttons.push(import);
    }
    buttons
}

/// Export of the job that is open.
pub(super) fn export_open(core: &Companion) -> Button {
    plain(core.say("log-export"), Action::ExportJobs { of: ExportOf::Open }).unless(cannot_share(core))
}
