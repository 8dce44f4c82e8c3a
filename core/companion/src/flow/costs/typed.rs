//! What was typed for the costs, as far as it reads.

use holdfast_joblog::money::{FigureError, minor_digits, parse_decimal};
use holdfast_joblog::{CostKind, CostLine, CostStage, Costs};

use crate::protocol::FieldId;
use crate::session::{CostTyped, CostsDraft, StageTyped};

/// Decimals of a quantity.
pub(super) const QUANTITY_DIGITS: u32 = 3;
/// Decimals of a tax rate in percent: it is kept in basis points.
pub(super) const TAX_DIGITS: u32 = 2;
/// The highest tax rate, basis points.
const MOST_TAX: i64 = 10_000;
/// The longest an estimate is good, days.
pub(super) const MOST_DAYS: u32 = 366;
/// Longest words of a line.
const MOST_WORDS: usize = 200;

pub(super) fn put(draft: &mut CostsDraft, field: &FieldId, text: &str) {
    let text: String = text
        .chars()
        .filter(|c| !c.is_control())
        .take(MOST_WORDS)
        .collect();
    let line_of = |draft: &mut CostsDraft, line: u32, set: fn(&mut CostTyped, String), text: String| {
        let at = usize::try_from(line).unwrap_or(usize::MAX);
        if let Some(line) = draft.lines.get_mut(at) {
            set(line, text);
        }
    };
    match field {
        FieldId::Currency => draft.currency = text.trim().to_uppercase(),
        FieldId::TaxParts => draft.tax_parts = text,
        FieldId::TaxLabour => draft.tax_labour = text,
        FieldId::ValidDays => draft.valid_days = text,
        FieldId::CostWords { line } => line_of(draft, *line, |it, text| it.words = text, text),
        FieldId::CostQuantity { line } => line_of(draft, *line, |it, text| it.quantity = text, text),
        FieldId::CostPrice { line } => line_of(draft, *line, |it, text| it.price = text, text),
        _ => {}
    }
}

/// A typed tax rate in basis points; nothing typed is no tax.
pub(super) fn tax(text: &str) -> Result<u32, FigureError> {
    match parse_decimal(text, TAX_DIGITS) {
        Err(FigureError::Empty) => Ok(0),
        Ok(bp) if (0..=MOST_TAX).contains(&bp) => u32::try_from(bp).map_err(|_| FigureError::TooLarge),
        Ok(_) => Err(FigureError::TooLarge),
        Err(error) => Err(error),
    }
}

pub(super) fn days(text: &str) -> Option<u32> {
    text.trim()
        .parse()
        .ok()
        .filter(|days| (1..=MOST_DAYS).contains(days))
}

/// A line nobody has filled in.
pub(super) fn is_blank(line: &CostTyped) -> bool {
    line.words.trim().is_empty() && line.price.trim().is_empty()
}

/// A line as it is logged; none where it does not read.
fn line(draft: &CostsDraft, typed: &CostTyped, digits: u32) -> Option<CostLine> {
    let rate = match typed.kind {
        CostKind::Labour => &draft.tax_labour,
        CostKind::Part | CostKind::Other => &draft.tax_parts,
    };
    Some(CostLine {
        kind: typed.kind,
        words: typed.words.trim().to_owned(),
        quantity_milli: parse_decimal(&typed.quantity, QUANTITY_DIGITS).ok()?,
        unit_minor: parse_decimal(&typed.price, digits).ok()?,
        tax_bp: tax(rate).ok()?,
    })
}

/// What is typed, as far as it reads; none where nothing does.
pub(super) fn stated(draft: &CostsDraft) -> Option<Costs> {
    let digits = minor_digits(&draft.currency)?;
    let costs = Costs {
        stage: match draft.stage {
            StageTyped::Charged => CostStage::Charged,
            StageTyped::Estimate => CostStage::Estimate {
                valid_days: days(&draft.valid_days)?,
            },
        },
        currency: draft.currency.clone(),
        lines: draft
            .lines
            .iter()
            .filter_map(|typed| line(draft, typed, digits))
            .collect(),
    };
    costs.totals().map(|_| costs)
}
