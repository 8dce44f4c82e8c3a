//! The briefing of a test: why now, what is needed, steps with the cautions that belong to them, what it will mean.
//!
//! | event | leads to |
//! |---|---|
//! | `Acknowledge` | that caution ticked |
//! | `WhatIf` | what each outcome would change is shown, see [`super::what_if`] |
//! | `StateCar` | the state of the car can be picked, see [`super::car_state`] |
//! | `CannotDo` in own words, without words | the words are asked for |
//! | `Type` why it can't be done | kept |
//! | `BeginTest` with every DANGER and WARNING ticked in this job | they are logged; the measurement |
//! | `BeginTest` before that | nothing |

use holdfast_diagnose::{Catalogue, CautionRef, Profile, Signal as Grade, TestSpec};
use holdfast_joblog::{Acknowledged, Payload};

use crate::companion::Companion;
use crate::compose::{self, MapOf};
use crate::flow::parts::{entry, plain, primary, quiet, tap, text_field};
use crate::flow::what_if::Outcomes;
use crate::flow::{car_state, kind, what_if};
use crate::job::JobView;
use crate::protocol::{
    Acknowledgement, Action, Body, CannotReason, Caution, FieldId, FormItem, Keys, PhotoSource, PhotoSubject,
    Pick, TestScreen, TestStage,
};
use crate::session::{Stage, TestAt};
use crate::text::Args;
use crate::turn::Turn;
use crate::typed::Typed;

const OWN_WORDS: Action = Action::CannotDo {
    reason: CannotReason::OwnWords,
};

/// Cautions to be ticked that were not ticked yet in this job.
pub(super) fn unticked(core: &Companion, at: &TestAt, spec: &TestSpec) -> usize {
    let Stage::Brief { acknowledged, .. } = &at.stage else {
        return 0;
    };
    spec.cautions
        .iter()
        .filter(|caution| is_asked(caution) && !is_ticked(core, acknowledged, caution))
        .count()
}

/// Whether a caution has to be ticked: one that can kill or maim.
fn is_asked(caution: &CautionRef) -> bool {
    matches!(caution.signal, Grade::Danger | Grade::Warning)
}

fn is_ticked(core: &Companion, acknowledged: &[String], caution: &CautionRef) -> bool {
    acknowledged.contains(&caution.id) || core.acknowledged(&caution.id)
}

/// The briefing with what was ticked, typed and picked in it.
pub(super) fn filled_in(mut at: TestAt, action: Action) -> TestAt {
    let Stage::Brief {
        acknowledged,
        typed,
        outcomes,
    } = &mut at.stage
    else {
        return at;
    };
    match action {
        Action::Acknowledge { caution } => acknowledged.push(caution),
        Action::Type { field, text } => typed.put(field, &text),
        Action::WhatIf => *outcomes = Outcomes::Shown,
        Action::StateCar => at.car = Some(at.car.unwrap_or_default()),
        Action::Pick {
            pick: Pick::CarState { property, value },
        } => at.car = at.car.map(|car| car_state::pick(car, &property, &value)),
        _ => {}
    }
    at
}

/// The briefing with a field for the person's own reason.
pub(super) fn ask_why(mut at: TestAt) -> TestAt {
    if let Stage::Brief { typed, .. } = &mut at.stage {
        typed.put(FieldId::CannotWhy, "");
    }
    at
}

/// Logs what was ticked in this briefing.
pub(super) fn log_ticks(core: &Companion, at: &TestAt, spec: &TestSpec, turn: &mut Turn<'_>) {
    let Stage::Brief { acknowledged, .. } = &at.stage else {
        return;
    };
    for caution in acknowledged {
        if spec.cautions.iter().any(|c| c.id == *caution) && !core.acknowledged(caution) {
            let test = Some(at.test.clone());
            core.append(
                Payload::Acknowledged(Acknowledged {
                    caution: caution.clone(),
                    test,
                }),
                turn,
            );
        }
    }
}

pub(super) fn body(
    core: &Companion,
    at: &TestAt,
    spec: &TestSpec,
    acknowledged: &[String],
    typed: &Typed,
) -> Body {
    let Some(job) = &core.job else {
        return core.nothing();
    };
    let texts = &core.texts;
    let left = unticked(core, at, spec);
    let why_not = not_offered(core, job, spec)
        .or_else(|| (left > 0).then(|| core.say_with("brief-unticked", &Args::new().count("count", left))));
    let brief = compose::brief(texts, job, spec);
    let with_ticks = |caution: Caution| ticked_caution(core, spec, acknowledged, caution);
    let mut steps = brief.steps;
    if let Some(first) = steps.first_mut() {
        first.cautions.splice(0..0, brief.before);
        first.cautions.sort_by_key(|caution| caution.signal);
    }
    for step in &mut steps {
        step.cautions = std::mem::take(&mut step.cautions)
            .into_iter()
            .map(with_ticks)
            .collect();
    }
    let mut needs = brief.needs;
    needs.push(core.say_with(
        "brief-minutes",
        &Args::new().text("minutes", texts.minutes(spec.minutes)),
    ));
    let stage = TestStage::Brief {
        why: [brief.why, brief.explain, about(core, job, spec)]
            .join(" ")
            .trim()
            .to_owned(),
        needs,
        steps,
        means: brief.means,
        start: primary(core.say("brief-start"), Action::BeginTest).unless(why_not),
        cannot: cannot(core, typed),
        extras: extras(core, at, typed)
            .into_iter()
            .chain(what_if::items(core, job, &spec.id, outcomes_of(at)))
            .collect(),
    };
    let picture = match spec.form {
        holdfast_diagnose::Form::Meter => compose::connector(texts, &job.circuit, &spec.id),
        _ => None,
    };
    let picture = picture.or_else(|| compose::place_map(texts, job, MapOf::Test(&spec.id)));
    Body::Test {
        test: TestScreen {
            picture,
            own: kind::of_test(core, &spec.id),
            place: brief.place,
            stage,
        },
    }
}

