//! The list of jobs.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` in the search field | the rows that match, as typed |
//! | `NarrowDown` | shelves and times are offered; when they were, all jobs again |
//! | `Pick` a shelf or a time, `Type` a date | the rows on that shelf, worked on then, see [`narrow`](super::narrow) |
//! | `ShowMore` | more rows |
//! | `NewJob` | a new job, logged as begun, on its vehicle screen |
//! | `OpenJob` | the job where it stands: vehicle while nothing is known, else the overview |
//! | `DuplicateJob` | a new job on the same vehicle with its circuit, on its vehicle screen |
//! | `BinJob`, `UnbinJob` | the list without it; into the bin a notice offers to take it out again |
//! | `Undo` | the job out of the bin |
//! | `EmptyBin` | asked once whether that is meant |
//! | `EmptyBinForGood` | the jobs in the bin and their photos are gone |
//! | `SelectJobs`, `Pick` a job | jobs to be exported together, see [`travel`](super::travel) |

use holdfast_joblog::{Binned, JobId, JobRow as LogRow, Opened, Payload, Undo, Vehicle};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::parts::{plain, primary, quiet, text_field};
use crate::flow::{narrow, travel};
use crate::protocol::{Action, Body, Button, FieldId, Frame, JobRow, JobsScreen, Keys, Pick, Picked};
use crate::session::{At, ListAt, NoticeAt, VehicleDraft};
use crate::text::Args;
use crate::turn::{Kept, Turn};

/// Rows that are shown at first, and that `ShowMore` adds.
const PAGE: u32 = 40;

/// The list as it stands.
pub(super) fn list_at(core: &Companion) -> ListAt {
    match &core.session.at {
        At::Listed(list) => list.clone(),
        _ => ListAt::default(),
    }
}

fn show(core: &mut Companion, list: ListAt) {
    core.session.at = if list == ListAt::default() {
        At::Jobs
    } else {
        At::Listed(list)
    };
}

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let list = list_at(core);
    match action {
        Action::Type { field, text } => {
            // Each letter shows other rows; what was typed is on disk with whatever is done next.
            turn.kept = Kept::WithTheNext;
            let list = ListAt { pages: 0, ..list };
            match field {
                FieldId::Search => show(core, ListAt { search: text, ..list }),
                FieldId::WorkedFrom => show(core, ListAt { from: text, ..list }),
                FieldId::WorkedUntil => show(core, ListAt { until: text, ..list }),
                _ => {}
            }
        }
        Action::Pick {
            pick: Pick::Shelf { id },
        } => {
            let pages = 0;
            show(
                core,
                ListAt {
                    shelf: id,
                    pages,
                    ..list
                },
            );
        }
        Action::Pick {
            pick: Pick::WorkedOn { id },
        } => {
            let pages = 0;
            show(
                core,
                ListAt {
                    time: id,
                    pages,
                    ..list
                },
            );
        }
        Action::Pick {
            pick: Pick::Job { job },
        } => show(core, list.toggled(job)),
        Action::NarrowDown => show(core, list.narrowed()),
        Action::ShowMore => {
            let pages = list.pages.saturating_add(1);
            show(core, ListAt { pages, ..list });
        }
        Action::SelectJobs => show(
            core,
            ListAt {
                picked: Some(Vec::new()),
                ..list
            },
        ),
        Action::SelectNone => show(core, ListAt { picked: None, ..list }),
        Action::NewJob => begin(core, Opened::by(env!("CARGO_PKG_VERSION")), turn),
        Action::DuplicateJob { job } => duplicate(core, &job, turn)?,
        Action::OpenJob { job } => open(core, job)?,
        Action::BinJob { job } => bin(core, job, turn),
        Action::UnbinJob { job } => unbin(core, &job, turn)?,
        Action::Undo => {
            if let Some(NoticeAt::Binned { job }) = core.session.notice.take() {
                unbin(core, &job, turn)?;
            }
        }
        Action::EmptyBin => core.session.notice = Some(NoticeAt::EmptyBin),
        Action::EmptyBinForGood if core.session.notice == Some(NoticeAt::EmptyBin) => {
            for job in core.store.empty_bin()? {
                forget(core, &job.to_string());
            }
            core.session.notice = Some(NoticeAt::words("notice-bin-emptied"));
        }
        Action::KeepBin => core.session.notice = None,
        _ => {}
    }
    Ok(())
}

