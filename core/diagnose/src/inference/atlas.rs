//! Everything that a circuit can do at work under any cause, worked out once: readings change what is likely, not this.
//!
//! A cause's vacuum side and its electric side meet only in what the electric side does to the valves (a [`Work`]). So each
//! side is worked out by itself, and alike behaviours are one.

use std::collections::{BTreeMap, HashMap};

use super::by_meter::Electrics;
use super::complaint::Told;
use super::hypotheses::{Hypothesis, hypotheses};
use super::model::Model;
use super::sizes;
use super::vacuum::{Behaviour, Pulls};
use crate::faults::Effect;

/// What a vacuum side shows at work: the numbers of its behaviours by what the electric side does and its sizes at work.
#[derive(Debug)]
pub(super) struct Shows {
    /// How many sizes at work its first and second fault have.
    pub sizes: [usize; 2],
    /// By work, the first fault's size, the second fault's size.
    behaviours: Vec<u32>,
}

impl Shows {
    /// The behaviours for one thing that the electric side does, the second fault's size inside.
    pub fn of(&self, work: usize) -> &[u32] {
        let number = self.sizes[0] * self.sizes[1];
        self.behaviours
            .get(work * number..(work + 1) * number)
            .unwrap_or_default()
    }
}

/// A cause, and where it stands in the atlas.
#[derive(Debug)]
pub(super) struct Entry {
    pub hypothesis: Hypothesis,
    /// Its electric side, by number.
    pub electric: usize,
    /// Its other faults, in their order.
    pub vacuum: Vec<usize>,
    /// What its vacuum side shows, by number.
    pub shows: usize,
    /// What is told of its faults by themselves, by number.
    pub told: usize,
}

/// Everything that a circuit can do at work.
pub(super) struct Atlas {
    pub entries: Vec<Entry>,
    pub electrics: Electrics,
    pub behaviours: Vec<Behaviour>,
    pub shows: Vec<Shows>,
    pub tolds: Vec<Told>,
    /// Sizes of leaks at work, std cm³/min.
    pub sizes: Vec<f64>,
}

impl Atlas {
    pub fn new(model: &Model<'_>) -> Self {
        let electrics = Electrics::new(model);
        let mut drawing = Drawing::new(model, &electrics);
        let mut tolds = Tolds::new(model);
        let entry = |hypothesis: Hypothesis| {
            let faults = hypothesis.faults();
            let (electric, vacuum): (Vec<usize>, Vec<usize>) =
                faults.iter().partition(|f| model.faults[**f].is_electric());
            Some(Entry {
                electric: electrics.number(&electric)?,
                shows: drawing.shows(&vacuum),
                told: tolds.number(faults),
                vacuum,
                hypothesis,
            })
        };
        let entries = hypotheses(model).into_iter().filter_map(entry).collect();
        Self {
            entries,
            behaviours: drawing.behaviours,
            shows: drawing.shows,
            sizes: drawing.sizes,
            tolds: tolds.tolds,
            electrics,
        }
    }
}

/// What is told of each cause's faults, alike ones as one.
struct Tolds<'m> {
    model: &'m Model<'m>,
    tolds: Vec<Told>,
    /// The number of each fault's.
    of_fault: Vec<usize>,
    of_pair: BTreeMap<(usize, usize), usize>,
}

impl<'m> Tolds<'m> {
    fn new(model: &'m Model<'m>) -> Self {
        let mut tolds = vec![model.told(&[])];
        let of_fault = (0..model.faults.len())
            .map(|fault| put(&mut tolds, model.told(&[fault])))
            .collect();
        Self {
            model,
            tolds,
            of_fault,
            of_pair: BTreeMap::new(),
        }
    }

    fn number(&mut self, faults: &[usize]) -> usize {
        match *faults {
            [] => 0,
            [fault] => self.of_fault[fault],
            [a, b, ..] => {
                let (x, y) = (self.of_fault[a], self.of_fault[b]);
                if x == 0 || y == 0 {
                    return x + y;
                }
                let (model, tolds) = (self.model, &mut self.tolds);
                *self
                    .of_pair
                    .entry((x.min(y), x.max(y)))
                    .or_insert_with(|| put(tolds, model.told(faults)))
            }
        }
    }
}

fn put(tolds: &mut Vec<Told>, told: Told) -> usize {
    tolds.iter().position(|t| *t == told).unwrap_or_else(|| {
        tolds.push(told);
        tolds.len() - 1
    })
}

/// What a fault does at work, and where: faults of the same place can't be told apart there.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Place {
    /// Nothing that shows at work.
    Nowhere,
    /// A leak: behind each valve, and before it.
    Leak(Vec<(bool, bool)>),
    /// Anything else that a part does, as its data say it.
    Other(Option<usize>, String),
}

/// An atlas in the making.
struct Drawing<'m> {
    model: &'m Model<'m>,
    electrics: &'m Electrics,
    sizes: Vec<f64>,
    behaviours: Vec<Behaviour>,
    looks: HashMap<Vec<u16>, u32>,
    shows: Vec<Shows>,
    known: BTreeMap<[Option<usize>; 2], usize>,
    /// The first fault of each place.
    stand_ins: BTreeMap<Place, usize>,
    /// The place of each fault by itself.
    places: Vec<Place>,
    /// Behaviours of one leak of any size, by the fault that stands for its place: finer than the sizes.
    leaks: BTreeMap<usize, Vec<u32>>,
}

impl<'m> Drawing<'m> {
    fn new(model: &'m Model<'m>, electrics: &'m Electrics) -> Self {
        let mut drawing = Self {
            model,
            electrics,
            sizes: sizes::at_work(),
            behaviours: Vec::new(),
            looks: HashMap::new(),
            shows: Vec::new(),
            known: BTreeMap::new(),
            stand_ins: BTreeMap::new(),
            places: Vec::new(),
            leaks: BTreeMap::new(),
        };
        drawing.places = (0..model.faults.len()).map(|f| drawing.place(f)).collect();
        drawing
    }

