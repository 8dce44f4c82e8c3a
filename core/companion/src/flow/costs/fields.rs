//! The fields of the costs, and what is wrong with them.

use holdfast_joblog::CostKind;
use holdfast_joblog::money::{FigureError, minor_digits, parse_decimal};

use super::typed::{MOST_DAYS, QUANTITY_DIGITS, days, is_blank, stated, tax};
use crate::companion::Companion;
use crate::compose;
use crate::flow::parts::{entry, one_of, option, quiet, section, tap, text_field, words};
use crate::protocol::{Action, Field, FieldId, FormItem, Keys, Pick, Section};
use crate::session::{CostTyped, CostsDraft, StageTyped};
use crate::text::Args;

/// The first thing that is wrong, in words.
pub(super) fn problem(core: &Companion, draft: &CostsDraft) -> Option<String> {
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

pub(super) fn bill_section(core: &Companion, draft: &CostsDraft) -> Section {
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

pub(super) fn line_section(core: &Companion, draft: &CostsDraft, at: usize, typed: &CostTyped) -> Section {
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
pub(super) fn sum_section(core: &Companion, draft: &CostsDraft) -> Option<Section> {
    let costs = stated(draft).filter(|costs| !costs.lines.is_empty())?;
    let lines = compose::sum_lines(&core.texts, &costs);
    let mut items: Vec<FormItem> = lines.into_iter().map(words).collect();
    items.push(words(core.say("costs-rounding")));
    Some(section(core.say("costs-sum"), items))
}
