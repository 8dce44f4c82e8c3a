//! Which jobs end wrong: what was true, what was said, with seeds to run again.

use std::collections::BTreeMap;

use crate::batch::Record;
use crate::jobs::Stratum;

/// Kinds shown of each list.
const SHOWN: usize = 60;

/// A fault with its side names taken off, so that front and rear count as one kind.
fn kind(fault: &str) -> String {
    [
        "front_left_",
        "front_right_",
        "rear_left_",
        "rear_right_",
        "front_tee_",
        "rear_tee_",
        "front_",
        "rear_",
        "first_",
        "second_",
    ]
    .iter()
    .fold(fault.to_owned(), |f, side| f.replace(side, ""))
}

fn list<T: ToString>(faults: &[T]) -> String {
    let mut names: Vec<String> = faults.iter().map(|f| kind(&f.to_string())).collect();
    names.sort();
    if names.is_empty() {
        "nothing".to_owned()
    } else {
        names.join(" + ")
    }
}

/// Prints the commonest ways in which jobs ended wrong.
pub fn print(records: &[Record]) {
    let wrong = |r: &&Record| r.guided.decided && !r.guided.parts_right && r.stratum != Stratum::Double;
    confusion("decided, and wrong", records.iter().filter(wrong));
    let double =
        |r: &&Record| r.stratum == Stratum::Double && r.guided.decided && !r.guided.both_named_or_open;
    confusion(
        "two faults, decided, one neither named nor left open",
        records.iter().filter(double),
    );
    let undecided =
        |r: &&Record| r.stratum == Stratum::Natural && !r.guided.decided && !r.guided.rightly_inseparable;
    confusion(
        "undecided, and not rightly declared inseparable",
        records.iter().filter(undecided),
    );
    let inseparable =
        |r: &&Record| r.stratum == Stratum::Natural && !r.guided.decided && r.guided.rightly_inseparable;
    confusion(
        "undecided, and rightly declared inseparable",
        records.iter().filter(inseparable),
    );
    let beaten = |r: &&Record| r.oracle.as_ref().is_some_and(|o| o.parts_right) && !r.guided.p_parts_right;
    confusion(
        "first part wrong where the oracle is right",
        records.iter().filter(beaten),
    );
    let mode = |r: &&Record| {
        let known = r.oracle.as_ref().is_some_and(|o| o.cause_right) && !r.guided.cause_right;
        known && r.guided.p_parts_right
    };
    confusion(
        "right part, wrong mode where the oracle has the mode right",
        records.iter().filter(mode),
    );
    knows_more(records);
    for r in records.iter().filter(|r| r.refused.is_some()) {
        println!("  refused: seed {} {:?}", r.seed, r.refused);
    }
}

/// The jobs in which the oracle gives the faulty part most more than the core does: where their laws differ.
fn knows_more(records: &[Record]) {
    let more = |r: &Record| {
        let oracle = r.oracle.as_ref().filter(|_| r.truth.len() < 2)?;
        Some((oracle.p_truth.max(1e-9) / r.guided.p_truth.max(1e-9)).ln())
    };
    let mut jobs: Vec<(f64, &Record)> = records.iter().filter_map(|r| Some((more(r)?, r))).collect();
    jobs.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mean = jobs.iter().map(|(more, _)| more).sum::<f64>() / jobs.len().max(1) as f64;
    println!("the oracle gives the faulty part more, in the mean by a factor of exp {mean:.3}; most more where:");
    for (more, r) in jobs.iter().take(SHOWN / 2) {
        println!(
            "  exp {more:.2} to {:.3}: {}   {:?} {} {} [{}]\n      {}",
            r.oracle.as_ref().map_or(0.0, |o| o.p_truth),
            list(&r.truth),
            r.stratum,
            r.seed,
            r.template,
            r.tests.join(" "),
            r.guided.ranking
        );
    }
}

fn confusion<'a>(title: &str, records: impl Iterator<Item = &'a Record>) {
    let mut kinds: BTreeMap<(String, String), Vec<&Record>> = BTreeMap::new();
    let mut count = 0;
    for record in records {
        let said = format!(
            "{} {}",
            list(&record.guided.said),
            if record.guided.p > 0.9 { "(sure)" } else { "" }
        );
        kinds.entry((list(&record.truth), said)).or_default().push(record);
        count += 1;
    }
    let mut kinds: Vec<_> = kinds.into_iter().collect();
    kinds.sort_by_key(|(_, of)| std::cmp::Reverse(of.len()));
    println!(
        "{title}: {count} jobs; true → said, count, and one of them: kind and seed, circuit, tests (! slipped)"
    );
    for ((truth, said), of) in kinds.iter().take(SHOWN) {
        let first = of[0];
        println!(
            "  {truth} → {said}: {}   {:?} {} {} [{}]\n      {}",
            of.len(),
            first.stratum,
            first.seed,
            first.template,
            first.tests.join(" "),
            first.guided.ranking
        );
    }
}
