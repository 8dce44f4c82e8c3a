//! The test to do next, by each policy, and why.

use super::order::data;
use super::outlook::{CHANGES_NOTHING, Outlook, ready};
use super::search::Choice as Planned;
use crate::finding::Reasoned;
use crate::{Arg, Catalogue, Message, TestId, TestSpec};

/// A test to do next.
pub(super) struct Choice {
    pub id: TestId,
    pub why: Message,
    pub minutes: f64,
    /// Minutes to the finding that are expected, this test included, where they were worked out.
    pub to_finding: Option<f64>,
}

/// Remedies less likely than this are not counted as suspects.
const SUSPECT: f64 = 0.02;
/// A test that ends the search with at least this probability is said to do so.
const ENDS: f64 = 0.5;

impl Reasoned<'_> {
    /// The search as it stands, worked out once.
    pub(crate) fn outlook(&self) -> &Outlook {
        self.outlook.get_or_init(|| Outlook::new(self))
    }

    /// Whether a test that is left can still change what to do.
    pub(crate) fn can_change(&self) -> bool {
        self.outlook().can_change(|_| true)
    }

    /// The next test of the textbook's order. `skipping`: those that can no longer change anything are left out.
    pub(super) fn textbook(&self, skipping: bool) -> Option<Choice> {
        let model = &self.model;
        let specs = Catalogue::standard().tests_for(model.layout.circuit, model.situation);
        let ready = ready(self, &specs);
        let order = data().textbook(model.layout.circuit, &specs);
        let mut open = order.iter().filter(|id| !self.is_asked(id));
        let id = if skipping {
            open.find(|id| self.outlook().bits(id) >= CHANGES_NOTHING)
        } else {
            open.next()
        }?;
        let spec = specs.iter().find(|s| s.id == *id)?;
        let minutes = self.outlook().minutes(ready, spec);
        let why = Message::new("why-textbook")
            .with("test", Arg::Test(id.clone()))
            .with("minutes", Arg::Minutes(minutes));
        Some(Choice {
            id: id.clone(),
            why,
            minutes,
            to_finding: None,
        })
    }

    /// The test with which the finding is nearest; none if no test is worth doing.
    pub(super) fn best(&self) -> Option<Choice> {
        let standing = self.standing();
        if let Some(test) = &standing.to_prove {
            let proof = self.proof(test, "why-proves", 0.0)?;
            return Some(Choice {
                to_finding: Some(proof.minutes),
                ..proof
            });
        }
        let outlook = self.outlook();
        let planned = outlook.choice()?;
        let spec: &TestSpec = outlook.specs.get(planned.test)?;
        let minutes = outlook.minutes(outlook.problem().ready, spec);
        Some(Choice {
            id: spec.id.clone(),
            why: self.why(&spec.id, planned, minutes),
            minutes,
            to_finding: Some(planned.minutes),
        })
    }

    /// Minutes of doing once more what was done.
    pub(crate) fn minutes_again(&self, test: &TestId) -> f64 {
        let specs = Catalogue::standard().tests_for(self.model.layout.circuit, self.model.situation);
        let spec = specs.iter().find(|s| s.id == *test);
        spec.map_or(0.0, |spec| self.outlook().minutes(ready(self, &specs), spec))
    }

    /// The bad tester is put right and proved, whatever the policy.
    pub(super) fn mended(&self) -> Option<Choice> {
        let test = self.standing().to_mend.as_ref()?;
        self.proof(test, "why-mends", data().mend_tester_minutes)
    }

    /// The test that proves the tester, and what has to be done to it before.
    fn proof(&self, test: &TestId, why: &'static str, before: f64) -> Option<Choice> {
        let model = &self.model;
        let specs = Catalogue::standard().tests_for(model.layout.circuit, model.situation);
        let spec = specs.iter().find(|s| s.id == *test)?;
        let minutes = before + self.outlook().minutes(ready(self, &specs), spec);
        let why = Message::new(why)
            .with("test", Arg::Test(test.clone()))
            .with("minutes", Arg::Minutes(minutes));
        Some(Choice {
            id: test.clone(),
            why,
            minutes,
            to_finding: None,
        })
    }

    fn why(&self, test: &TestId, planned: &Planned, minutes: f64) -> Message {
        let suspects = self.remedies().iter().filter(|(_, p)| *p >= SUSPECT).count();
        let message = |id: &'static str| {
            Message::new(id)
                .with("test", Arg::Test(test.clone()))
                .with("minutes", Arg::Minutes(minutes))
                .with("count", Arg::Count(i64::try_from(suspects).unwrap_or(i64::MAX)))
        };
        if self.is_asked(test) {
            message("why-again").with("finding", Arg::Minutes(planned.minutes))
        } else if planned.ends >= ENDS {
            message("why-ends").with("chance", Arg::Percent(planned.ends))
        } else {
            let share = planned.bits / self.outlook().open_bits();
            message("why-settles")
                .with("share", Arg::Percent(share.clamp(0.0, 1.0)))
                .with("finding", Arg::Minutes(planned.minutes))
        }
    }
}
