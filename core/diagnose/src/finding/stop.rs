//! When it is enough: one thing to do is sure, or nothing that can be tested would change what to do.

use super::cause::TESTER_IN_DOUBT;
use super::{Doubt, Reasoned, Remedy};
use crate::inference::{Case, Evaluated, Way};
use crate::{Catalogue, Complaint, ComponentId, TestId};

/// How things stand.
pub(crate) struct Standing {
    /// The stop rule is met.
    pub decided: bool,
    /// No test that is left can change what to do.
    pub exhausted: bool,
    /// What the first cause asks one to do, and how sure that is.
    pub remedy: Remedy,
    pub sure: f64,
    /// The first cause lies outside the circuit.
    pub outside: bool,
    pub parts: Vec<ComponentId>,
    pub explains: Option<bool>,
    /// Parts that can't be told apart.
    pub inseparable: Vec<ComponentId>,
    /// All that is missing is a test that proves the tester: which.
    pub to_prove: Option<TestId>,
    /// The tester was found bad: the test that proves it once it was put right.
    pub to_mend: Option<TestId>,
    /// The reading to look at again before anything else.
    pub doubt: Option<Doubt>,
}

/// Probability from which a complaint counts as explained by a cause.
const EXPLAINED: f64 = 0.5;
/// The same before that ends the search while something can still be tested.
pub(crate) const SURELY_EXPLAINED: f64 = 0.65;
/// What the tester alone could be behind with at least this probability is no finding before the tester is proved.
const TESTER_ALONE: f64 = 5e-4;
impl Reasoned<'_> {
    /// How things stand.
    pub(crate) fn standing(&self) -> &Standing {
        self.standing.get_or_init(|| self.stand())
    }

    fn stand(&self) -> Standing {
        let remedies = self.remedies();
        let confidence = self.model.situation.confidence;
        let (remedy, sure) = remedies.first().cloned().unwrap_or((Remedy::Nothing, 0.0));
        let parts = parts_of(remedies.iter().filter(|(r, p)| *r == remedy || *p >= confidence));
        let first = self
            .posterior
            .causes
            .iter()
            .find(|c| self.remedies_of(c).contains(&remedy));
        let explained = first.and_then(|c| self.explained_by(c, &remedy, &parts));
        let enough = sure >= confidence && remedy != Remedy::Tester;
        // A part that may not explain the complaint is not the end while something can still be tested; a sound circuit
        // explains nothing by itself.
        let explains = remedy == Remedy::Nothing || explained.is_none_or(|share| share >= SURELY_EXPLAINED);
        let blames = enough && explains && remedy != Remedy::Nothing;
        let to_prove = if blames || remedy == Remedy::Tester {
            self.to_prove()
        } else {
            None
        };
        let to_mend = self.to_mend_tester();
        let proved = to_prove.is_none() && to_mend.is_none();
        let met = enough && explains && proved;
        let exhausted = !met && proved && !self.can_change();
        let doubt = self.doubt(&remedy, sure, met || exhausted);
        let settled = doubt.is_none();
        let ids = |parts: Vec<usize>| parts.into_iter().map(|n| self.id(n)).collect();
        Standing {
            outside: first.is_some_and(|c| c.faults.iter().any(|f| self.model.faults[*f].is_outside())),
            decided: settled && (met || (enough && exhausted)),
            inseparable: if settled && exhausted && !enough {
                ids(parts_of(likeliest(remedies, confidence).iter()))
            } else {
                Vec::new()
            },
            parts: ids(parts),
            exhausted,
            to_prove: to_prove.filter(|_| settled),
            to_mend: to_mend.filter(|_| settled),
            doubt,
            remedy,
            sure,
            explains: explained.map(|share| share >= EXPLAINED),
        }
    }

    /// The test that proves a tester which by itself could be behind everything that was read; none where that was done, or
    /// can't be.
    fn to_prove(&self) -> Option<TestId> {
        let alone = |cause: &&Evaluated| match *cause.faults.as_slice() {
            [fault] => cause.p >= TESTER_ALONE && self.model.faults[fault].is_bad_tester(),
            _ => false,
        };
        let offered = Catalogue::standard().tests_for(self.model.layout.circuit, self.model.situation);
        self.posterior.causes.iter().filter(alone).find_map(|cause| {
            let kind = self.model.faults[*cause.faults.first()?].retest?;
            let test = TestId::of(kind);
            let open = offered.iter().any(|spec| spec.id == test) && !self.is_asked(&test);
            open.then_some(test)
        })
    }

    /// The test that proves a tester anew which was found bad: it is put right before more is read with it, and nothing is
    /// decided before. None where nobody can, or it was tried.
    fn to_mend_tester(&self) -> Option<TestId> {
        let is_bad = |fault: &usize| {
            let with = self.posterior.causes.iter().filter(|c| c.faults.contains(fault));
            with.map(|c| c.p).sum::<f64>() >= TESTER_IN_DOUBT
        };
        let offered = || Catalogue::standard().tests_for(self.model.layout.circuit, self.model.situation);
        let bad = self.to_mend.iter().find(|(fault, _)| is_bad(fault))?;
        offered()
            .iter()
            .any(|spec| spec.id == bad.1)
            .then(|| bad.1.clone())
    }

    fn id(&self, number: usize) -> ComponentId {
        self.model.layout.circuit.components[number].id.clone()
    }

    /// Probability that the faults of a cause that lie in these parts explain what is complained of, the others left
    /// aside.
    fn explained_by(&self, cause: &Evaluated, remedy: &Remedy, parts: &[usize]) -> Option<f64> {
        let complained = self
            .model
            .situation
            .complaint
            .iter()
            .any(|c| *c != Complaint::None);
        complained.then(|| {
            let counts = |fault: usize| {
                let part = self.model.faults[fault].part;
                *remedy == Remedy::Nothing || part.is_some_and(|p| parts.contains(&p))
            };
            let of_way = |way: &Way| {
                let faults: Vec<(usize, f64)> = cause
                    .faults
                    .iter()
                    .copied()
                    .zip(way.at_work)
                    .filter(|(f, _)| counts(*f))
                    .collect();
                let world = self.model.world(&faults);
                let case = Case::new(&world, way.setting);
                let told = self.model.told(&world.faults);
                way.weight
                    * self
                        .model
                        .explained(case.behaviour(&self.model), &told, way.setting.softens)
            };
            cause.ways.iter().map(of_way).sum()
        })
    }
}

/// The likeliest remedies, as many as are together as sure as a finding has to be, and a part among them.
fn likeliest(remedies: &[(Remedy, f64)], confidence: f64) -> &[(Remedy, f64)] {
    let (mut sum, mut parts) = (0.0, 0);
    let enough = remedies.iter().position(|(remedy, p)| {
        sum += p;
        parts += usize::from(matches!(remedy, Remedy::Parts(_)));
        sum >= confidence && parts > 0
    });
    remedies
        .get(..=enough.unwrap_or(remedies.len()))
        .unwrap_or(remedies)
}

/// The parts of some remedies, each once, in the order of the remedies.
fn parts_of<'r>(remedies: impl Iterator<Item = &'r (Remedy, f64)>) -> Vec<usize> {
    let mut parts = Vec::new();
    for (remedy, _) in remedies {
        if let Remedy::Parts(of_remedy) = remedy {
            for part in of_remedy {
                if !parts.contains(part) {
                    parts.push(*part);
                }
            }
        }
    }
    parts
}
