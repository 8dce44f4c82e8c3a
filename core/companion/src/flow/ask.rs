//! Questions with two large answers, one after the other; numbers beside them come last.
//!
//! | event | leads to |
//! |---|---|
//! | `Say` yes or no | the next question; after the last, the numbers or the reading handed in |
//! | `Say` not sure | the next question; a test with no answer at all is handed in as it is |

use std::collections::BTreeMap;

use holdfast_diagnose::{Answer, FieldKey, FieldSpec, Quantity, TestSpec, Value};

use crate::companion::Companion;
use crate::compose::{self, MapOf};
use crate::error::ActError;
use crate::flow::kind;
use crate::flow::parts::{plain, quiet};
use crate::flow::reading::{Handed, hand_in};
use crate::flow::values::said_words;
use crate::protocol::{Action, Body, Said, YesNoScreen};
use crate::session::{At, Stage, TestAt, ValuesAt};
use crate::turn::Turn;

/// The questions of a test.
fn questions(spec: &TestSpec) -> impl Iterator<Item = &FieldSpec> {
    spec.fields
        .iter()
        .filter(|field| field.quantity == Quantity::YesNo)
}

pub(super) fn act(
    core: &mut Companion,
    at: TestAt,
    spec: &TestSpec,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    let (Stage::Ask { said }, Action::Say { said: now }) = (&at.stage, action) else {
        return Ok(());
    };
    let Some(question) = questions(spec).nth(said.len()) else {
        return Ok(());
    };
    let word = match now {
        Said::Yes => "yes",
        Said::No => "no",
        Said::NotSure => "not_sure",
    };
    let mut said = said.clone();
    said.push((question.key.to_string(), word.to_owned()));
    if said.len() < questions(spec).count() {
        core.session.at = At::Test(TestAt {
            stage: Stage::Ask { said },
            ..at
        });
        return Ok(());
    }
    let picked: Vec<(String, String)> = said.into_iter().filter(|(_, word)| word != "not_sure").collect();
    if spec
        .fields
        .iter()
        .any(|field| !matches!(field.quantity, Quantity::YesNo | Quantity::Samples))
    {
        let values = ValuesAt {
            picked,
            ..ValuesAt::default()
        };
        core.session.at = At::Test(TestAt {
            stage: Stage::Values(values),
            ..at
        });
        return Ok(());
    }
    let values: BTreeMap<FieldKey, Value> = picked
        .into_iter()
        .map(|(key, word)| (FieldKey::new(key), Value::YesNo(word == "yes")))
        .collect();
    hand_in(core, at, Answer::Values(values), Handed::default(), turn)
}

pub(super) fn body(core: &Companion, spec: &TestSpec, said: &[(String, String)]) -> Body {
    let (Some(job), Some(question)) = (&core.job, questions(spec).nth(said.len())) else {
        return core.nothing();
    };
    let args = compose::test_args(&core.texts, job);
    let key = question.key.as_str();
    let field = format!("field-{}", key.replace('_', "-"));
    let answer = |word: &str, said| plain(said_words(core, spec, key, word), Action::Say { said });
    let ask = YesNoScreen {
        picture: compose::place_map(&core.texts, job, MapOf::Near(&spec.id)),
        own: kind::of_test(core, &spec.id),
        question: core
            .texts
            .test_text(&spec.id, &field, &args)
            .unwrap_or_else(|| key.replace('_', " ")),
        look_for: core.texts.test_texts(&spec.id, "look", &args),
        answers: vec![answer("yes", Said::Yes), answer("no", Said::No)],
        not_sure: quiet(core.say("said-not-sure"), Action::Say { said: Said::NotSure }),
    };
    Body::YesNo { ask }
}