/// What stands of a job beside the log: tests in the middle, its report, files that were handed on.
fn forget(core: &mut Companion, job: &str) {
    core.session.parked.retain(|parked| parked.job != job);
    core.session.report = core.session.report.take().filter(|made| made.of.job != job);
    let report = super::report::file_of(core, job);
    let _gone = std::fs::remove_file(report.with_extension("csv"));
    let _gone = std::fs::remove_file(report);
    let _gone = std::fs::remove_dir_all(core.data_dir.join("exports"));
}

fn begin(core: &mut Companion, opened: Opened, turn: &mut Turn<'_>) {
    let job = core.store.new_job();
    core.session.job = Some(job.to_string());
    core.session.notice = None;
    core.job = None;
    core.append(Payload::Opened(opened), turn);
    core.state_settings(turn);
    core.session.at = At::Vehicle(VehicleDraft::default());
}

/// The vehicle is back: who and what it is and its circuit are taken over, what was complained of and read is not.
fn duplicate(core: &mut Companion, job: &str, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let Ok(before) = job.parse::<JobId>() else {
        return Ok(());
    };
    let log = core.store.fold(before)?;
    if log.record.is_empty() {
        return Ok(());
    }
    let opened = Opened {
        continues: Some(before),
        ..Opened::by(env!("CARGO_PKG_VERSION"))
    };
    begin(core, opened, turn);
    let vehicle = Vehicle {
        odometer: None,
        odometer_km: None,
        agreed: None,
        ..log.vehicle
    };
    core.append(Payload::Vehicle(vehicle), turn);
    if let Some(circuit) = log.circuit {
        core.append(Payload::Circuit(circuit), turn);
    }
    Ok(())
}

fn open(core: &mut Companion, job: String) -> Result<(), ActError> {
    core.session.job = Some(job);
    core.session.notice = None;
    core.take_up_job()?;
    let begun = core.job.as_ref().is_some_and(|job| job.log.place.is_some());
    core.session.at = match (&core.job, begun) {
        (None, _) => At::Jobs,
        (Some(_), true) => At::Overview,
        (Some(_), false) => At::Vehicle(VehicleDraft::default()),
    };
    Ok(())
}

fn bin(core: &mut Companion, job: String, turn: &mut Turn<'_>) {
    if let Ok(id) = job.parse::<JobId>() {
        turn.entries.push((id, Payload::Binned(Binned {})));
        core.session.notice = Some(NoticeAt::Binned { job });
    }
}

fn unbin(core: &mut Companion, job: &str, turn: &mut Turn<'_>) -> Result<(), ActError> {
    core.session.notice = None;
    let Ok(id) = job.parse::<JobId>() else {
        return Ok(());
    };
    if let Some(target) = core.store.fold(id)?.binned {
        turn.entries.push((id, Payload::Undo(Undo { target })));
    }
    Ok(())
}

fn shown(list: &ListAt) -> u32 {
    PAGE.saturating_mul(list.pages.saturating_add(1))
}

