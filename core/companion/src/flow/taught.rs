//! What the person's own jobs taught, in the settings: shown, and forgotten when asked.

use crate::companion::Companion;
use crate::flow::parts::{quiet, section, tap, words};
use crate::protocol::{Action, Pick, Section};
use crate::text::{Args, capital};

/// Faults that are shown.
const SHOWN: usize = 5;

pub(super) fn taught_section(core: &Companion) -> Section {
    let (learned, jobs) = core.taught();
    let mut items = Vec::new();
    if jobs == 0 {
        items.push(words(core.say("taught-nothing")));
    } else {
        items.push(words(
            core.say_with("taught-jobs", &Args::new().count("count", jobs)),
        ));
        for (fault, times) in learned.faults().into_iter().take(SHOWN) {
            let args = Args::new()
                .text("fault", capital(&core.texts.fault(fault)))
                .count("count", times as usize);
            items.push(words(core.say_with("taught-fault", &args)));
        }
        let pick = Pick::ForgetJobs;
        items.push(tap(quiet(core.say("taught-forget"), Action::Pick { pick })));
    }
    section(core.say("taught"), items)
}
