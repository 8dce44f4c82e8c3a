//! The report as it will print, and work that has ended.
//!
//! | event | leads to |
//! |---|---|
//! | `Pick` a paper | that paper |
//! | `Pick` a language | logged: this job's reports are in it |
//! | `MakeReport` | made on another thread from what is known now |
//! | `WorkDone` | the file, or why there is none |
//! | `ShareReport` | the phone hands the file on |
//! | `ShareReadings` | the readings written as a table, handed on |
//! | any new entry | the report is to be made anew |

use std::path::{Path, PathBuf};

use holdfast_joblog::{Payload, PhotoState, ReportLanguage, ReportPart, ReportParts};
use holdfast_report::{Paper, Report};

use crate::companion::Companion;
use crate::compose::{self, ReportWishes};
use crate::drawn::PagesOf;
use crate::error::ActError;
use crate::flow::parts::{any_of, one_of, option, plain, primary, quiet, section, tap, words};
use crate::flow::{photo, travel};
use crate::job::JobView;
use crate::protocol::{
    Action, Body, FormItem, Frame, PhonePart, Pick, Place, ReportScreen, ReportState, Request, Section,
};
use crate::session::{At, NoticeAt, ReportMade};
use crate::text::{Language, Texts, capital};
use crate::turn::Turn;
use crate::work::{Go, Product, Task, write_whole};

/// Media type of a report.
const PDF: &str = "application/pdf";

pub(super) fn act(core: &mut Companion, action: Action, turn: &mut Turn<'_>) -> Result<(), ActError> {
    match action {
        Action::Pick {
            pick: Pick::Paper { id },
        } => core.session.settings.paper = id,
        Action::Pick {
            pick: Pick::ReportLanguage { tag },
        } => state_language(core, tag, turn),
        Action::Pick {
            pick: Pick::ReportPart { id },
        } => turn_part(core, &id, turn),
        Action::MakeReport => {
            let Some(report) = input(core) else { return Ok(()) };
            let paper = paper(core);
            let path = file(core);
            let id = core.works.offer(making(report, paper, path));
            turn.ask(Request::Work { id });
        }
        Action::ShareReadings => share_readings(core, turn),
        Action::ShareReport => {
            if let Some(made) = up_to_date(core) {
                let path = made.path.clone();
                turn.ask(Request::Share {
                    path,
                    mime: PDF.to_owned(),
                    title: core.say("report-file-title"),
                });
            }
        }
        _ => {}
    }
    Ok(())
}

/// Logs the language of the job's reports, unless it is the one already.
fn state_language(core: &mut Companion, tag: String, turn: &mut Turn<'_>) {
    let known = tag.is_empty() || Language::of_tag(&tag).is_some();
    if known && stated_language(core).unwrap_or_default() != tag {
        core.append(Payload::ReportLanguage(ReportLanguage { tag }), turn);
    }
}

/// Leaves a part out of the job's reports, or puts it in again.
fn turn_part(core: &mut Companion, id: &str, turn: &mut Turn<'_>) {
    let Some(turned) = ReportPart::ALL.into_iter().find(|part| part.as_str() == id) else {
        return;
    };
    let Some(job) = &core.job else { return };
    let is_out = |part: &ReportPart| job.log.report_left_out.contains(part) != (*part == turned);
    let left_out = ReportPart::ALL.into_iter().filter(is_out).collect();
    core.append(Payload::ReportParts(ReportParts { left_out }), turn);
}

/// The language that the job states for its reports, by its tag.
fn stated_language(core: &Companion) -> Option<&str> {
    core.job.as_ref()?.log.report_language.as_deref()
}

/// The language of the job's reports.
fn language(core: &Companion) -> Language {
    stated_language(core)
        .and_then(Language::of_tag)
        .unwrap_or_else(|| core.texts.language())
}

/// The wording of the job's reports.
fn wording(core: &Companion) -> Texts {
    core.session.settings.texts_in(language(core), &core.facts.locale)
}