pub(super) fn screen(core: &Companion) -> (Frame, Body) {
    let list = list_at(core);
    let (mut rows, problem) = match core.store.list(&narrow::query(core, &list, shown(&list) + 1)) {
        Ok(rows) => (rows, None),
        Err(error) => (Vec::new(), Some(ActError::from(error).text_in(&core.texts))),
    };
    let most = shown(&list) as usize;
    let more = (rows.len() > most).then(|| plain(core.say("jobs-more"), Action::ShowMore));
    rows.truncate(most);
    let mut field = text_field(
        FieldId::Search,
        core.say("jobs-search"),
        list.search.clone(),
        Keys::Text,
    );
    field.hint = core.say("jobs-search-hint");
    field.problem = problem;
    let empty = if rows.is_empty() {
        empty_words(core, &list)
    } else {
        String::new()
    };
    let jobs = JobsScreen {
        search: field,
        narrow: quiet(
            core.say(if list.is_narrowed() {
                "jobs-widen"
            } else {
                "jobs-narrow"
            }),
            Action::NarrowDown,
        ),
        filters: narrow::filters(core, &list),
        dates: narrow::dates(core, &list),
        rows: rows.iter().map(|row| job_row(core, &list, row)).collect(),
        more,
        empty,
        buttons: buttons(core, &list, rows.is_empty()),
        new_job: match &list.picked {
            Some(picked) => travel::export_picked(core, picked.len()),
            None => primary(core.say("jobs-new"), Action::NewJob),
        },
    };
    (Frame::titled(core.say("jobs-title")), Body::Jobs { jobs })
}

fn empty_words(core: &Companion, list: &ListAt) -> String {
    let asked = !list.search.is_empty() || list.time != "any" || list.shelf != "all";
    core.say(match (list.shelf.as_str(), asked) {
        ("bin", _) if list.search.is_empty() => "jobs-bin-empty",
        (_, true) => "jobs-none-found",
        (_, false) => "jobs-none",
    })
}

/// What can be done with many jobs at once.
fn buttons(core: &Companion, list: &ListAt, none: bool) -> Vec<Button> {
    if list.picked.is_some() {
        return vec![quiet(core.say("jobs-select-none"), Action::SelectNone)];
    }
    let mut buttons = Vec::new();
    if list.shelf == "bin" && !none {
        buttons.push(plain(core.say("jobs-empty-bin"), Action::EmptyBin));
    }
    if !none {
        buttons.push(plain(core.say("jobs-select"), Action::SelectJobs));
    }
    buttons.extend(travel::buttons(core, none));
    buttons
}

fn job_row(core: &Companion, list: &ListAt, row: &LogRow) -> JobRow {
    let vehicle = row.label.clone().unwrap_or_else(|| core.say("jobs-unnamed"));
    let job = row.job.to_string();
    let picked = list.picked.as_ref().map(|picked| {
        if picked.contains(&job) {
            Picked::Yes
        } else {
            Picked::No
        }
    });
    let open = match picked {
        Some(_) => Action::Pick {
            pick: Pick::Job { job: job.clone() },
        },
        None => Action::OpenJob { job: job.clone() },
    };
    let label = if picked.is_some() {
        "jobs-pick"
    } else {
        "jobs-open"
    };
    let buttons = match (picked, row.binned) {
        (Some(_), _) => Vec::new(),
        (None, true) => vec![quiet(core.say("notice-binned-undo"), Action::UnbinJob { job })],
        (None, false) => vec![
            quiet(
                core.say("jobs-duplicate"),
                Action::DuplicateJob { job: job.clone() },
            ),
            quiet(core.say("jobs-bin"), Action::BinJob { job }),
        ],
    };
    JobRow {
        plate: row.plate.clone().unwrap_or_default(),
        vehicle,
        found: found_words(core, row),
        mark: core.job_mark(row),
        when: core.when(row.last_ms, row.opened_offset_min),
        picked,
        open: primary(core.say(label), open),
        buttons,
    }
}

/// What was found, where the job is closed, and whose vehicle it is.
fn found_words(core: &Companion, row: &LogRow) -> String {
    let headline = row
        .closed
        .as_ref()
        .map(|closed| closed.headline.trim().to_owned());
    let customer = row
        .customer
        .as_ref()
        .map(|name| core.say_with("jobs-customer", &Args::new().text("name", name.trim())));
    [customer, headline]
        .into_iter()
        .flatten()
        .filter(|words| !words.is_empty())
        .collect::<Vec<_>>()
        .join(" ")
}
