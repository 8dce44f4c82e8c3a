//! What the tests with the engine running, and the complaint, say of a cause's vacuum side, its leaks at work summed over.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::by_meter::Work;
use super::causes::{Fault, Size};
use super::condition::Setting;
use super::model::{Case, Model, World};
use super::observation::Observation;
use super::predict::{Depends, depends, depends_on_softening};
use super::sizes;
use super::vacuum::AtMounts;
use crate::EngineState;
use crate::faults::Effect;

/// Differences of ln likelihood smaller than this make none.
const SAME_LN: f64 = 0.01;

/// Likelihoods of everything seen at work for each way it can be, over that of the first way of a sound circuit.
pub(super) struct AtWork {
    /// By what the electric side does, whether vacuum softens the mounts, and the faults' sizes at work.
    likelihoods: Vec<f64>,
    works: [usize; 2],
}

impl AtWork {
    fn new(number: usize, works: [usize; 2]) -> Self {
        Self {
            likelihoods: vec![0.0; 2 * number * works[0] * works[1]],
            works,
        }
    }

    fn at(&self, work: usize, softens: usize, size: usize) -> usize {
        (2 * work + softens) * self.works[0] * self.works[1] + size
    }

    fn put(&mut self, work: usize, size: usize, likelihoods: [f64; 2]) {
        for (softens, likelihood) in likelihoods.into_iter().enumerate() {
            let at = self.at(work, softens, size);
            self.likelihoods[at] = likelihood;
        }
    }

    fn get(&self, work: usize, size: usize) -> [f64; 2] {
        [0, 1].map(|softens| self.likelihoods[self.at(work, softens, size)])
    }

    /// The likelihoods for all sizes of one thing that the electric side does.
    pub fn of(&self, work: usize, softens: bool) -> &[f64] {
        let sizes = self.works[0] * self.works[1];
        let first = self.at(work, usize::from(softens), 0);
        self.likelihoods.get(first..first + sizes).unwrap_or_default()
    }
}

/// Everything seen at work in a job.
pub(super) struct Works<'m> {
    model: &'m Model<'m>,
    /// What vacuum does to the mounts makes no difference to these, and to those it does.
    seen: [Vec<&'m Observation>; 2],
    works: Vec<Work>,
    /// So many of them a circuit with sound electrics can do; they come first.
    of_sound: usize,
    sizes: Vec<f64>,
    scale_ln: f64,
    sound: Vec<Outcome>,
    singles: RefCell<BTreeMap<usize, Rc<Single>>>,
    known: RefCell<BTreeMap<[usize; 2], Rc<AtWork>>>,
    /// The first fault of each place, and each fault's by itself.
    stand_ins: RefCell<BTreeMap<Place, usize>>,
    alone: Vec<usize>,
    /// Which faults hide places.
    hides: Vec<bool>,
}

/// What the mounts get at idle and in gear, and the ln likelihoods of everything seen at work, where vacuum stiffens and
/// where it softens the mounts.
struct Outcome {
    at_mounts: [Rc<AtMounts>; 2],
    ln: [f64; 2],
}

/// One fault of the vacuum side.
struct Single {
    at_work: Rc<AtWork>,
    /// Where it makes no difference at work: by what the electric side does, and size.
    neutral: Vec<bool>,
}

/// What a fault does at work, and where: faults of the same place can't be told apart there.
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Place {
    /// A leak.
    Leak {
        /// What kinds of leak they are.
        kinds: Vec<u8>,
        /// Behind each valve, and before it.
        at: Vec<(bool, bool)>,
        /// Some test at work is about this part.
        tested: Option<usize>,
        /// The fault beside it that hides some places.
        beside: Option<usize>,
    },
    /// Anything else that a part does and shows, as its data say it.
    Other(Option<usize>, String),
}

