//! What the work costs: parts, labour, tax, total.
//!
//! | event | leads to |
//! |---|---|
//! | `Type`, `Pick` | kept |
//! | `AddCost`, `RemoveCost` | a line more or less |
//! | `Confirm` with nothing wrong | logged, if it changed; the report |
//! | `Back` | the lines that read are logged, if they changed; the report |

use holdfast_joblog::money::{FigureError, minor_digits, parse_decimal, usual_currency};
use holdfast_joblog::{CostKind, CostLine, CostStage, Costs, Payload};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::parts::{entry, one_of, option, plain, primary, quiet, section, tap, text_field, words};
use crate::protocol::{Action, Body, Field, FieldId, FormItem, FormScreen, Frame, Keys, Pick, Section};
use crate::session::{At, CostTyped, CostsDraft, StageTyped};
use crate::text::Args;
use crate::turn::Turn;

/// Decimals of a quantity.
const QUANTITY_DIGITS: u32 = 3;
/// Decimals of a tax rate in percent: it is kept in basis points.
const TAX_DIGITS: u32 = 2;
/// The highest tax rate, basis points.
const MOST_TAX: i64 = 10_000;
/// The longest an estimate is good, days.
const MOST_DAYS: u32 = 366;
/// How long an estimate is good where nothing else is said, days.
const USUAL_DAYS: u32 = 14;
/// Most lines of one bill.
const MOST_LINES: usize = 60;
/// Longest words of a line.
const MOST_WORDS: usize = 200;

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

