//! What was stated about the work: instruments, tools, engine, who is there.

use holdfast_joblog::{Engine, Instruments, Profile, SecondPerson, Tools};

use crate::compose::stated::instrument_words;
use crate::text::{Args, Texts};

pub(super) fn instruments(texts: &Texts, instruments: &Instruments) -> String {
    texts.say_with(
        "log-instruments",
        &Args::new().text("what", instrument_words(texts, instruments)),
    )
}

pub(super) fn tools(texts: &Texts, tools: &Tools) -> String {
    if tools.have.is_empty() {
        return texts.say("log-no-tools");
    }
    let tools: Vec<String> = tools
        .have
        .iter()
        .map(|id| texts.say(&format!("tool-{id}")))
        .collect();
    texts.say_with("log-tools", &Args::new().text("tools", tools.join("; ")))
}

pub(super) fn engine(texts: &Texts, engine: &Engine) -> String {
    match (engine.can_run, engine.stopped_min) {
        (false, _) => texts.say("log-engine-cannot-run"),
        (true, None) => texts.say("log-engine-runs"),
        (true, Some(minutes)) => texts.say_with(
            "log-engine-stopped",
            &Args::new().text("minutes", texts.minutes(minutes)),
        ),
    }
}

pub(super) fn second_person(texts: &Texts, person: &SecondPerson) -> String {
    texts.say(if person.there {
        "log-second-person"
    } else {
        "log-alone"
    })
}

pub(super) fn profile(texts: &Texts, profile: &Profile) -> String {
    texts.say_with(
        "log-profile",
        &Args::new().text("profile", texts.say(&format!("profile-{}", profile.id))),
    )
}
