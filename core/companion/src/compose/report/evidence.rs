//! The evidence: each hold's chart, each meter reading on its band, the photos.

use holdfast_diagnose::{Outcome, Reading, TestId, TestResult};
use holdfast_report::{Block, Figure, Scene};

use super::ReportWishes;
use crate::compose::band::{Drawn, bands, reached};
use crate::compose::hold::{before_and_after, fall, hold_chart};
use crate::compose::map::{MapOf, printed_map};
use crate::compose::mark::outcome_words;
use crate::compose::photo::{Boxes, photo_scene};
use crate::compose::reading::on_a_line;
use crate::compose::reasons::telling;
use crate::compose::repaired::{is_good, retested};
use crate::compose::spectrum::spectra;
use crate::job::JobView;
use crate::text::{Args, Texts, sentence};

/// A figure of a test, or of none: a photo.
pub(super) struct Shown {
    /// The test, and what the figure says.
    test: Option<(TestId, Outcome)>,
    /// What is drawn.
    figure: Figure,
}

/// Everything that can be shown but the two holds that are compared on the customer's page.
pub(super) fn all(texts: &Texts, job: &JobView, wishes: &ReportWishes<'_>) -> Vec<Shown> {
    let mut shown = drawings(texts, job);
    shown.extend(photos(texts, job, wishes));
    shown
}

/// What is drawn of each test.
fn drawings(texts: &Texts, job: &JobView) -> Vec<Shown> {
    // Charts with charts and bands with bands: they are drawn two by two.
    let mut shown = holds(texts, job);
    shown.extend(vibrations(texts, job));
    shown.extend(not_built(texts, job));
    shown.extend(meters(texts, job));
    shown
}

/// The circuit with what the tests say of each part.
pub(super) fn map(texts: &Texts, job: &JobView) -> Figure {
    let caption = if job.repaired().is_some() {
        "report-caption-map-repaired"
    } else {
        "report-caption-map"
    };
    Figure {
        scene: printed_map(texts, job, MapOf::Job),
        caption: texts.say(caption),
        width_share: HALF,
    }
}

/// Takes out the figure that speaks most for the finding. Beside a fault that is one on which something is wrong: what is
/// as it should be proves nothing to somebody who looks at one picture.
pub(super) fn take_strongest(shown: &mut Vec<Shown>, job: &JobView) -> Option<Figure> {
    let fault = job
        .finding
        .causes
        .first()
        .is_some_and(|cause| !cause.faults.is_empty());
    let tells = |one: &Shown, wanted: &TestId| {
        let test = one.test.as_ref();
        test.is_some_and(|(test, outcome)| test == wanted && !(fault && is_good(*outcome)))
    };
    let at = telling(job)
        .into_iter()
        .find_map(|test| shown.iter().rposition(|one| tells(one, test)))?;
    Some(shown.remove(at).figure)
}

/// Leaves what was not asked for out of the figures.
pub(super) fn keep(shown: &mut Vec<Shown>, drawings: bool, photos: bool) {
    shown.retain(|one| if one.test.is_some() { drawings } else { photos });
}

/// The figures two by two, the first ones ahead of those of the tests.
pub(super) fn blocks(first: Option<Figure>, shown: Vec<Shown>) -> Vec<Block> {
    let mut blocks = Vec::new();
    let mut figures = first.into_iter().chain(shown.into_iter().map(|one| one.figure));
    while let Some(left) = figures.next() {
        blocks.push(match figures.next() {
            Some(right) => Block::Pair(left, right),
            None => Block::Figure(left),
        });
    }
    blocks
}

/// Each hold that has a chart; one that was done again after the repair, both on one axis.
fn holds(texts: &Texts, job: &JobView) -> Vec<Shown> {
    let compared =
        retested(job).filter(|(before, after)| before_and_after(texts, job, *before, *after).is_some());
    let elsewhere =
        |reading: &Reading| compared.is_some_and(|(before, after)| before.0 == reading || after.0 == reading);
    job.done
        .iter()
        .filter(|(reading, _)| !elsewhere(reading) && !is_done_again(job, reading))
        .filter(|(_, result)| result.outcome != Outcome::NotDone)
        .filter_map(|(reading, result)| {
            let hold = result.hold.as_ref()?;
            let first = job.last(&reading.test, false).filter(|_| reading.after_repair);
            let both = first
                .and_then(|(before, was, _)| before_and_after(texts, job, (before, was), (reading, result)));
            let scene = match both {
                Some(scene) => scene,
                None => hold_chart(texts, job, &[(None, reading, result)])?,
            };
            let words = fall(texts, hold);
            Some(shown_of(texts, reading, result, whole(result, scene, words)))
        })
        .collect()
}

