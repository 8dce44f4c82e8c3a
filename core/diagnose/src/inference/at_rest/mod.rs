//! What the hold tests say of a cause, its leaks at rest summed over.

mod one_hold;
mod role;
mod sums;

use std::cell::{OnceCell, RefCell};
use std::sync::Arc;

use rustc_hash::FxHashMap;

use self::one_hold::{Hold, Shape};
use self::role::{Part, Role};
use super::causes::Size;
use super::model::Model;
use super::observation::{Observation, Seen};
use super::sizes::{LeakSizes, Link, Points};

/// Points of what a needle does without a leak.
pub(super) const NEEDLE_POINTS: usize = 5;

/// What all holds say of one cause.
pub(super) struct AtRest {
    /// ln of the scale of what follows.
    pub ln: f64,
    /// The sizes at rest of the cause's two faults.
    pub points: [Arc<Points>; 2],
    /// Weight × likelihood for each pair of sizes, the first fault's size outside.
    pub rest: Vec<f64>,
    /// The same for each pair of sizes at work; one where a fault has none.
    pub work: Vec<f64>,
    links: [Arc<Link>; 2],
}

impl AtRest {
    /// Weights of the sizes at rest, given sizes at work by their numbers.
    pub fn given(&self, work: [usize; 2]) -> Vec<f64> {
        let second = self.points[1].len();
        let weight = |(i, p): (usize, &f64)| {
            p * self.links[0][i / second][work[0]] * self.links[1][i % second][work[1]]
        };
        self.rest.iter().enumerate().map(weight).collect()
    }
}

/// What was worked out of holds, kept from reading to reading.
#[derive(Default)]
pub(super) struct HoldMemory {
    holds: Vec<Hold>,
    results: Results,
    leaks: OnceCell<LeakSizes>,
}

/// What some holds say, by how two faults show in them.
#[derive(Default)]
pub(super) struct Results {
    /// The numbers of the holds.
    holds: Vec<usize>,
    of: Known,
}

type Known = FxHashMap<[Role; 2], Arc<AtRest>>;
/// What each hold's pump sees.
type Shapes = Arc<[Arc<Shape>]>;

/// All hold tests of a job.
pub(super) struct Holds<'m> {
    model: &'m Model<'m>,
    /// The numbers of the job's holds in the memory.
    numbers: Vec<usize>,
    holds: Vec<&'m Hold>,
    leaks: &'m LeakSizes,
    /// What each fault could be in the holds, by number.
    parts: Vec<Part>,
    /// The role of each fault beside any that changes no reach, by number; and one more for no fault.
    roles: Vec<usize>,
    /// How many such roles there are, and what is known for two of them.
    kinds: usize,
    usual: RefCell<Vec<Option<Arc<AtRest>>>>,
    /// What the pump sees with some faults that change its reach.
    shapes: RefCell<FxHashMap<[Option<usize>; 2], Shapes>>,
    known: RefCell<Known>,
}

impl HoldMemory {
    /// Takes up all holds among what was seen.
    pub fn learn(&mut self, seen: &[Observation]) {
        for observation in seen.iter().filter(|o| is_hold(o)) {
            if self.holds.iter().all(|h| h.seen != *observation) {
                self.holds.push(Hold::new(observation.clone()));
            }
        }
    }

    /// Keeps what was worked out for these holds.
    pub fn keep(&mut self, results: Results) {
        self.results = results;
    }
}

fn is_hold(seen: &Observation) -> bool {
    matches!(seen.seen, Seen::Hold(_)) && seen.scope.is_some()
}