/// Writes the readings beside the report and hands them on.
fn share_readings(core: &mut Companion, turn: &mut Turn<'_>) {
    let Some(job) = &core.job else { return };
    let path = file(core).with_extension("csv");
    if write_whole(&path, &compose::readings_csv(&wording(core), job)).is_err() {
        let key = "problem-report-no-space".to_owned();
        core.session.notice = Some(NoticeAt::Words { key });
        return;
    }
    turn.ask(Request::Share {
        path: path.to_string_lossy().into_owned(),
        mime: compose::CSV.to_owned(),
        title: core.say("report-readings-title"),
    });
}

fn paper(core: &Companion) -> Paper {
    if core.session.settings.paper == "letter" {
        Paper::Letter
    } else {
        Paper::A4
    }
}

/// The report's input as things stand.
pub(crate) fn input(core: &Companion) -> Option<Report> {
    let job = core.job.as_ref()?;
    let photos = core.store.photos();
    let print = |photo: &PhotoState| {
        let boxes = compose::blur_boxes(&photo.marks);
        // Where the boxes can't be made unreadable the photo stays out: what was to be hidden must not be printed.
        photos.blurred(&photo.photo, &boxes).ok().flatten()
    };
    let wishes = ReportWishes {
        photo: &print,
        fonts: &core.facts.fonts.iter().map(PathBuf::from).collect::<Vec<_>>(),
        version: env!("CARGO_PKG_VERSION"),
    };
    Some(compose::report(&wording(core), job, &wishes))
}

/// Where the report of the open job goes.
fn file(core: &Companion) -> PathBuf {
    file_of(core, &core.session.job.clone().unwrap_or_default())
}

/// Where the report of a job goes.
pub(super) fn file_of(core: &Companion, job: &str) -> PathBuf {
    core.data_dir.join("reports").join(format!("{job}.pdf"))
}

fn making(report: Report, paper: Paper, path: PathBuf) -> Task {
    Box::new(move |go_on| {
        if go_on(50) == Go::Stop {
            return Product::Stopped;
        }
        let bytes = match holdfast_report::render_pdf(&report, paper) {
            Ok(bytes) => bytes,
            Err(error) => return Product::Failed("problem-report", error.to_string()),
        };
        if go_on(900) == Go::Stop {
            return Product::Stopped;
        }
        match write_whole(&path, &bytes) {
            Ok(()) => Product::Report(path),
            Err(error) => Product::Failed("problem-report-no-space", error.to_string()),
        }
    })
}

/// Work has ended.
pub(super) fn work_done(core: &mut Companion, id: u64, turn: &mut Turn<'_>) -> Result<(), ActError> {
    let product = core.works.finish(id);
    if let Some(Product::Conclusion(drawn)) = product {
        core.foreseen = Some(*drawn);
        return Ok(());
    }
    if let Some(Product::Pages(of, pages)) = product {
        core.drawn.keep_pages(*of, pages);
        return Ok(());
    }
    core.session.notice = None;
    match product {
        Some(Product::Report(path)) => {
            let Some(job) = &core.job else { return Ok(()) };
            let of = pages_of(core, job);
            core.session.report = Some(ReportMade {
                of,
                path: path.to_string_lossy().into_owned(),
            });
        }
        Some(Product::Photo(taken)) => photo::imported(core, &taken, turn),
        Some(Product::Heif(path)) => turn.ask(Request::DecodePicture { path }),
        Some(Product::ToShare(file)) => turn.ask(Request::Share {
            path: file.path.to_string_lossy().into_owned(),
            mime: file.mime.to_owned(),
            title: core.say(file.title),
        }),
        Some(Product::Received(taken)) => {
            let (path, received) = *taken;
            travel::received(core, path, &received)?;
        }
        Some(Product::Failed(key, _detail)) => {
            core.session.notice = Some(NoticeAt::Words { key: key.to_owned() });
        }
        Some(Product::Stopped | Product::Conclusion(_) | Product::Pages(..)) | None => {}
    }
    Ok(())
}

/// The report, if it was made of what is known now.
fn up_to_date(core: &Companion) -> Option<&ReportMade> {
    let job = core.job.as_ref()?;
    let of = pages_of(core, job);
    core.session
        .report
        .as_ref()
        .filter(|made| made.of == of && Path::new(&made.path).is_file())
}