impl<'m> Works<'m> {
    pub fn new(model: &'m Model<'m>, seen: &'m [Observation], works: Vec<Work>, of_sound: usize) -> Self {
        let at_work = |o: &&Observation| depends(&o.seen, o.test.kind) == Depends::Work;
        let (softening, others) = seen.iter().filter(at_work).partition(|o| depends_on_softening(o));
        let mut all = Self {
            model,
            seen: [others, softening],
            works,
            of_sound,
            sizes: sizes::at_work(),
            scale_ln: 0.0,
            sound: Vec::new(),
            singles: RefCell::default(),
            known: RefCell::default(),
            stand_ins: RefCell::default(),
            alone: Vec::new(),
            hides: model.faults.iter().map(Fault::hides_what_is_behind).collect(),
        };
        all.alone = (0..model.faults.len())
            .map(|fault| all.first_of(all.place(fault), fault))
            .collect();
        all.sound = (0..all.works.len()).map(|work| all.outcome(work, &[])).collect();
        all.scale_ln = all.sound.first().map_or(0.0, |o| o.ln[0]);
        all
    }

    /// How many sizes at work a fault has.
    fn count(&self, fault: usize) -> usize {
        match self.model.faults[fault].size() {
            Size::Leak(_) => self.sizes.len(),
            Size::Fixed | Size::Resistance(_) => 1,
        }
    }

    /// What was seen at work, of up to two faults of the vacuum side. Two are given for sound electrics only.
    pub fn of(&self, faults: &[usize]) -> Rc<AtWork> {
        match *faults {
            [] => self.of_none(),
            [fault] => Rc::clone(&self.single(fault).at_work),
            [a, b, ..] => self.pair(a, b),
        }
    }

    fn of_none(&self) -> Rc<AtWork> {
        let likelihoods = self.sound.iter().flat_map(|o| o.ln).map(|ln| self.scaled(ln));
        Rc::new(AtWork {
            likelihoods: likelihoods.collect(),
            works: [1, 1],
        })
    }

    fn scaled(&self, ln: f64) -> f64 {
        (ln - self.scale_ln).exp()
    }

    fn single(&self, fault: usize) -> Rc<Single> {
        let fault = self.stand_in(fault, None);
        if let Some(known) = self.singles.borrow().get(&fault) {
            return Rc::clone(known);
        }
        let works = [self.count(fault), 1];
        let mut at_work = AtWork::new(self.works.len(), works);
        let mut neutral = Vec::with_capacity(self.works.len() * works[0]);
        let felt = !self.model.faults[fault].symptoms.is_empty();
        for (work, sound) in self.sound.iter().enumerate() {
            for at in 0..works[0] {
                let outcome = self.outcome(work, &[(fault, self.size(fault, at))]);
                neutral.push(!felt && outcome.is_like(sound, self.model.source.0.max(1.0)));
                at_work.put(work, at, outcome.ln.map(|ln| self.scaled(ln)));
            }
        }
        let single = Rc::new(Single {
            at_work: Rc::new(at_work),
            neutral,
        });
        self.singles.borrow_mut().insert(fault, Rc::clone(&single));
        single
    }

    fn pair(&self, a: usize, b: usize) -> Rc<AtWork> {
        let stands = [self.stand_in(a, Some(b)), self.stand_in(b, Some(a))];
        if let Some(known) = self.known.borrow().get(&stands) {
            return Rc::clone(known);
        }
        let singles = stands.map(|f| self.single(f));
        let works = stands.map(|f| self.count(f));
        let mut at_work = AtWork::new(self.of_sound, works);
        for work in 0..self.of_sound {
            for first in 0..works[0] {
                for second in 0..works[1] {
                    let both = if singles[0].neutral[work * works[0] + first] {
                        singles[1].at_work.get(work, second)
                    } else if singles[1].neutral[work * works[1] + second] {
                        singles[0].at_work.get(work, first)
                    } else {
                        let sized = [
                            (stands[0], self.size(stands[0], first)),
                            (stands[1], self.size(stands[1], second)),
                        ];
                        self.ln_of(work, &self.world(work, &sized))
                            .map(|ln| self.scaled(ln))
                    };
                    at_work.put(work, first * works[1] + second, both);
                }
            }
        }
        let at_work = Rc::new(at_work);
        self.known.borrow_mut().insert(stands, Rc::clone(&at_work));
        at_work
    }

    /// The sizes at work of up to two faults, by their numbers.
    pub fn sizes_of(&self, faults: &[usize], at: [usize; 2]) -> [f64; 2] {
        let mut sizes = [0.0; 2];
        for ((size, fault), at) in sizes.iter_mut().zip(faults).zip(at) {
            *size = self.size(*fault, at);
        }
        sizes
    }

