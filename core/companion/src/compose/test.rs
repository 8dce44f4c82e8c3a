//! A test in words: what is shown before it, and what came out.

use holdfast_diagnose::{
    Answer, CautionRef, EngineNeed, HoldResult, Message, Needs, Next, NotOffered, Outcome as Result, Profile,
    Reading, TestId, TestKind, TestResult, TestSpec, Window, hold_target,
};
use holdfast_measure::{Pressure, si::pressure::kilopascal};
use holdfast_report::Scene;

use super::reading::on_a_line;
use super::{hold::hold_chart, mark::mark_of, spectrum::spectra};
use crate::job::JobView;
use crate::protocol::{Acknowledgement, Caution, Mark, Meaning, Signal, Step};
use crate::text::{Args, Texts, sentence};

/// What is shown of a test before it is begun.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Brief {
    /// Where, in words.
    pub place: String,
    /// What it is for: longer for an owner, empty for a mechanic.
    pub explain: String,
    /// Why in general, where the planner has not said why now.
    pub why: String,
    /// What is needed and how the car must be.
    pub needs: Vec<String>,
    /// Cautions that stand before the first step.
    pub before: Vec<Caution>,
    /// The steps with the cautions that belong to them.
    pub steps: Vec<Step>,
    /// What each result would mean.
    pub means: Vec<Meaning>,
}

/// What is shown of a result.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Outcome {
    /// The result.
    pub mark: Mark,
    /// What was seen, in one sentence.
    pub sentence: String,
    /// What it means.
    pub meaning: String,
    /// The numbers behind it, small.
    pub details: Vec<String>,
    /// The fall of the needle, for a hold.
    pub chart: Option<Scene>,
}

/// A test before it is begun.
#[must_use]
pub(crate) fn brief(texts: &Texts, job: &JobView, spec: &TestSpec) -> Brief {
    let args = test_args(texts, job).text("engine", engine_word(spec.needs.engine));
    let say = |what: &str| texts.test_text(&spec.id, what, &args).unwrap_or_default();
    let cautions = |step: usize| -> Vec<Caution> {
        let mut here: Vec<&CautionRef> = spec.cautions.iter().filter(|c| c.at_step == step).collect();
        // The gravest first; among equals as the catalogue has them.
        here.sort_by_key(|c| c.signal);
        here.into_iter().map(|c| caution(texts, c)).collect()
    };
    let steps = texts
        .test_texts(&spec.id, "step", &args)
        .into_iter()
        .enumerate()
        .map(|(at, text)| Step {
            cautions: cautions(at + 1),
            text,
        })
        .collect();
    let means = spec
        .means
        .iter()
        .map(|outcome| Meaning {
            mark: mark_of(texts, *outcome),
            text: say(&format!("means-{}", outcome.as_str().replace('_', "-"))),
        })
        .collect();
    Brief {
        place: say("where"),
        explain: match job.situation.profile {
            Profile::Owner => say("explain"),
            Profile::Mechanic => String::new(),
        },
        why: why_now(texts, job, &spec.id),
        needs: needs(texts, spec, &args),
        before: cautions(0),
        steps,
        means,
    }
}

/// Why a test, in its own words, and in the planner's where it is the next one.
#[must_use]
pub(crate) fn why_now(texts: &Texts, job: &JobView, test: &TestId) -> String {
    let own = texts
        .test_text(test, "why", &test_args(texts, job))
        .unwrap_or_default();
    match &job.next {
        Next::Test { id, why, .. } if id == test => [own, sentence(&texts.message(why))].join(" "),
        _ => own,
    }
}

/// What the engine does in a test, as texts ask for it.
fn engine_word(engine: EngineNeed) -> &'static str {
    match engine {
        EngineNeed::Any | EngineNeed::Off | EngineNeed::KeyOn => "off",
        EngineNeed::Idle | EngineNeed::InGear => "idle",
    }
}

/// The values that the texts of a test can use.
#[must_use]
pub(crate) fn test_args(texts: &Texts, job: &JobView) -> Args {
    let limit = &job.situation.limit;
    let properties = &job.circuit.properties;
    Args::new()
        .text("target", texts.vacuum(hold_target(&job.situation).vacuum))
        .text("seconds", texts.seconds(limit.seconds))
        .text("limit", texts.vacuum(Pressure::new::<kilopascal>(limit.drop_kpa)))
        .text(
            "window",
            texts.say(match properties.window {
                Window::Idle => "window-idle",
                Window::IdleInGear => "window-idle-in-gear",
                Window::Unknown => "window-unknown",
            }),
        )
        .text(
            "rest",
            match properties.rest {
                holdfast_diagnose::ValveRest::Closed => "closed",
                holdfast_diagnose::ValveRest::Open => "open",
            },
        )
}

