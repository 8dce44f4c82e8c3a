//! What speaks for and against the first cause, said by what was seen: "lost 16.0 inHg in 20 s", not "leaks".

use holdfast_diagnose::{Answer, Arg, Message, TestId};

use super::hold::fall;
use super::reading::{reading_words, small};
use crate::job::JobView;
use crate::text::{Args, Texts, capital, sentence};

/// What was seen in the test a message is about; the message's own words where it is about none.
#[must_use]
pub(super) fn seen(texts: &Texts, job: &JobView, message: &Message) -> String {
    let Some(test) = test_of(message) else {
        return sentence(&texts.message(message));
    };
    let done = job
        .done
        .iter()
        .rev()
        .find(|(reading, _)| &reading.test == test && !reading.after_repair);
    match done {
        Some((reading, _)) if matches!(reading.answer, Answer::Look(_)) => named(
            texts,
            test,
            &reading_words(texts, &job.circuit, reading).to_lowercase(),
        ),
        Some((reading, result)) => match (&result.hold, result.says.first()) {
            (Some(hold), _) => named(texts, test, &fall(texts, hold)),
            (None, Some(first)) if !first.args.is_empty() => sentence(&texts.message(first)),
            (None, _) => named(texts, test, &small(&reading_words(texts, &job.circuit, reading))),
        },
        None => sentence(&texts.message(message)),
    }
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
    match times {
        Some(times) if test_of(message).is_some() => texts.say_with(
            key,
            &Args::new()
                .text("seen", seen(texts, job, message))
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
