//! The evidence: the circuit with the finding, each hold's chart, each meter reading on its band, the photos.

use holdfast_diagnose::{Outcome, Reading, TestResult};
use holdfast_joblog::{MarkRecord, MarkShapeRecord, PhotoState};
use holdfast_report::{Block, Figure, PhotoMark, PhotoScene, Spot};

use super::ReportWishes;
use crate::compose::band::bands;
use crate::compose::hold::{before_and_after, fall, hold_chart};
use crate::compose::map::{MapOf, circuit_map};
use crate::compose::mark::mark_of;
use crate::compose::repaired::retested;
use crate::job::JobView;
use crate::text::{Args, Texts, sentence};

/// Figures two by two, the map and the comparison large.
pub(super) fn blocks(texts: &Texts, job: &JobView, wishes: &ReportWishes<'_>) -> Vec<Block> {
    let mut blocks = vec![Block::Figure(Figure {
        scene: circuit_map(texts, job, MapOf::Job),
        caption: map_caption(texts, job),
        width_share: 0.9,
    })];
    if let Some((before, after)) = retested(job)
        && let Some(scene) = before_and_after(texts, job, before, after)
    {
        blocks.push(Block::Figure(Figure {
            scene,
            caption: texts.say("report-caption-before-after"),
            width_share: 0.7,
        }));
    }
    blocks.extend(paired(holds(texts, job)));
    blocks.extend(paired(meters(texts, job)));
    blocks.extend(paired(photos(texts, job, wishes)));
    blocks
}

/// What the map shows: before a repair and after it.
pub(super) fn map_caption(texts: &Texts, job: &JobView) -> String {
    texts.say(if job.repaired().is_some() {
        "report-caption-map-repaired"
    } else {
        "report-caption-map"
    })
}

/// Each hold's chart, but the two that stand on one chart already.
fn holds(texts: &Texts, job: &JobView) -> Vec<Figure> {
    let compared = retested(job);
    let shown =
        |reading: &Reading| compared.is_some_and(|(before, after)| before.0 == reading || after.0 == reading);
    job.done
        .iter()
        .filter(|(reading, _)| !shown(reading))
        .filter(|(_, result)| result.outcome != Outcome::NotDone)
        .filter_map(|(reading, result)| {
            let hold = result.hold.as_ref()?;
            let scene = hold_chart(texts, job, &[(None, reading, result)])?;
            let caption = caption(texts, reading, result, &fall(texts, hold));
            Some(Figure {
                scene,
                caption,
                width_share: 0.48,
            })
        })
        .collect()
}

fn meters(texts: &Texts, job: &JobView) -> Vec<Figure> {
    job.done
        .iter()
        .filter(|(_, result)| result.outcome != Outcome::NotDone)
        .flat_map(|(reading, result)| {
            bands(texts, job, reading, result)
                .into_iter()
                .map(|(scene, words)| Figure {
                    scene,
                    caption: caption(texts, reading, result, &words),
                    width_share: 0.48,
                })
                .collect::<Vec<_>>()
        })
        .collect()
}

fn caption(texts: &Texts, reading: &Reading, result: &TestResult, seen: &str) -> String {
    texts.say_with(
        if reading.after_repair {
            "report-caption-after"
        } else {
            "report-caption-test"
        },
        &Args::new()
            .text("test", texts.test_name(&reading.test))
            .text("seen", seen)
            .text("result", mark_of(texts, result.outcome).word.to_lowercase()),
    )
}

fn photos(texts: &Texts, job: &JobView, wishes: &ReportWishes<'_>) -> Vec<Figure> {
    job.log
        .photos
        .iter()
        .filter_map(|photo| {
            let print = (wishes.photo)(&photo.value.photo.sha256)?;
            let caption = if photo.value.caption.trim().is_empty() {
                texts.say("report-caption-photo")
            } else {
                sentence(photo.value.caption.trim())
            };
            let scene = holdfast_report::photo(&PhotoScene {
                alt: caption.clone(),
                path: print.path.to_string_lossy().into_owned(),
                width_px: print.width,
                height_px: print.height,
                marks: marks(&photo.value),
            });
            Some(Figure {
                scene,
                caption,
                width_share: 0.48,
            })
        })
        .collect()
}

/// The photo's marks; what was blurred is blurred in the print rendition's pixels, not drawn over.
fn marks(photo: &PhotoState) -> Vec<PhotoMark> {
    photo.marks.iter().flat_map(mark).collect()
}

fn mark(mark: &MarkRecord) -> Vec<PhotoMark> {
    let spot = |[x, y]: [f64; 2]| Spot { x, y };
    let shape = match &mark.shape {
        MarkShapeRecord::Arrow { from, to } | MarkShapeRecord::Measure { from, to } => PhotoMark::Arrow {
            from: spot(*from),
            to: spot(*to),
        },
        MarkShapeRecord::Ring { at, radius } => PhotoMark::Ring {
            centre: spot(*at),
            radius: *radius,
        },
        MarkShapeRecord::Pin { at, number } => PhotoMark::Pin {
            at: spot(*at),
            number: number.to_string(),
        },
        MarkShapeRecord::TestPoint { at } => {
            return vec![PhotoMark::TestPoint {
                at: spot(*at),
                lead: None,
                words: mark.text.clone(),
            }];
        }
        MarkShapeRecord::Blur { .. } => return Vec::new(),
    };
    let mut marks = vec![shape];
    if !mark.text.trim().is_empty() {
        let at = match &mark.shape {
            MarkShapeRecord::Arrow { from, .. } | MarkShapeRecord::Measure { from, .. } => *from,
            MarkShapeRecord::Ring { at, .. }
            | MarkShapeRecord::Pin { at, .. }
            | MarkShapeRecord::TestPoint { at } => *at,
            MarkShapeRecord::Blur { from, .. } => *from,
        };
        marks.push(PhotoMark::Text {
            at: spot(at),
            text: mark.text.trim().to_owned(),
        });
    }
    marks
}

/// Two figures beside each other; a single one at the end stands alone.
fn paired(figures: Vec<Figure>) -> Vec<Block> {
    let mut figures = figures.into_iter();
    let mut blocks = Vec::new();
    while let Some(first) = figures.next() {
        blocks.push(match figures.next() {
            Some(second) => Block::Pair(first, second),
            None => Block::Figure(first),
        });
    }
    blocks
}