/// A caution in words, to be read; whether it is to be ticked is the flow's business.
#[must_use]
pub(crate) fn caution(texts: &Texts, caution: &CautionRef) -> Caution {
    let (signal, word) = match caution.signal {
        holdfast_diagnose::Signal::Danger => (Signal::Danger, "signal-danger"),
        holdfast_diagnose::Signal::Warning => (Signal::Warning, "signal-warning"),
        holdfast_diagnose::Signal::Caution => (Signal::Caution, "signal-caution"),
        holdfast_diagnose::Signal::Notice => (Signal::Notice, "signal-notice"),
    };
    Caution {
        signal,
        word: texts.say(word),
        text: texts.caution(&caution.id).unwrap_or_default(),
        ack: Acknowledgement::NotAsked,
    }
}

/// Why a test is not offered here and now.
#[must_use]
pub(crate) fn not_offered(texts: &Texts, why: NotOffered) -> String {
    texts.say(why.text().as_str())
}

fn needs(texts: &Texts, spec: &TestSpec, args: &Args) -> Vec<String> {
    let mut lines: Vec<String> = spec
        .tools
        .iter()
        .map(|tool| texts.say(&format!("tool-{}", tool.as_str())))
        .collect();
    let Needs {
        engine,
        window,
        fed: _,
        second_person,
        at_hot_parts: _,
        connected,
    } = spec.needs;
    let engine = match engine {
        EngineNeed::Any => None,
        EngineNeed::Off => Some("need-engine-off"),
        EngineNeed::KeyOn => Some("need-ignition-on"),
        EngineNeed::Idle => Some("need-engine-idle"),
        EngineNeed::InGear => Some("need-engine-in-gear"),
    };
    let keys = [
        engine,
        second_person.then_some("need-second-person"),
        connected.map(|on| {
            if on {
                "need-connector-on"
            } else {
                "need-connector-off"
            }
        }),
        window.then_some("need-window"),
    ];
    lines.extend(keys.into_iter().flatten().map(|key| texts.say_with(key, args)));
    lines
}

/// A result: what was seen first, then what it means, then the numbers.
#[must_use]
pub(crate) fn result(texts: &Texts, job: &JobView, reading: &Reading, result: &TestResult) -> Outcome {
    let says: Vec<Message> = result
        .says
        .iter()
        .filter(|m| !said_by_meaning(reading, m))
        .cloned()
        .collect();
    let mut said = texts.messages(&says).into_iter();
    let sentence_seen = match (&reading.answer, said.next()) {
        (Answer::NotDone { .. } | Answer::NotAvailable, _) => texts.say_with(
            "not-done",
            &Args::new().text("reason", on_a_line(texts, &job.circuit, reading)),
        ),
        (_, first) => first.unwrap_or_default(),
    };
    let good = matches!(
        result.outcome,
        Result::Holds | Result::SlowLeak | Result::AsExpected
    );
    let own = good && reading.test.kind != TestKind::HandPump;
    let meaning = if own { None } else { said.next() };
    let meaning = meaning.unwrap_or_else(|| means(texts, job, &reading.test, result.outcome));
    let mut details: Vec<String> = said.collect();
    if let Some(hold) = &result.hold {
        details.extend(hold_details(texts, hold));
    }
    Outcome {
        mark: mark_of(texts, result.outcome),
        sentence: sentence(&sentence_seen),
        meaning,
        details,
        chart: hold_chart(texts, job, &[(None, reading, result)]).or_else(|| spectra(texts, reading)),
    }
}

/// Whether the meaning of a passed hold of one mount or hose says a remark already.
fn said_by_meaning(reading: &Reading, message: &Message) -> bool {
    let part = reading.test.part.as_ref().map_or("", |part| part.as_str());
    match message.id.as_str() {
        "hold-clears-no-torn-mount" => part.ends_with("mount"),
        "hold-clears-no-blocked-hose" => part.ends_with("hose"),
        _ => false,
    }
}

/// What a result means for the circuit, as the briefing said before.
#[must_use]
pub(crate) fn means(texts: &Texts, job: &JobView, test: &TestId, outcome: Result) -> String {
    let what = format!("means-{}", outcome.as_str().replace('_', "-"));
    texts
        .test_text(test, &what, &test_args(texts, job))
        .unwrap_or_default()
}

/// The numbers behind a hold, each a line.
#[must_use]
pub(super) fn hold_details(texts: &Texts, hold: &HoldResult) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(leak) = &hold.leak {
        let key = if leak.value > 0.0 {
            "detail-leak"
        } else {
            "detail-leak-none"
        };
        lines.push(
            texts.say_with(
                key,
                &Args::new()
                    .text("leak", texts.leak(leak.value))
                    .text("low", texts.leak_number(leak.low))
                    .text("high", texts.leak_number(leak.high)),
            ),
        );
    }
    lines.push(
        texts.say_with(
            "detail-limit",
            &Args::new()
                .text("limit", texts.leak(hold.limit_std_cm3_min))
                .text("volume", texts.volume(hold.volume_cm3)),
        ),
    );
    if let Some(mm) = hold.hole_mm {
        lines.push(texts.say_with("detail-hole", &Args::new().text("hole", texts.millimetres(mm))));
    }
    if hold.leak.is_some() {
        lines.push(texts.say_with(
            "detail-over-limit",
            &Args::new().text("share", texts.percent(hold.p_over_limit)),
        ));
    }
    lines
}