fn outcomes_of(at: &TestAt) -> Outcomes {
    match &at.stage {
        Stage::Brief { outcomes, .. } => *outcomes,
        _ => Outcomes::Hidden,
    }
}

/// Photos, the state of the car where it is another, and room for a reason in the person's own words.
fn extras(core: &Companion, at: &TestAt, typed: &Typed) -> Vec<FormItem> {
    let test = at.test.clone();
    let mut items = photo_buttons(core, PhotoSubject::Test { test });
    match at.car {
        None => items.push(tap(quiet(core.say("state-otherwise"), Action::StateCar))),
        Some(car) => items.extend(car_state::items(core, car)),
    }
    if let Some(why) = typed.get(&FieldId::CannotWhy) {
        let label = core.say("cannot-why");
        let field = text_field(FieldId::CannotWhy, label, why.to_owned(), Keys::Text);
        items.push(entry(field));
    }
    items
}

/// Why a test is not offered here and now: a tool, a person or the engine is missing.
fn not_offered(core: &Companion, job: &JobView, spec: &TestSpec) -> Option<String> {
    if job.spec(&spec.id).is_some() {
        return None;
    }
    let advice = Catalogue::standard().advice(&job.circuit, &job.situation);
    let why = advice
        .into_iter()
        .find(|advice| advice.spec.id == spec.id)?
        .not_offered?;
    Some(compose::not_offered(&core.texts, why))
}

/// What the part under test is, for an owner who may never have seen one.
fn about(core: &Companion, job: &JobView, spec: &TestSpec) -> String {
    match (job.situation.profile, &spec.id.part) {
        (Profile::Owner, Some(part)) => core.texts.about_part(part).unwrap_or_default(),
        _ => String::new(),
    }
}

/// A caution as it is to be ticked: found again by its words, which only its id decides.
fn ticked_caution(core: &Companion, spec: &TestSpec, acknowledged: &[String], caution: Caution) -> Caution {
    let asked = spec
        .cautions
        .iter()
        .filter(|asked| is_asked(asked))
        .find(|asked| core.texts.message(&holdfast_diagnose::Message::new(asked.text())) == caution.text);
    let ack = match asked {
        None => Acknowledgement::NotAsked,
        Some(asked) if is_ticked(core, acknowledged, asked) => Acknowledgement::Given,
        Some(asked) => Acknowledgement::Open {
            action: Action::Acknowledge {
                caution: asked.id.clone(),
            },
        },
    };
    Caution { ack, ..caution }
}

/// The reasons; the person's own is asked for when it is tapped.
fn cannot(core: &Companion, typed: &Typed) -> Vec<crate::protocol::Button> {
    let own = match typed.get(&FieldId::CannotWhy) {
        None => quiet(core.say("cannot-why"), OWN_WORDS),
        Some(why) => {
            let nothing = why.trim().is_empty().then(|| core.say("cannot-why-missing"));
            quiet(core.say("cannot-own-words"), OWN_WORDS).unless(nothing)
        }
    };
    [
        (CannotReason::NoAccess, "cannot-no-access"),
        (CannotReason::NoTool, "cannot-no-tool"),
        (CannotReason::NotSafe, "cannot-not-safe"),
        (CannotReason::NotFitted, "cannot-not-fitted"),
        (CannotReason::NotNow, "cannot-not-now"),
        (CannotReason::NotAvailable, "cannot-not-available"),
    ]
    .into_iter()
    .map(|(reason, key)| quiet(core.say(key), Action::CannotDo { reason }))
    .chain([own])
    .collect()
}

/// Take or pick a photo of something.
pub(super) fn photo_buttons(core: &Companion, about: PhotoSubject) -> Vec<FormItem> {
    use crate::protocol::PhonePart;
    let button = |part, from, key: &str| {
        core.has(part).then(|| {
            tap(plain(
                core.say(key),
                Action::AddPhoto {
                    from,
                    about: about.clone(),
                },
            ))
        })
    };
    let mut items: Vec<FormItem> = [
        button(PhonePart::Camera, PhotoSource::Camera, "photo-take"),
        button(PhonePart::Gallery, PhotoSource::Gallery, "photo-pick"),
    ]
    .into_iter()
    .flatten()
    .collect();
    items.extend(crate::flow::photo::cards(core, Some(&about)));
    items
}
