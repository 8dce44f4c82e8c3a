//! The list of jobs.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` in the search field | the rows that match, as typed |
//! | `NewJob` | a new job, logged as begun, on its vehicle screen |
//! | `OpenJob` | the job where it stands: vehicle while nothing is known, else the overview |
//! | `BinJob` | the list without it; a notice offers to take it out again |
//! | `Undo` | the job out of the bin |

use holdfast_joblog::{Binned, JobId, JobRow as LogRow, Opened, Payload, Query, Undo};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::parts::{primary, quiet, text_field};
use crate::protocol::{Action, Body, FieldId, Frame, JobRow, JobsScreen, Keys};
use crate::session::{At, NoticeAt, VehicleDraft};
use crate::turn::Turn;

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::Type {
            field: FieldId::Search,
            text,
        } => {
            core.session.at = if text.is_empty() {
                At::Jobs
            } else {
                At::Found { search: text }
            };
        }
        Action::NewJob => {
            let job = core.store.new_job();
            core.session.job = Some(job.to_string());
            core.session.notice = None;
            core.job = None;
            core.append(Payload::Opened(Opened::by(env!("CARGO_PKG_VERSION"))), turn);
            core.state_settings(turn);
            core.session.at = At::Vehicle(VehicleDraft::default());
        }
        Action::OpenJob { job } => {
            core.session.job = Some(job);
            core.session.notice = None;
            core.take_up_job()?;
            let begun = core.job.as_ref().is_some_and(|job| job.log.place.is_some());
            core.session.at = match (&core.job, begun) {
                (None, _) => At::Jobs,
                (Some(_), true) => At::Overview,
                (Some(_), false) => At::Vehicle(VehicleDraft::default()),
            };
        }
        Action::BinJob { job } => {
            let Ok(id) = job.parse::<JobId>() else {
                return Ok(());
            };
            turn.entries.push((id, Payload::Binned(Binned {})));
            core.session.notice = Some(NoticeAt::Binned { job });
        }
        Action::Undo => {
            let Some(NoticeAt::Binned { job }) = core.session.notice.clone() else {
                return Ok(());
            };
            let Ok(id) = job.parse::<JobId>() else {
                return Ok(());
            };
            if let Some(target) = core.store.fold(id)?.binned {
                turn.entries.push((id, Payload::Undo(Undo { target })));
            }
            core.session.notice = None;
        }
        _ => {}
    }
    Ok(())
}

pub(super) fn screen(core: &Companion, search: &str) -> (Frame, Body) {
    let query = Query::search(search);
    let (rows, problem) = match core.store.list(&query) {
        Ok(rows) => (rows, None),
        Err(error) => (Vec::new(), Some(ActError::from(error).text_in(&core.texts))),
    };
    let mut field = text_field(
        FieldId::Search,
        core.say("jobs-search"),
        search.to_owned(),
        Keys::Text,
    );
    field.hint = core.say("jobs-search-hint");
    field.problem = problem;
    let empty = match (rows.is_empty(), search.is_empty()) {
        (false, _) => String::new(),
        (true, true) => core.say("jobs-none"),
        (true, false) => core.say("jobs-none-found"),
    };
    let jobs = JobsScreen {
        search: field,
        rows: rows.iter().map(|row| job_row(core, row)).collect(),
        empty,
        new_job: primary(core.say("jobs-new"), Action::NewJob),
    };
    (Frame::titled(core.say("jobs-title")), Body::Jobs { jobs })
}

fn job_row(core: &Companion, row: &LogRow) -> JobRow {
    let vehicle = row.label.clone().unwrap_or_else(|| core.say("jobs-unnamed"));
    let job = row.job.to_string();
    JobRow {
        plate: row.plate.clone().unwrap_or_default(),
        vehicle,
        mark: core.job_mark(row),
        when: core.when(row.last_ms, row.opened_offset_min),
        open: primary(core.say("jobs-open"), Action::OpenJob { job: job.clone() }),
        bin: quiet(core.say("jobs-bin"), Action::BinJob { job }),
    }
}
