//! What the work costs: parts, labour, tax, total.
//!
//! | event | leads to |
//! |---|---|
//! | `Type`, `Pick` | kept |
//! | `AddCost`, `RemoveCost` | a line more or less |
//! | `Confirm` with nothing wrong | logged, if it changed; the report |
//! | `Back` | the lines that read are logged, if they changed; the report |

mod fields;
mod typed;

use holdfast_joblog::money::{minor_digits, usual_currency};
use holdfast_joblog::{CostKind, CostStage, Payload};

use fields::{bill_section, line_section, problem, sum_section};
use typed::{QUANTITY_DIGITS, TAX_DIGITS, put, stated};

use crate::companion::Companion;
use crate::error::ActError;
use crate::flow::parts::{plain, primary, section, tap};
use crate::protocol::{Action, Body, FormScreen, Frame, Pick};
use crate::session::{At, CostTyped, CostsDraft, StageTyped};
use crate::turn::Turn;

/// How long an estimate is good where nothing else is said, days.
const USUAL_DAYS: u32 = 14;
/// Most lines of one bill.
const MOST_LINES: usize = 60;
/// What stands in the log, to be edited; a new bill begins with one part and one line of labour.
pub(super) fn draft(core: &Companion) -> CostsDraft {
    let settings = &core.session.settings;
    let logged = core.job.as_ref().and_then(|job| job.log.costs.as_ref());
    let Some(costs) = logged.map(|dated| &dated.value) else {
        return CostsDraft {
            stage: StageTyped::Estimate,
            currency: currency(core),
            tax_parts: settings.tax_parts.clone(),
            tax_labour: settings.tax_labour.clone(),
            valid_days: USUAL_DAYS.to_string(),
            lines: vec![new_line(CostKind::Part), new_line(CostKind::Labour)],
        };
    };
    let digits = minor_digits(&costs.currency).unwrap_or(2);
    let plain = |value, digits| core.texts.editable_decimal(value, digits);
    let rate = |kinds: &[CostKind], kept: &str| {
        let line = costs.lines.iter().find(|line| kinds.contains(&line.kind));
        line.map_or(kept.to_owned(), |line| {
            core.texts.trimmed_decimal(line.tax_bp.into(), TAX_DIGITS)
        })
    };
    CostsDraft {
        stage: match costs.stage {
            CostStage::Estimate { .. } => StageTyped::Estimate,
            CostStage::Charged => StageTyped::Charged,
        },
        currency: costs.currency.clone(),
        tax_parts: rate(&[CostKind::Part, CostKind::Other], &settings.tax_parts),
        tax_labour: rate(&[CostKind::Labour], &settings.tax_labour),
        valid_days: match costs.stage {
            CostStage::Estimate { valid_days } => valid_days.to_string(),
            CostStage::Charged => USUAL_DAYS.to_string(),
        },
        lines: costs
            .lines
            .iter()
            .map(|line| CostTyped {
                kind: line.kind,
                words: line.words.clone(),
                quantity: core.texts.trimmed_decimal(line.quantity_milli, QUANTITY_DIGITS),
                price: plain(line.unit_minor, digits),
            })
            .collect(),
    }
}

/// The currency used last, else the usual one where the phone's language is at home.
fn currency(core: &Companion) -> String {
    let last = &core.session.settings.currency;
    if !last.is_empty() {
        return last.clone();
    }
    let mut subtags = core.facts.locale.split(['-', '_']).skip(1);
    subtags.find_map(usual_currency).unwrap_or_default().to_owned()
}

fn new_line(kind: CostKind) -> CostTyped {
    CostTyped {
        kind,
        words: String::new(),
        quantity: "1".to_owned(),
        price: String::new(),
    }
}

pub(super) fn act(
    core: &mut Companion,
    mut draft: CostsDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type { field, text } => put(&mut draft, &field, &text),
        Action::Pick {
            pick: Pick::CostStage { id },
        } => {
            draft.stage = if id == "charged" {
                StageTyped::Charged
            } else {
                StageTyped::Estimate
            };
        }
        Action::AddCost { kind } if draft.lines.len() < MOST_LINES => {
            let kind = CostKind::ALL.into_iter().find(|known| known.id() == kind);
            draft.lines.extend(kind.map(new_line));
        }
        Action::RemoveCost { line } => {
            let at = usize::try_from(line).unwrap_or(usize::MAX);
            if at < draft.lines.len() {
                draft.lines.remove(at);
            }
        }
        Action::Confirm if problem(core, &draft).is_none() => {
            settle(core, &draft, turn);
            core.session.at = At::Report;
            return Ok(());
        }
        _ => {}
    }
    core.session.at = At::Costs(draft);
    Ok(())
}

/// Logs what reads, if it changed, and keeps currency and rates for the next job.
pub(super) fn settle(core: &mut Companion, draft: &CostsDraft, turn: &mut Turn<'_>) {
    let Some(costs) = stated(draft) else { return };
    let settings = &mut core.session.settings;
    settings.currency.clone_from(&draft.currency);
    settings.tax_parts.clone_from(&draft.tax_parts);
    settings.tax_labour.clone_from(&draft.tax_labour);
    let there = core.job.as_ref().and_then(|job| job.log.costs.as_ref());
    let changed = there.map_or(!costs.lines.is_empty(), |there| there.value != costs);
    if changed {
        core.append(Payload::Costs(costs), turn);
    }
}

pub(super) fn screen(core: &Companion, draft: &CostsDraft) -> (Frame, Body) {
    let mut sections = vec![bill_section(core, draft)];
    sections.extend(
        draft
            .lines
            .iter()
            .enumerate()
            .map(|(at, typed)| line_section(core, draft, at, typed)),
    );
    let add = |kind: CostKind| {
        let key = format!("costs-add-{}", kind.id());
        tap(plain(
            core.say(&key),
            Action::AddCost {
                kind: kind.id().to_owned(),
            },
        ))
    };
    sections.push(section(String::new(), CostKind::ALL.map(add).into()));
    sections.extend(sum_section(core, draft));
    let next = primary(core.say("costs-done"), Action::Confirm).unless(problem(core, draft));
    let form = FormScreen {
        sections,
        next: Some(next),
    };
    (Frame::titled(core.say("costs-title")), Body::Costs { form })
}