fn put(draft: &mut CostsDraft, field: &FieldId, text: &str) {
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
fn tax(text: &str) -> Result<u32, FigureError> {
    match parse_decimal(text, TAX_DIGITS) {
        Err(FigureError::Empty) => Ok(0),
        Ok(bp) if (0..=MOST_TAX).contains(&bp) => u32::try_from(bp).map_err(|_| FigureError::TooLarge),
        Ok(_) => Err(FigureError::TooLarge),
        Err(error) => Err(error),
    }
}

fn days(text: &str) -> Option<u32> {
    text.trim()
        .parse()
        .ok()
        .filter(|days| (1..=MOST_DAYS).contains(days))
}

/// A line nobody has filled in.
fn is_blank(line: &CostTyped) -> bool {
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
fn stated(draft: &CostsDraft) -> Option<Costs> {
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

/// The first thing that is wrong, in words.
fn problem(core: &Companion, draft: &CostsDraft) -> Option<String> {
    let fields = bill_fields(core, draft).into_iter().chain(
        draft
            .lines
            .iter()
            .enumerate()
            .flat_map(|(at, typed)| line_fields(core, draft, at, typed)),
    );
    fields
        .filter_map(|field| field.problem)
        .next()
        .or_else(|| {
            draft
                .currency
                .is_empty()
                .then(|| core.say("costs-currency-missing"))
        })
        .or_else(|| stated(draft).is_none().then(|| core.say("costs-too-large")))
}

fn figure_problem(core: &Companion, error: FigureError) -> String {
    match error {
        FigureError::Empty | FigureError::NotANumber => core.say("costs-not-a-figure"),
        FigureError::Decimals { most } => core.say_with(
            "costs-decimals",
            &Args::new().count("most", usize::try_from(most).unwrap_or(0)),
        ),
        FigureError::TooLarge => core.say("costs-too-large"),
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

fn bill_section(core: &Companion, draft: &CostsDraft) -> Section {
    let stage = |stage: StageTyped, id: &str, key: &str| {
        option(
            core.say(key),
            draft.stage == stage,
            Pick::CostStage { id: id.to_owned() },
        )
    };
    let mut items = vec![one_of(
        core.say("costs-stage"),
        vec![
            stage(StageTyped::Estimate, "estimate", "costs-stage-estimate"),
            stage(StageTyped::Charged, "charged", "costs-stage-charged"),
        ],
    )];
    items.extend(bill_fields(core, draft).into_iter().map(entry));
    section(String::new(), items)
}

/// The fields that hold for the whole bill.
fn bill_fields(core: &Companion, draft: &CostsDraft) -> Vec<Field> {
    let mut fields = Vec::new();
    if draft.stage == StageTyped::Estimate {
        let mut valid = text_field(
            FieldId::ValidDays,
            core.say("costs-valid-days"),
            draft.valid_days.clone(),
            Keys::Number,
        );
        valid.unit = core.say("costs-days");
        valid.problem = days(&draft.valid_days).is_none().then(|| {
            core.say_with(
                "costs-days-range",
                &Args::new().count("most", usize::try_from(MOST_DAYS).unwrap_or(0)),
            )
        });
        fields.push(valid);
    }
    let mut currency = text_field(
        FieldId::Currency,
        core.say("costs-currency"),
        draft.currency.clone(),
        Keys::Code,
    );
    currency.hint = core.say("costs-currency-hint");
    let unknown = !draft.currency.is_empty() && minor_digits(&draft.currency).is_none();
    currency.problem = unknown.then(|| core.say("costs-currency-unknown"));
    fields.push(currency);
    for (id, key, typed) in [
        (FieldId::TaxParts, "costs-tax-parts", &draft.tax_parts),
        (FieldId::TaxLabour, "costs-tax-labour", &draft.tax_labour),
    ] {
        let mut rate = text_field(id, core.say(key), typed.clone(), Keys::Number);
        rate.unit = "%".to_owned();
        rate.problem = tax(typed).err().map(|error| figure_problem(core, error));
        fields.push(rate);
    }
    fields
}

fn line_section(core: &Companion, draft: &CostsDraft, at: usize, typed: &CostTyped) -> Section {
    let mut items: Vec<FormItem> = line_fields(core, draft, at, typed)
        .into_iter()
        .map(entry)
        .collect();
    let line = u32::try_from(at).unwrap_or(u32::MAX);
    items.push(tap(quiet(
        core.say_with("costs-remove", &Args::new().count("line", at + 1)),
        Action::RemoveCost { line },
    )));
    section(core.say(&format!("costs-kind-{}", typed.kind.id())), items)
}

fn line_fields(core: &Companion, draft: &CostsDraft, at: usize, typed: &CostTyped) -> Vec<Field> {
    let line = u32::try_from(at).unwrap_or(u32::MAX);
    let is_labour = typed.kind == CostKind::Labour;
    let args = Args::new().count("line", at + 1);
    let field =
        |id, key: &str, value: &str, keys| text_field(id, core.say_with(key, &args), value.to_owned(), keys);
    let blank = is_blank(typed);
    let wrong = |text: &str, digits: u32| {
        let error = parse_decimal(text, digits).err();
        error.filter(|_| !blank).map(|error| figure_problem(core, error))
    };
    let mut what = field(
        FieldId::CostWords { line },
        "costs-line-what",
        &typed.words,
        Keys::Text,
    );
    what.problem = (!blank && typed.words.trim().is_empty()).then(|| core.say("costs-what-missing"));
    let key = if is_labour {
        "costs-line-hours"
    } else {
        "costs-line-quantity"
    };
    let mut quantity = field(FieldId::CostQuantity { line }, key, &typed.quantity, Keys::Number);
    quantity.problem = wrong(&typed.quantity, QUANTITY_DIGITS);
    let key = if is_labour {
        "costs-line-rate"
    } else {
        "costs-line-price"
    };
    let mut price = field(FieldId::CostPrice { line }, key, &typed.price, Keys::Number);
    price.unit.clone_from(&draft.currency);
    price.problem = wrong(&typed.price, minor_digits(&draft.currency).unwrap_or(2));
    vec![what, quantity, price]
}

/// What it comes to, as far as it reads.
fn sum_section(core: &Companion, draft: &CostsDraft) -> Option<Section> {
    let costs = stated(draft).filter(|costs| !costs.lines.is_empty())?;
    let lines = compose::sum_lines(&core.texts, &costs);
    let mut items: Vec<FormItem> = lines.into_iter().map(words).collect();
    items.push(words(core.say("costs-rounding")));
    Some(section(core.say("costs-sum"), items))
}
