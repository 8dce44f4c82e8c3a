//! What the tests with the engine running, and the complaint, say of a cause's vacuum side, its leaks at work summed over.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::by_meter::Work;
use super::causes::Size;
use super::condition::Setting;
use super::model::{Case, Model};
use super::observation::Observation;
use super::predict::{Depends, depends};
use super::sizes;
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
    /// The likelihoods for all sizes of one thing that the electric side does.
    pub fn of(&self, work: usize, softens: bool) -> &[f64] {
        let sizes = self.works[0] * self.works[1];
        let row = 2 * work + usize::from(softens);
        self.likelihoods
            .get(row * sizes..(row + 1) * sizes)
            .unwrap_or_default()
    }
}

/// Everything seen at work in a job.
pub(super) struct Works<'m> {
    model: &'m Model<'m>,
    seen: Vec<&'m Observation>,
    works: Vec<Work>,
    /// So many of them a circuit with sound electrics can do; they come first.
    of_sound: usize,
    sizes: Vec<f64>,
    scale_ln: f64,
    sound: Vec<(Vec<Rc<super::vacuum::AtMounts>>, f64)>,
    singles: RefCell<BTreeMap<usize, Rc<Single>>>,
    known: RefCell<BTreeMap<[usize; 2], Rc<AtWork>>>,
    stand_ins: RefCell<BTreeMap<(Place, Option<usize>), usize>>,
}

/// One fault of the vacuum side.
struct Single {
    at_work: Rc<AtWork>,
    /// Where it makes no difference at work: by row and size, as the likelihoods.
    neutral: Vec<bool>,
}

/// Where a leak lets air in at work: leaks of the same place can't be told apart there.
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Place {
    /// What kinds of leak they are.
    kinds: Vec<u8>,
    /// Behind each valve, and before it.
    at: Vec<(bool, bool)>,
    /// Some test at work is about this part.
    tested: Option<usize>,
}

impl<'m> Works<'m> {
    pub fn new(model: &'m Model<'m>, seen: &'m [Observation], works: Vec<Work>, of_sound: usize) -> Self {
        let mut all = Self {
            model,
            seen: seen
                .iter()
                .filter(|o| depends(&o.seen, o.test.kind) == Depends::Work)
                .collect(),
            works,
            of_sound,
            sizes: sizes::at_work(),
            scale_ln: 0.0,
            sound: Vec::new(),
            singles: RefCell::default(),
            known: RefCell::default(),
            stand_ins: RefCell::default(),
        };
        let rows = (0..2 * all.works.len()).map(|row| all.work_out(row, &[]));
        all.sound = rows.collect();
        all.scale_ln = all.sound.first().map_or(0.0, |(_, ln)| *ln);
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
        let likelihoods = self.sound.iter().map(|(_, ln)| (ln - self.scale_ln).exp());
        Rc::new(AtWork {
            likelihoods: likelihoods.collect(),
            works: [1, 1],
        })
    }

    fn single(&self, fault: usize) -> Rc<Single> {
        let fault = self.stand_in(fault, None);
        if let Some(known) = self.singles.borrow().get(&fault) {
            return Rc::clone(known);
        }
        let count = self.count(fault);
        let mut likelihoods = Vec::with_capacity(2 * self.works.len() * count);
        let mut neutral = Vec::with_capacity(likelihoods.capacity());
        let felt = !self.model.faults[fault].symptoms.is_empty();
        for (row, (sound, sound_ln)) in self.sound.iter().enumerate() {
            for at in 0..count {
                let (at_mounts, ln) = self.work_out(row, &[(fault, self.size(fault, at))]);
                let like = sound
                    .iter()
                    .zip(&at_mounts)
                    .all(|(a, b)| a.is_like(b, self.model.source.0.max(1.0)));
                neutral.push(!felt && like && (ln - sound_ln).abs() < SAME_LN);
                likelihoods.push((ln - self.scale_ln).exp());
            }
        }
        let at_work = Rc::new(AtWork {
            likelihoods,
            works: [count, 1],
        });
        let single = Rc::new(Single { at_work, neutral });
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
        let rows = 2 * self.of_sound;
        let mut likelihoods = Vec::with_capacity(rows * works[0] * works[1]);
        for row in 0..rows {
            for first in 0..works[0] {
                for second in 0..works[1] {
                    let at = [row * works[0] + first, row * works[1] + second];
                    likelihoods.push(if singles[0].neutral[at[0]] {
                        singles[1].at_work.likelihoods[at[1]]
                    } else if singles[1].neutral[at[1]] {
                        singles[0].at_work.likelihoods[at[0]]
                    } else {
                        let sized = [
                            (stands[0], self.size(stands[0], first)),
                            (stands[1], self.size(stands[1], second)),
                        ];
                        (self.work_out(row, &sized).1 - self.scale_ln).exp()
                    });
                }
            }
        }
        let at_work = Rc::new(AtWork { likelihoods, works });
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

    /// What the mounts get, and the ln likelihood of everything seen at work.
    fn work_out(&self, row: usize, vacuum: &[(usize, f64)]) -> (Vec<Rc<super::vacuum::AtMounts>>, f64) {
        let work = &self.works[row / 2];
        let mut faults = vacuum.to_vec();
        faults.extend(&work.faults);
        let world = self.model.world(&faults);
        let setting = Setting {
            softens: row % 2 == 1,
            ..work.setting
        };
        let case = Case::new(&world, setting);
        let ln = self
            .seen
            .iter()
            .map(|o| self.model.likelihood(o, &case).ln())
            .sum();
        let at_mounts = [EngineState::Idle, EngineState::InGear]
            .map(|engine| self.model.at_mounts(&world, setting, engine));
        (at_mounts.into(), ln)
    }

    /// The first fault that does the same at work, beside another.
    fn stand_in(&self, fault: usize, beside: Option<usize>) -> usize {
        let of = &self.model.faults[fault];
        if !of.symptoms.is_empty() || of.effects.is_empty() || !of.effects.iter().all(Effect::is_leak) {
            return fault;
        }
        let shapes = |f: &usize| {
            let effects = self.model.faults[*f].effects;
            effects
                .iter()
                .any(|e| matches!(e, Effect::Blocks | Effect::Misrouted))
        };
        let beside = beside.filter(shapes);
        let others: Vec<(usize, f64)> = beside.map(|f| (f, 0.0)).into_iter().collect();
        let mut with = others.clone();
        with.push((fault, 1.0));
        let leaks = |faults: &[(usize, f64)]| self.model.leaks_at_work(&self.model.world(faults));
        let at = leaks(&with)
            .into_iter()
            .zip(leaks(&others))
            .map(|(with, without)| (with.0 > without.0 + 0.5, with.1 > without.1 + 0.5));
        let tested = |o: &&Observation| {
            o.test.part.as_ref().and_then(|id| self.model.layout.number(id)) == of.part
        };
        let place = Place {
            kinds: of.effects.iter().map(Effect::kind_of_leak).collect(),
            at: at.collect(),
            tested: of.part.filter(|_| self.seen.iter().any(tested)),
        };
        *self.stand_ins.borrow_mut().entry((place, beside)).or_insert(fault)
    }
}