impl<'m> Holds<'m> {
    /// The holds among what was seen; the memory must have learned them.
    pub fn new(model: &'m Model<'m>, memory: &'m HoldMemory, seen: &[Observation]) -> Self {
        let number = |o: &Observation| memory.holds.iter().position(|h| h.seen == *o);
        let numbers: Vec<usize> = seen.iter().filter_map(number).collect();
        let holds: Vec<&Hold> = numbers.iter().filter_map(|n| memory.holds.get(*n)).collect();
        let leaks = memory
            .leaks
            .get_or_init(|| LeakSizes::new(&model.faults, model.data.physics.leak_at_work_times.0));
        let faults = 0..model.faults.len();
        let parts = faults.map(|f| Part::of(model, &holds, leaks, f)).collect();
        let mut all = Self {
            model,
            holds,
            leaks,
            parts,
            roles: Vec::new(),
            kinds: 0,
            usual: RefCell::default(),
            shapes: RefCell::default(),
            known: RefCell::new(if memory.results.holds == numbers {
                memory.results.of.clone()
            } else {
                Known::default()
            }),
            numbers,
        };
        let shapes = all.shapes([None, None]);
        let mut roles: Vec<Role> = Vec::new();
        let mut number = |role: Role| {
            roles.iter().position(|r| *r == role).unwrap_or_else(|| {
                roles.push(role);
                roles.len() - 1
            })
        };
        let of_parts = all.parts.iter().map(|part| number(part.role(seen_by(&shapes))));
        let mut numbered: Vec<usize> = of_parts.collect();
        numbered.push(number(Role::None));
        all.roles = numbered;
        all.kinds = roles.len();
        all.usual = RefCell::new(vec![None; roles.len() * roles.len()]);
        all
    }

    /// What was worked out, to be kept.
    pub fn results(self) -> Results {
        Results {
            holds: self.numbers,
            of: self.known.into_inner(),
        }
    }

    /// What all holds say of up to two faults of the vacuum side.
    pub fn of(&self, faults: &[usize]) -> Arc<AtRest> {
        if faults.iter().any(|f| self.parts[*f].shapes()) {
            return self.by_roles(faults);
        }
        let none = self.roles.len() - 1;
        let role = |at: usize| self.roles[faults.get(at).copied().unwrap_or(none)];
        let number = role(0) * self.kinds + role(1);
        if let Some(Some(known)) = self.usual.borrow().get(number) {
            return Arc::clone(known);
        }
        let at_rest = self.by_roles(faults);
        if let Some(place) = self.usual.borrow_mut().get_mut(number) {
            *place = Some(Arc::clone(&at_rest));
        }
        at_rest
    }

    fn by_roles(&self, faults: &[usize]) -> Arc<AtRest> {
        let fault = |at: usize| faults.get(at).copied();
        let shaping = [fault(0), fault(1)].map(|f| f.filter(|f| self.parts[*f].shapes()));
        let shapes = self.shapes(shaping);
        let role = |at: usize| fault(at).map_or(Role::None, |f| self.parts[f].role(seen_by(&shapes)));
        let key = [role(0), role(1)];
        if let Some(known) = self.known.borrow().get(&key) {
            return Arc::clone(known);
        }
        let at_rest = Arc::new(self.work_out(&key, &shapes));
        self.known.borrow_mut().insert(key, Arc::clone(&at_rest));
        at_rest
    }

    /// What each hold's pump sees with these faults of their usual sizes.
    fn shapes(&self, shaping: [Option<usize>; 2]) -> Shapes {
        if let Some(known) = self.shapes.borrow().get(&shaping) {
            return Arc::clone(known);
        }
        let sized: Vec<(usize, f64)> = shaping
            .into_iter()
            .flatten()
            .map(|f| (f, self.usual_size(f)))
            .collect();
        let shapes: Shapes = self.holds.iter().map(|h| h.shape(self.model, &sized)).collect();
        self.shapes.borrow_mut().insert(shaping, Arc::clone(&shapes));
        shapes
    }

    fn usual_size(&self, fault: usize) -> f64 {
        self.model.faults[fault].usual_size()
    }

    /// The sizes a fault can have, and which sizes at work they go with.
    fn points(&self, role: &Role, alone: bool) -> (Arc<Points>, Arc<Link>) {
        let unlinked = |points: Points| {
            let link = vec![vec![1.0]; points.len()];
            (Arc::new(points), Arc::new(link))
        };
        match role {
            Role::None => unlinked(Points::none()),
            Role::Shape(fault) => unlinked(Points::one(self.usual_size(*fault))),
            Role::Needle(fault) => match self.model.faults[*fault].size() {
                Size::Needle(spread) => unlinked(Points::spread_over(spread, NEEDLE_POINTS)),
                _ => unlinked(Points::none()),
            },
            Role::Leak { spread, at_work, .. } => {
                let (points, link) = &self.leaks.points[*spread][usize::from(alone)];
                if *at_work {
                    (Arc::clone(points), Arc::clone(link))
                } else {
                    (Arc::clone(points), Arc::new(vec![vec![1.0]; points.len()]))
                }
            }
        }
    }
}

fn seen_by(shapes: &Shapes) -> impl Iterator<Item = &Shape> {
    shapes.iter().map(Arc::as_ref)
}
