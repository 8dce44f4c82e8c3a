//! Costs in words: the sums on a screen, the table of the customer's page, every line in the record.

use holdfast_joblog::money::Totals;
use holdfast_joblog::{CostStage, Costs, Dated};
use holdfast_report::{Align, Column, Table};

use super::time::date;
use crate::text::{Args, Texts};

/// More lines than this are summed up on the customer's page; each one is in the record.
const MOST_LINES: usize = 5;
/// Milliseconds of a day.
const DAY_MS: i64 = 86_400_000;

/// What costs come to, a line each: the kinds, the tax, the total.
#[must_use]
pub(crate) fn sum_lines(texts: &Texts, costs: &Costs) -> Vec<String> {
    let Some(totals) = costs.totals() else {
        return Vec::new();
    };
    let money = |minor| texts.money(minor, &costs.currency);
    let line = |label: String, minor| {
        let args = Args::new().text("label", label).text("value", money(minor));
        texts.say_with("reading-field", &args)
    };
    let mut lines: Vec<String> = totals
        .kinds
        .iter()
        .map(|(kind, sum)| line(texts.say(&format!("costs-sum-{}", kind.id())), *sum))
        .collect();
    lines.extend(
        totals
            .taxes
            .iter()
            .map(|tax| line(tax_label(texts, costs, tax.bp, tax.on), tax.tax)),
    );
    lines.push(line(texts.say("costs-total"), totals.total));
    lines
}

fn tax_label(texts: &Texts, costs: &Costs, bp: u32, on: i64) -> String {
    let rate = texts.with_unit(&texts.trimmed_decimal(bp.into(), 2), "%");
    texts.say_with(
        "costs-tax",
        &Args::new()
            .text("rate", rate)
            .text("on", texts.amount(on, &costs.currency)),
    )
}

/// What the costs are: an estimate with the day it is good to, or what is charged.
#[must_use]
pub(super) fn costs_heading(texts: &Texts, dated: &Dated<Costs>) -> String {
    match dated.value.stage {
        CostStage::Charged => texts.say("report-costs"),
        CostStage::Estimate { valid_days } => {
            let until = dated
                .at_ms
                .saturating_add(i64::from(valid_days).saturating_mul(DAY_MS));
            let args = Args::new().text("date", date(texts, until, dated.offset_min));
            texts.say_with("report-estimate", &args)
        }
    }
}

/// The customer's table: every line where they are few, else the sum of each kind; tax and total. None without lines.
#[must_use]
pub(super) fn costs_table(texts: &Texts, costs: &Costs) -> Option<Table> {
    let totals = costs.totals().filter(|_| !costs.lines.is_empty())?;
    if costs.lines.len() <= MOST_LINES {
        return Some(full_table(texts, costs, &totals, String::new()));
    }
    let amount = |minor| texts.amount(minor, &costs.currency);
    let mut rows: Vec<Vec<String>> = totals
        .kinds
        .iter()
        .map(|(kind, sum)| vec![texts.say(&format!("costs-sum-{}", kind.id())), amount(*sum)])
        .collect();
    let sums = sum_rows(texts, costs, &totals, 0);
    let count = sums.len();
    rows.extend(sums);
    Some(Table {
        caption: String::new(),
        columns: vec![
            column(texts.say("costs-what"), Align::Start),
            amount_column(texts, costs),
        ],
        rows,
        sums: count,
    })
}

/// Every line, for the record, with how it is rounded. None without lines.
#[must_use]
pub(super) fn costs_in_full(texts: &Texts, costs: &Costs) -> Option<Table> {
    let totals = costs.totals().filter(|_| !costs.lines.is_empty())?;
    Some(full_table(texts, costs, &totals, texts.say("costs-rounding")))
}

fn full_table(texts: &Texts, costs: &Costs, totals: &Totals, caption: String) -> Table {
    let mut rows: Vec<Vec<String>> = costs
        .lines
        .iter()
        .zip(&totals.amounts)
        .map(|(line, amount)| {
            let kind = texts.say(&format!("costs-kind-{}", line.kind.id()));
            let words = if line.words.is_empty() {
                kind
            } else {
                let args = Args::new().text("label", kind).text("value", line.words.as_str());
                texts.say_with("reading-field", &args)
            };
            vec![
                words,
                texts.trimmed_decimal(line.quantity_milli, 3),
                texts.amount(line.unit_minor, &costs.currency),
                texts.amount(*amount, &costs.currency),
            ]
        })
        .collect();
    let sums = sum_rows(texts, costs, totals, 2);
    let count = sums.len();
    rows.extend(sums);
    Table {
        caption,
        columns: vec![
            column(texts.say("costs-what"), Align::Start),
            column(texts.say("costs-quantity"), Align::Decimal),
            column(texts.say("costs-each"), Align::End),
            amount_column(texts, costs),
        ],
        rows,
        sums: count,
    }
}

/// Tax and total, with so many empty cells between words and amount.
fn sum_rows(texts: &Texts, costs: &Costs, totals: &Totals, empty: usize) -> Vec<Vec<String>> {
    let row = |label: String, minor: i64| {
        let mut row = vec![label];
        row.extend(std::iter::repeat_n(String::new(), empty));
        row.push(texts.amount(minor, &costs.currency));
        row
    };
    let mut rows: Vec<Vec<String>> = totals
        .taxes
        .iter()
        .map(|tax| row(tax_label(texts, costs, tax.bp, tax.on), tax.tax))
        .collect();
    rows.push(row(texts.say("costs-total"), totals.total));
    rows
}

fn column(head: String, align: Align) -> Column {
    Column { head, align }
}

fn amount_column(texts: &Texts, costs: &Costs) -> Column {
    let args = Args::new().text("currency", costs.currency.as_str());
    column(texts.say_with("costs-amount", &args), Align::End)
}