    fn size(&self, fault: usize, at: usize) -> f64 {
        match self.model.faults[fault].size() {
            Size::Leak(_) => self.sizes[at],
            Size::Fixed | Size::Resistance(_) => 0.0,
        }
    }

    fn world(&self, work: usize, vacuum: &[(usize, f64)]) -> World {
        let mut faults = vacuum.to_vec();
        faults.extend(&self.works[work].faults);
        self.model.world(&faults)
    }

    fn outcome(&self, work: usize, vacuum: &[(usize, f64)]) -> Outcome {
        let world = self.world(work, vacuum);
        let pulls = &self.works[work].pulls;
        Outcome {
            ln: self.ln_of(work, &world),
            at_mounts: [EngineState::Idle, EngineState::InGear]
                .map(|engine| self.model.at_mounts(&world, pulls.of(engine))),
        }
    }

    /// ln likelihood of everything seen at work, where vacuum stiffens and where it softens the mounts.
    fn ln_of(&self, work: usize, world: &World) -> [f64; 2] {
        let work = &self.works[work];
        let case = |softens: bool| {
            let setting = Setting {
                softens,
                ..work.setting
            };
            Case::pulled(world, setting, &work.pulls)
        };
        let ln = |seen: &[&Observation], case: &Case<'_>| -> f64 {
            seen.iter().map(|o| self.model.likelihood(o, case).ln()).sum()
        };
        let cases = [false, true].map(case);
        let [others, softening] = &self.seen;
        let same = ln(others, &cases[0]);
        [0, 1].map(|at| same + ln(softening, &cases[at]))
    }

    /// The first fault that does the same at work, beside another.
    fn stand_in(&self, fault: usize, beside: Option<usize>) -> usize {
        match beside.filter(|f| self.hides[*f] && self.is_leak(fault)) {
            Some(beside) => self.first_of(self.place_of_leak(fault, Some(beside)), fault),
            None => self.alone[fault],
        }
    }

    fn first_of(&self, place: Place, fault: usize) -> usize {
        *self.stand_ins.borrow_mut().entry(place).or_insert(fault)
    }

    fn place(&self, fault: usize) -> Place {
        let of = &self.model.faults[fault];
        if self.is_leak(fault) {
            self.place_of_leak(fault, None)
        } else {
            Place::Other(of.part, format!("{:?}{:?}", of.effects, of.symptoms))
        }
    }

    /// Whether a fault is a leak and nothing else.
    fn is_leak(&self, fault: usize) -> bool {
        let of = &self.model.faults[fault];
        of.symptoms.is_empty() && !of.effects.is_empty() && of.effects.iter().all(Effect::is_leak)
    }

    fn place_of_leak(&self, fault: usize, beside: Option<usize>) -> Place {
        let of = &self.model.faults[fault];
        let others: Vec<(usize, f64)> = beside.map(|f| (f, 0.0)).into_iter().collect();
        let mut with = others.clone();
        with.push((fault, 1.0));
        let leaks = |faults: &[(usize, f64)]| self.model.leaks_at_work(&self.model.world(faults));
        let at = leaks(&with)
            .into_iter()
            .zip(leaks(&others))
            .map(|(with, without)| (with.0 > without.0 + 0.5, with.1 > without.1 + 0.5));
        let tested =
            |o: &&Observation| o.test.part.as_ref().and_then(|id| self.model.layout.number(id)) == of.part;
        Place::Leak {
            kinds: of.effects.iter().map(Effect::kind_of_leak).collect(),
            at: at.collect(),
            tested: of.part.filter(|_| self.seen.iter().flatten().any(tested)),
            beside,
        }
    }
}

impl Outcome {
    fn is_like(&self, other: &Self, full: f64) -> bool {
        let near = |(a, b): (&f64, &f64)| (a - b).abs() < SAME_LN;
        let same = |(a, b): (&Rc<AtMounts>, &Rc<AtMounts>)| a.is_like(b, full);
        self.ln.iter().zip(&other.ln).all(near) && self.at_mounts.iter().zip(&other.at_mounts).all(same)
    }
}
