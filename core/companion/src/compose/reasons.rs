//! What speaks for and against the first cause, said by what was seen: "lost 16.0 inHg in 20 s", not "leaks".

use holdfast_diagnose::{Answer, Arg, Message, TestId, TestKind, TestResult};

use super::hold::{fall, is_unusable};
use super::overview::is_tester;
use super::reading::on_a_line;
use super::repaired::is_good;
use crate::job::JobView;
use crate::text::{Args, Texts, capital, sentence};

/// The tests that tell most about the finding, the weightiest first. What can't be used tells nothing, and nothing tells more
/// of the tester than its own test.
#[must_use]
pub(super) fn telling(job: &JobView) -> Vec<&TestId> {
    if is_tester(&job.finding) {
        let own = job.done.iter().rev().find(|(reading, result)| {
            let own = matches!(reading.test.kind, TestKind::HandPump | TestKind::ProveMeter);
            own && !is_good(result.outcome)
        });
        if let Some((reading, _)) = own {
            return vec![&reading.test];
        }
    }
    let usable = |result: &TestResult| !result.hold.as_ref().is_some_and(is_unusable);
    let tests = job.finding.speaks_for.iter().filter_map(test_of);
    tests
        .filter(|test| job.last(test, false).is_none_or(|(_, result, _)| usable(result)))
        .collect()
}

/// What was seen in a test before any repair.
#[must_use]
pub(super) fn seen(texts: &Texts, job: &JobView, test: &TestId) -> Option<String> {
    let done = job
        .done
        .iter()
        .rev()
        .find(|(reading, _)| &reading.test == test && !reading.after_repair);
    let (reading, result) = done?;
    Some(match (&reading.answer, &result.hold, result.says.first()) {
        (_, Some(hold), _) => named(texts, test, &fall(texts, hold)),
        (Answer::Values(_), _, Some(first)) if !first.args.is_empty() => sentence(&texts.message(first)),
        _ => named(texts, test, &on_a_line(texts, &job.circuit, reading)),
    })
}

/// What was seen, and how much better it fits this cause or the others.
#[must_use]
pub(super) fn weighed(texts: &Texts, job: &JobView, message: &Message) -> String {
    let times = message.args.iter().find_map(|(_, arg)| match arg {
        Arg::Times(times) => Some(*times),
        _ => None,
    });
    let key = match message.id.as_str() {
        "evidence-for" => "evidence-seen-for",
        "evidence-against" => "evidence-seen-against",
        _ => return sentence(&texts.message(message)),
    };
    let seen = test_of(message).and_then(|test| seen(texts, job, test));
    match (times, seen) {
        (Some(times), Some(seen)) => texts.say_with(
            key,
            &Args::new()
                .text("seen", seen)
                .text("times", capital(&texts.times(times))),
        ),
        _ => sentence(&texts.message(message)),
    }
}

/// A test's name with what was seen in it.
fn named(texts: &Texts, test: &TestId, seen: &str) -> String {
    let args = Args::new()
        .text("label", texts.test_name(test))
        .text("value", seen);
    sentence(&texts.say_with("reading-field", &args))
}

/// The test a message is about.
pub(super) fn test_of(message: &Message) -> Option<&TestId> {
    message.args.iter().find_map(|(_, arg)| match arg {
        Arg::Test(test) => Some(test),
        _ => None,
    })
}
