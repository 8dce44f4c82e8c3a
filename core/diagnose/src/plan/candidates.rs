//! The tests that can still be done, and what each is worth.

use super::order::data;
use super::worth::Worth;
use crate::finding::Reasoned;
use crate::{Arg, Catalogue, Circuit, Message, Needs, Situation, TestId, TestSpec};

/// A test to do next.
pub(super) struct Choice {
    pub id: TestId,
    pub why: Message,
    pub minutes: f64,
}

/// The tests that can still be done.
pub(crate) struct Candidates<'r, 'a> {
    reasoned: &'r Reasoned<'a>,
    specs: Vec<TestSpec>,
    /// The state the last test left the car in.
    state: Needs,
}

/// A test from which less is to be expected, bit, is not worth doing: it can hardly change what to do.
const WORTH_DOING: f64 = 0.008;
/// Remedies less likely than this are not counted as told apart.
const IN_PLAY: f64 = 0.01;

impl<'r, 'a> Candidates<'r, 'a> {
    pub fn new(reasoned: &'r Reasoned<'a>) -> Self {
        let (circuit, situation): (&Circuit, &Situation) =
            (reasoned.model.layout.circuit, reasoned.model.situation);
        let mut specs = Catalogue::standard().tests_for(circuit, situation);
        let mut state = Needs::default();
        for test in &reasoned.tests {
            let Some(spec) = specs.iter().find(|s| &s.id == test) else {
                continue;
            };
            state.engine = if spec.needs.engine == crate::EngineNeed::Any {
                state.engine
            } else {
                spec.needs.engine
            };
            state.connected = spec.needs.connected.or(state.connected);
        }
        specs.retain(|s| !reasoned.tests.contains(&s.id));
        Self {
            reasoned,
            specs,
            state,
        }
    }

    fn minutes(&self, spec: &TestSpec) -> f64 {
        spec.minutes + data().change(self.state, spec.needs)
    }

    /// The next test of the textbook's order.
    pub(super) fn textbook(&self) -> Option<Choice> {
        let order = data().textbook(self.reasoned.model.layout.circuit, &self.specs);
        let id = order.into_iter().next()?;
        let spec = self.specs.iter().find(|s| s.id == id)?;
        let minutes = self.minutes(spec);
        let why = Message::new("why-textbook")
            .with("test", Arg::Test(id.clone()))
            .with("minutes", Arg::Minutes(minutes));
        Some(Choice { id, why, minutes })
    }

    /// The test that is expected to settle most a minute; none if no test can change what to do.
    pub(super) fn best(&self) -> Option<Choice> {
        let worth = Worth::new(self.reasoned);
        let of = |spec: &TestSpec| {
            let bits = worth.bits(&spec.id);
            (bits >= WORTH_DOING).then(|| (bits / self.minutes(spec), bits))
        };
        let (spec, (_, bits)) = self
            .specs
            .iter()
            .filter_map(|spec| Some((spec, of(spec)?)))
            .max_by(|a, b| a.1.0.total_cmp(&b.1.0))?;
        let minutes = self.minutes(spec);
        let remedies = self.reasoned.remedies();
        let in_play = remedies.iter().filter(|(_, p)| *p >= IN_PLAY).count();
        let why = Message::new("why-settles")
            .with("test", Arg::Test(spec.id.clone()))
            .with("minutes", Arg::Minutes(minutes))
            .with("count", Arg::Count(i64::try_from(in_play).unwrap_or(i64::MAX)))
            .with("share", Arg::Percent((bits / worth.open_bits()).clamp(0.0, 1.0)));
        Some(Choice {
            id: spec.id.clone(),
            why,
            minutes,
        })
    }

    /// Whether any test that is left can change what to do.
    pub fn can_change(&self) -> bool {
        let worth = Worth::new(self.reasoned);
        self.specs.iter().any(|spec| worth.bits(&spec.id) >= WORTH_DOING)
    }
}
