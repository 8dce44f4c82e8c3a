//! The repair of a part and the same test again.
//!
//! | event | leads to |
//! |---|---|
//! | `Pick` a part, where none was named | the repair of that part |
//! | `Type` what was put in, a note | kept |
//! | `RepairDone` | logged; the retest is offered |
//! | `ShowTest` | the retest: the test that condemned the part, done again |
//! | `CloseJob` | the finding logged; the report |

use holdfast_diagnose::{Complaint, Component, ComponentId, ComponentKind, TestId, TestKind, retest_for};
use holdfast_joblog::{Payload, Repair};

use crate::companion::Companion;
use crate::compose;
use crate::error::ActError;
use crate::flow::finding;
use crate::flow::parts::{entry, one_of, option, plain, primary, section, tap, text_field, words};
use crate::job::JobView;
use crate::protocol::{Action, Body, FieldId, FormItem, Frame, Keys, Pick, RepairedScreen, Section};
use crate::session::{At, RepairDraft};
use crate::text::Args;
use crate::turn::Turn;

pub(super) fn act(
    core: &mut Companion,
    mut draft: RepairDraft,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type { field, text } => {
            draft.typed.put(field, &text);
            core.session.at = At::Repaired(draft);
        }
        Action::Pick {
            pick: Pick::Part { component },
        } => {
            draft.component = component;
            core.session.at = At::Repaired(draft);
        }
        Action::RepairDone => {
            let to_do = |job: &JobView| part_of(job, &draft).is_some() && !is_done(job, &draft.component);
            if !core.job.as_ref().is_some_and(to_do) {
                return Ok(());
            }
            let text = |field| draft.typed.get(&field).unwrap_or("").trim().to_owned();
            let repair = Repair {
                component: draft.component.clone(),
                part: text(FieldId::RepairPart),
                torque: text(FieldId::Torque),
                note: text(FieldId::Note),
                done: true,
            };
            core.append(Payload::Repair(repair), turn);
        }
        Action::CloseJob => {
            finding::close(core, turn);
            core.session.at = At::Report;
        }
        _ => {}
    }
    Ok(())
}

/// The test to do again: the one of this part that failed, else the part's own.
pub(crate) fn retest(job: &JobView, component: &str) -> TestId {
    let part = ComponentId::new(component);
    retest_for(&job.circuit, &job.finding, &job.done, &part)
}

/// The part to repair; none where it was not picked yet.
fn part_of<'a>(job: &'a JobView, draft: &RepairDraft) -> Option<&'a Component> {
    job.circuit.component(&ComponentId::new(draft.component.clone()))
}

/// Whether the repair of a component is logged.
fn is_done(job: &JobView, component: &str) -> bool {
    job.log
        .repairs
        .iter()
        .any(|repair| repair.value.done && repair.value.component == component)
}

pub(super) fn screen(core: &Companion, draft: &RepairDraft) -> (Frame, Body) {
    if let Some(job) = core.job.as_ref().filter(|job| part_of(job, draft).is_none()) {
        return pick_part(core, job);
    }
    let part = ComponentId::new(draft.component.clone());
    let title = core.say_with("repair-title", &core.texts.of_part(&part));
    let Some(job) = &core.job else {
        return (Frame::titled(title), core.nothing());
    };
    let test = retest(job, &draft.component);
    let after = job.last(&test, true);
    let mut sections = vec![mind_section(core, &part)];
    if is_done(job, &draft.component) {
        sections.push(retest_section(core, job, &test));
    } else {
        sections.push(done_section(core, job, draft));
    }
    let chart = match (job.last(&test, false), after) {
        (Some((first, outcome, _)), Some((again, now, _))) => {
            compose::before_and_after(&core.texts, job, (first, outcome), (again, now))
        }
        _ => None,
    };
    let next = match (is_done(job, &draft.component), after.is_some()) {
        (false, _) => primary(core.say("repair-done"), Action::RepairDone),
        (true, false) => {
            let args = Args::new().text("test", core.texts.test_title(&test));
            primary(
                core.say_with("repair-retest", &args),
                Action::ShowTest {
                    test: test.to_string(),
                },
            )
        }
        (true, true) => primary(core.say("repair-close"), Action::CloseJob),
    };
    let repair = RepairedScreen {
        sections,
        chart,
        next,
    };
    (Frame::titled(title), Body::Repaired { repair })
}

/// Which part was repaired, where the finding does not name it.
fn pick_part(core: &Companion, job: &JobView) -> (Frame, Body) {
    let options = job
        .circuit
        .components
        .iter()
        .filter(|part| !matches!(part.kind, ComponentKind::HandPump | ComponentKind::Engine))
        .map(|part| {
            let component = part.id.to_string();
            option(core.texts.part(&part.id), false, Pick::Part { component })
        })
        .collect();
    let which = one_of(core.say("repair-which"), options);
    let repair = RepairedScreen {
        sections: vec![section(String::new(), vec![which])],
        chart: None,
        next: primary(core.say("repair-done"), Action::RepairDone)
            .unless(Some(core.say("repair-which-first"))),
    };
    (Frame::titled(core.say("repair-which")), Body::Repaired { repair })
}

fn mind_section(core: &Companion, part: &ComponentId) -> Section {
    let items: Vec<FormItem> = core.texts.repair_lines(part).into_iter().map(words).collect();
    section(core.say("repair-mind"), items)
}

fn done_section(core: &Companion, job: &JobView, draft: &RepairDraft) -> Section {
    let field = |id: FieldId, label: &str, keys: Keys| {
        let there = draft.typed.get(&id).unwrap_or("").to_owned();
        text_field(id, core.say(label), there, keys)
    };
    let mut part = field(FieldId::RepairPart, "repair-part", Keys::Text);
    part.hint = core.say("repair-part-hint");
    let mut items = vec![entry(part)];
    let is_bolted = part_of(job, draft).is_some_and(|part| part.kind == ComponentKind::Mount);
    if is_bolted {
        let mut torque = field(FieldId::Torque, "repair-torque", Keys::Text);
        torque.hint = core.say("repair-torque-hint");
        items.push(entry(torque));
    }
    items.push(entry(field(FieldId::Note, "repair-note", Keys::Lines)));
    section(core.say("repair-what"), items)
}

fn retest_section(core: &Companion, job: &JobView, test: &TestId) -> Section {
    let mut items = vec![words(core.say("repair-retest-why"))];
    for (after, key) in [(false, "repair-before"), (true, "repair-after")] {
        if let Some((reading, result, _)) = job.last(test, after) {
            let seen = compose::result(&core.texts, job, reading, result);
            let text = core.say_with(key, &Args::new().text("result", seen.sentence));
            items.push(FormItem::State {
                mark: seen.mark,
                text,
            });
        }
    }
    items.extend(compose::repaired_sentence(&core.texts, job).map(words));
    let complaint = TestId::of(TestKind::Complaint);
    let again = job
        .situation
        .complaint
        .iter()
        .any(|complaint| *complaint != Complaint::None)
        && job.last(test, true).is_some()
        && job.last(&complaint, true).is_none();
    if again {
        items.push(tap(plain(
            core.say("repair-complaint-again"),
            Action::ShowTest {
                test: complaint.to_string(),
            },
        )));
    }
    section(core.say("repair-same-test"), items)
}
