//! What each outcome of a test would change, in its briefing, when that is asked for.
//!
//! | event | leads to |
//! |---|---|
//! | `WhatIf` | the outcomes with their chances, and the leading causes after each |

use holdfast_diagnose::{Branch, TestId};

use crate::companion::Companion;
use crate::compose;
use crate::flow::parts::{quiet, tap, words};
use crate::job::JobView;
use crate::protocol::{Action, FormItem};
use crate::text::{Args, sentence};

/// Outcomes that are shown, and causes after each.
const OUTCOMES: usize = 5;
const CAUSES: usize = 2;

/// Whether the outcomes were asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Outcomes {
    /// Not yet.
    #[default]
    Hidden,
    /// They are shown.
    Shown,
}

/// The way to the outcomes, or the outcomes.
pub(super) fn items(core: &Companion, job: &JobView, test: &TestId, outcomes: Outcomes) -> Vec<FormItem> {
    if outcomes == Outcomes::Hidden {
        return vec![tap(quiet(core.say("what-if-ask"), Action::WhatIf))];
    }
    let branches = job.what_if(test);
    if branches.is_empty() {
        return vec![words(core.say("what-if-nothing"))];
    }
    let heading = std::iter::once(words(core.say("what-if-heading")));
    let lines = branches
        .iter()
        .take(OUTCOMES)
        .map(|branch| words(line(core, branch)));
    heading.chain(lines).collect()
}

fn line(core: &Companion, branch: &Branch) -> String {
    let texts = &core.texts;
    let cause = |cause: &holdfast_diagnose::Cause| {
        let args = Args::new()
            .text("cause", compose::cause_words(texts, cause))
            .text("percent", texts.percent(cause.p));
        core.say_with("what-if-cause", &args)
    };
    let causes: Vec<String> = branch.causes.iter().take(CAUSES).map(cause).collect();
    let args = Args::new()
        .text("chance", texts.percent(branch.chance))
        .text("outcome", sentence(&texts.message(&branch.outcome)))
        .text("causes", texts.list(&causes));
    core.say_with(
        if branch.decided {
            "what-if-decides"
        } else {
            "what-if-line"
        },
        &args,
    )
}