/// What the pages on the screen depend on.
fn pages_of(core: &Companion, job: &JobView) -> PagesOf {
    let settings = &core.session.settings;
    PagesOf {
        job: job.id.to_string(),
        entries: job.log.record.len(),
        paper: settings.paper.clone(),
        unit: settings.shown_unit.clone(),
        units: settings.units,
        language: language(core).tag().to_owned(),
    }
}

/// Lays out the pages that the screen shows, where it was not done yet.
pub(crate) fn pages_to_lay(core: &mut Companion) -> Option<Task> {
    if core.session.at != At::Report {
        return None;
    }
    let of = pages_of(core, core.job.as_ref()?);
    if !core.drawn.begin_pages(&of) {
        return None;
    }
    let (report, paper) = (input(core)?, paper(core));
    Some(Box::new(move |_| {
        let pages = holdfast_report::pages(&report, paper);
        Product::Pages(Box::new(of), pages.into_iter().map(|page| page.scene).collect())
    }))
}

pub(super) fn screen(core: &Companion) -> (Frame, Body) {
    let frame = Frame::titled(core.say("report-title"));
    let Some(job) = &core.job else {
        return (frame, core.nothing());
    };
    let pages = core
        .drawn
        .pages(&pages_of(core, job))
        .unwrap_or_default()
        .to_vec();
    let state = match up_to_date(core) {
        _ if core.works.any() => ReportState::Working {
            text: core.say("report-working"),
            stop: quiet(core.say("report-stop"), Action::StopWork),
        },
        Some(made) => {
            let cannot = (!core.has(PhonePart::Share)).then(|| core.say("report-no-share"));
            ReportState::Ready {
                path: made.path.clone(),
                share: primary(core.say("report-share"), Action::ShareReport).unless(cannot.clone()),
                share_readings: quiet(core.say("report-share-readings"), Action::ShareReadings)
                    .unless(cannot),
            }
        }
        None => ReportState::ToMake {
            make: primary(core.say("report-make"), Action::MakeReport),
        },
    };
    let report = ReportScreen {
        pages,
        sections: vec![customer_section(core), paper_section(core)],
        state,
    };
    (frame, Body::Report { report })
}

/// What the first page can hold besides what was tested.
fn customer_section(core: &Companion) -> Section {
    let go = |key: &str, to| tap(plain(core.say(key), Action::Go { to }));
    section(
        core.say("report-customer"),
        vec![
            go("report-costs-go", Place::Costs),
            go("report-approval-go", Place::Approval),
        ],
    )
}

fn paper_section(core: &Companion) -> Section {
    let items = vec![
        parts_choice(core),
        language_choice(core),
        paper_choice(core),
        words(core.say("report-business-hint")),
        tap(plain(
            core.say("report-settings"),
            Action::Go { to: Place::Settings },
        )),
    ];
    section(core.say("report-print"), items)
}

/// What stands behind the customer's page.
fn parts_choice(core: &Companion) -> FormItem {
    let left_out = core.job.as_ref().map(|job| &job.log.report_left_out);
    let part = |part: ReportPart| {
        let id = part.as_str();
        let is_in = !left_out.is_some_and(|out| out.contains(&part));
        let label = capital(&core.say(&format!("report-part-{id}")));
        option(label, is_in, Pick::ReportPart { id: id.to_owned() })
    };
    any_of(core.say("report-parts"), ReportPart::ALL.map(part).into())
}

/// Which language the job's reports are in.
fn language_choice(core: &Companion) -> FormItem {
    let picked = stated_language(core).unwrap_or_default();
    let language =
        |tag: &str, label| option(label, picked == tag, Pick::ReportLanguage { tag: tag.to_owned() });
    let named = Language::OFFERED
        .into_iter()
        .map(|it| language(it.tag(), core.texts.name_of(it)));
    let options = std::iter::once(language("", core.say("report-language-screens")))
        .chain(named)
        .collect();
    one_of(core.say("report-language"), options)
}

/// Which paper reports are for.
pub(super) fn paper_choice(core: &Companion) -> FormItem {
    let options = ["a4", "letter"]
        .into_iter()
        .map(|id| {
            option(
                core.say(&format!("paper-{id}")),
                core.session.settings.paper == id,
                Pick::Paper { id: id.to_owned() },
            )
        })
        .collect();
    one_of(core.say("report-paper"), options)
}
