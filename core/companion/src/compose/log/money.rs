//! Costs, who does the work, what the customer said.

use holdfast_joblog::{Approval, CostStage, Costs, Workshop};

use crate::compose::approval::approval_words;
use crate::text::{Args, Texts};

pub(super) fn costs(texts: &Texts, costs: &Costs) -> String {
    let total = costs
        .totals()
        .map(|totals| texts.money(totals.total, &costs.currency));
    let key = match costs.stage {
        CostStage::Estimate { .. } => "log-costs-estimate",
        CostStage::Charged => "log-costs-charged",
    };
    texts.say_with(key, &Args::new().text("total", total.unwrap_or_default()))
}

pub(super) fn workshop(texts: &Texts, workshop: &Workshop) -> String {
    let business = workshop.business.lines().next().unwrap_or_default();
    let named = [workshop.technician.trim(), business.trim()]
        .into_iter()
        .filter(|name| !name.is_empty())
        .collect::<Vec<_>>()
        .join(", ");
    if named.is_empty() {
        texts.say("log-workshop-none")
    } else {
        texts.say_with("log-workshop", &Args::new().text("name", named))
    }
}

pub(super) fn approval(texts: &Texts, approval: &Approval) -> String {
    let words = approval_words(texts, approval);
    if approval.signature.is_some() {
        texts.say_with("log-signed", &Args::new().text("words", words))
    } else {
        words
    }
}