    /// The number of what up to two faults of the vacuum side show.
    fn shows(&mut self, vacuum: &[usize]) -> usize {
        let stand = |drawing: &mut Self, at: usize| {
            let fault = *vacuum.get(at)?;
            drawing.stand_in(fault, vacuum.get(1 - at).copied())
        };
        let key = [stand(self, 0), stand(self, 1)];
        if let Some(known) = self.known.get(&key) {
            return *known;
        }
        // What an electric side with so many faults can do at most.
        let works = self.electrics.works_beside(vacuum.len());
        let shows = match key {
            [Some(a), Some(b)] if self.places[a] == self.places[b] && self.is_leak(a) => {
                self.shows_of_sum(a, works)
            }
            [a, b] => self.shows_of([a, b], works),
        };
        self.shows.push(shows);
        self.known.insert(key, self.shows.len() - 1);
        self.shows.len() - 1
    }

    fn shows_of(&mut self, faults: [Option<usize>; 2], works: usize) -> Shows {
        let of = |fault: Option<usize>| -> Vec<f64> {
            match fault {
                Some(fault) if self.model.faults[fault].has_size_at_work() => self.sizes.clone(),
                Some(fault) => vec![self.model.faults[fault].usual_size()],
                None => vec![0.0],
            }
        };
        let sizes = faults.map(of);
        let mut behaviours = Vec::with_capacity(works * sizes[0].len() * sizes[1].len());
        for work in 0..works {
            for first in &sizes[0] {
                for second in &sizes[1] {
                    let sized: Vec<(usize, f64)> = faults
                        .iter()
                        .zip([*first, *second])
                        .filter_map(|(fault, size)| Some(((*fault)?, size)))
                        .collect();
                    behaviours.push(self.behaviour(work, &sized));
                }
            }
        }
        Shows {
            sizes: sizes.map(|s| s.len()),
            behaviours,
        }
    }

    /// Two leaks of one place: only their sum matters.
    fn shows_of_sum(&mut self, fault: usize, works: usize) -> Shows {
        let of_work: Vec<Vec<u32>> = (0..works).map(|work| self.leaks_of(fault, work)).collect();
        let number = self.sizes.len();
        let mut behaviours = Vec::with_capacity(works * number * number);
        for of_size in &of_work {
            for first in &self.sizes {
                for second in &self.sizes {
                    behaviours.push(of_size[sizes::fine_number(first + second)]);
                }
            }
        }
        Shows {
            sizes: [number; 2],
            behaviours,
        }
    }

    fn leaks_of(&mut self, fault: usize, work: usize) -> Vec<u32> {
        let key = work * self.model.faults.len() + fault;
        if let Some(known) = self.leaks.get(&key) {
            return known.clone();
        }
        let of_size: Vec<u32> = sizes::fine_at_work()
            .into_iter()
            .map(|size| self.behaviour(work, &[(fault, size)]))
            .collect();
        self.leaks.insert(key, of_size.clone());
        of_size
    }

    fn behaviour(&mut self, work: usize, vacuum: &[(usize, f64)]) -> u32 {
        let pulls: &Pulls = self.electrics.pulls(work);
        let behaviour = self.model.behaviour(&self.model.world(vacuum), pulls);
        let look = behaviour.look(self.model.source.0.max(1.0));
        let next = u32::try_from(self.behaviours.len()).unwrap_or(u32::MAX);
        let number = *self.looks.entry(look).or_insert(next);
        if number == next {
            self.behaviours.push(behaviour);
        }
        number
    }

    /// The first fault that does the same at work, beside another; none where it does nothing there.
    fn stand_in(&mut self, fault: usize, beside: Option<usize>) -> Option<usize> {
        let hidden = beside.filter(|f| self.model.faults[*f].hides_what_is_behind() && self.is_leak(fault));
        let place = match hidden {
            Some(beside) => self.place_of_leak(fault, Some(beside)),
            None => self.places[fault].clone(),
        };
        if place == Place::Nowhere {
            return None;
        }
        if hidden.is_some() {
            // Any leak that is in the same place beside the other stands for it.
            let like = (0..fault).find(|f| self.is_leak(*f) && self.place_of_leak(*f, beside) == place);
            return Some(like.unwrap_or(fault));
        }
        Some(*self.stand_ins.entry(place).or_insert(fault))
    }

    fn place(&self, fault: usize) -> Place {
        let of = &self.model.faults[fault];
        if self.is_leak(fault) {
            return self.place_of_leak(fault, None);
        }
        let at_work: Vec<&Effect> = of.effects.iter().filter(|e| e.shows_at_work()).collect();
        if at_work.is_empty() {
            Place::Nowhere
        } else {
            Place::Other(of.part, format!("{at_work:?}"))
        }
    }

    fn is_leak(&self, fault: usize) -> bool {
        self.model.faults[fault].is_leak_at_work()
    }

    fn place_of_leak(&self, fault: usize, beside: Option<usize>) -> Place {
        let others: Vec<(usize, f64)> = beside.map(|f| (f, 0.0)).into_iter().collect();
        let mut with = others.clone();
        with.push((fault, 1.0));
        let leaks = |faults: &[(usize, f64)]| self.model.leaks_at_work(&self.model.world(faults));
        let at = leaks(&with)
            .into_iter()
            .zip(leaks(&others))
            .map(|(with, without)| {
                let more = |with: f64, without: f64| with > without + 0.5;
                (
                    more(with.behind, without.behind),
                    more(with.before, without.before),
                )
            });
        Place::Leak(at.collect())
    }
}
