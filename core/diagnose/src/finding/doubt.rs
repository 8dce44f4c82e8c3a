//! Which reading to look at again before anything is built on it.

use super::{Reasoned, Remedy};
use crate::TestId;
use crate::inference::{Evaluated, Observation, Posterior, Seen, weigh, weigh_unless};
use crate::plan::plan_data;

/// A reading that may be a slip.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Doubt {
    /// The test it is of.
    pub test: TestId,
    /// Probability that it is one.
    pub slip: f64,
    /// It is not odd; what is about to be said leans on it.
    pub leans: bool,
    /// Minutes of looking again.
    pub minutes: f64,
}

/// The last reading is looked at again at once from this probability of a slip on: nothing is taken down yet.
const DOUBTFUL: f64 = 0.1;

/// What the readings say if one of them is looked at again and kept.
struct Kept {
    /// Probability that the reading is a slip.
    slip: f64,
    /// Probability that what is to be done stays right.
    sure: f64,
}

impl Reasoned<'_> {
    /// The reading to look at again: the last one if it is odd beside the others; before an end (`ending`) the one where
    /// looking again is worth most.
    pub(super) fn doubt(&self, remedy: &Remedy, sure: f64, ending: bool) -> Option<Doubt> {
        let open = |number: &usize| {
            let (of, later) = (&self.observations[*number], &self.observations[number + 1..]);
            let done_again = || {
                later
                    .iter()
                    .any(|o| o.seen != Seen::Complaint && o.test == of.test)
            };
            !of.looked_again && of.seen != Seen::Complaint && !done_again()
        };
        let numbers = || (0..self.observations.len()).filter(open);
        let last = self
            .observations
            .iter()
            .rposition(|o| o.seen != Seen::Complaint)?;
        if open(&last)
            && let Some(kept) = self.kept_if(last, remedy, DOUBTFUL)
        {
            return Some(self.doubt_of(last, &kept, plan_data().look_again.at_once_minutes));
        }
        if !ending {
            return None;
        }
        let worth = |number: usize| {
            let kept = self.kept(number, remedy);
            let minutes = if number == last {
                plan_data().look_again.at_once_minutes
            } else {
                self.minutes_again(&self.observations[number].test)
            };
            (
                self.gain(sure, &kept) - minutes,
                self.doubt_of(number, &kept, minutes),
            )
        };
        numbers()
            .map(worth)
            .filter(|(worth, _)| *worth > 0.0)
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(_, doubt)| doubt)
    }

    fn doubt_of(&self, number: usize, kept: &Kept, minutes: f64) -> Doubt {
        Doubt {
            test: self.observations[number].test.clone(),
            slip: kept.slip,
            leans: kept.slip < DOUBTFUL,
            minutes,
        }
    }

    /// Minutes saved by looking again before an end, that itself not counted.
    fn gain(&self, sure: f64, kept: &Kept) -> f64 {
        let found = kept.slip * (1.0 - self.model.data.slips.kept.value);
        let wrong_now = 1.0 - sure;
        let wrong_then = (1.0 - found) * (1.0 - kept.sure);
        plan_data().wrong_repair_minutes * (wrong_now - wrong_then)
            - found * plan_data().look_again.astray_minutes
    }

    fn kept(&self, number: usize, remedy: &Remedy) -> Kept {
        let then = weigh(&self.model, self.memory, &self.if_kept(number), &self.posterior);
        self.kept_as(&then, remedy)
    }

    /// The same where the reading is a slip with at least this probability. Mostly it is not, and the likeliest causes
    /// alone show that.
    fn kept_if(&self, number: usize, remedy: &Remedy, slip: f64) -> Option<Kept> {
        let found = slip * (1.0 - self.model.data.slips.kept.value);
        let ln_no_slip = self.posterior.ln_evidence + (1.0 - found).ln();
        let seen = self.if_kept(number);
        let then = weigh_unless(&self.model, self.memory, &seen, &self.posterior, ln_no_slip)?;
        Some(self.kept_as(&then, remedy)).filter(|kept| kept.slip >= slip)
    }

    /// What is seen if one reading is looked at again and kept.
    fn if_kept(&self, number: usize) -> Vec<Observation> {
        let mut seen = self.observations.clone();
        seen[number] = self.model.looked_again(seen[number].clone());
        seen
    }

    fn kept_as(&self, then: &Posterior, remedy: &Remedy) -> Kept {
        // Looking again finds all but a share of slips: by so much less likely is what was seen.
        let less = 1.0 - (then.ln_evidence - self.posterior.ln_evidence).exp();
        let asks_for = |cause: &&Evaluated| self.remedies_of(cause).contains(remedy);
        Kept {
            slip: (less / (1.0 - self.model.data.slips.kept.value)).clamp(0.0, 1.0),
            sure: then.causes.iter().filter(asks_for).map(|c| c.p).sum(),
        }
    }
}