/// Whether the last reading of a test before the repair is drawn beside the one after it.
fn is_done_again(job: &JobView, reading: &Reading) -> bool {
    let last = job
        .last(&reading.test, false)
        .is_some_and(|(before, _, _)| before == reading);
    let again = job
        .last(&reading.test, true)
        .is_some_and(|(_, after, _)| after.hold.is_some());
    !reading.after_repair && last && again
}

fn meters(texts: &Texts, job: &JobView) -> Vec<Shown> {
    job.done
        .iter()
        .filter(|(_, result)| result.outcome != Outcome::NotDone)
        .flat_map(|(reading, result)| {
            let bands = bands(texts, job, reading, result).into_iter();
            bands.map(|drawn| shown_of(texts, reading, result, drawn))
        })
        .collect()
}

/// Holds that did not build vacuum, how far each got; but one that is drawn beside the one after the repair.
fn not_built(texts: &Texts, job: &JobView) -> Vec<Shown> {
    let falls = |(reading, result, _): (&Reading, &TestResult, _)| {
        hold_chart(texts, job, &[(None, reading, result)]).is_some()
    };
    let is_beside =
        |reading: &Reading| !reading.after_repair && job.last(&reading.test, true).is_some_and(falls);
    job.done
        .iter()
        .filter(|(reading, _)| !is_beside(reading))
        .filter_map(|(reading, result)| {
            let scene = reached(texts, reading, result)?;
            let seen = fall(texts, result.hold.as_ref()?);
            Some(shown_of(texts, reading, result, whole(result, scene, seen)))
        })
        .collect()
}

fn vibrations(texts: &Texts, job: &JobView) -> Vec<Shown> {
    job.done
        .iter()
        .filter(|(_, result)| result.outcome != Outcome::NotDone)
        .filter_map(|(reading, result)| {
            let scene = spectra(texts, reading)?;
            let seen = on_a_line(texts, &job.circuit, reading);
            Some(shown_of(texts, reading, result, whole(result, scene, seen)))
        })
        .collect()
}

/// A drawing of all that was read in a test.
fn whole(result: &TestResult, scene: Scene, words: String) -> Drawn {
    Drawn {
        scene,
        words,
        outcome: result.outcome,
    }
}

/// Share of the text width of a figure that is one of two.
const HALF: f32 = 0.48;

fn shown_of(texts: &Texts, reading: &Reading, result: &TestResult, drawn: Drawn) -> Shown {
    let caption = match (reading.after_repair, drawn.outcome == result.outcome) {
        (true, _) => "report-caption-after",
        (false, true) => "report-caption-test",
        // What the test says, this part of it does not.
        (false, false) => "report-caption-figure",
    };
    let args = Args::new()
        .text("test", texts.test_name(&reading.test))
        .text("seen", drawn.words)
        .text("result", outcome_words(texts, drawn.outcome));
    Shown {
        test: Some((reading.test.clone(), drawn.outcome)),
        figure: Figure {
            scene: drawn.scene,
            caption: texts.say_with(caption, &args),
            width_share: HALF,
        },
    }
}

fn photos(texts: &Texts, job: &JobView, wishes: &ReportWishes<'_>) -> Vec<Shown> {
    job.log
        .photos
        .iter()
        .filter_map(|photo| {
            let print = (wishes.photo)(&photo.value)?;
            let caption = if photo.value.caption.trim().is_empty() {
                texts.say("report-caption-photo")
            } else {
                sentence(photo.value.caption.trim())
            };
            let scene = photo_scene(texts, &photo.value, &print, Boxes::Burnt);
            let figure = Figure {
                scene,
                caption,
                width_share: HALF,
            };
            Some(Shown { test: None, figure })
        })
        .collect()
}
