//! What the hold tests say of a cause, its leaks at rest summed over.

use std::cell::{OnceCell, RefCell};
use std::collections::BTreeMap;
use std::sync::Arc;

use super::causes::Size;
use super::hold::{HoldScope, HoldSeen, Trapped};
use super::model::Model;
use super::observation::{Observation, Seen};
use super::sizes::{LeakSizes, Link, Points};
use crate::faults::{Effect, Stuck};

/// Decimal logarithms of leaks for which a hold is worked out, std cm³/min: first, steps of a decade, number.
const LEAKS: (f64, f64, usize) = (-1.5, 24.0, 206);
/// Points less likely than this share of the likeliest are left out where two leaks are summed over.
const LEFT_OUT: f64 = 1e-7;
/// Points of what a needle does without a leak.
pub(super) const NEEDLE_POINTS: usize = 5;
/// How often an end that leaks at times does so in a test.
const AT_TIMES: f64 = 0.5;

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

/// How a fault shows in the holds.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Role {
    /// There is no such fault, or it has nothing to do with holds and leaks.
    None,
    /// A leak.
    Leak {
        /// Its spread, by number.
        spread: usize,
        /// Which holds see it.
        sees: Vec<bool>,
        /// Which holds may not see it although it is there.
        at_times: Vec<bool>,
        /// It also leaks at work.
        at_work: bool,
    },
    /// It changes which parts the pump reaches, by the fault's number.
    Shape(usize),
    /// It moves the needle without a leak, by the fault's number.
    Needle(usize),
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
    of: BTreeMap<[Role; 2], Arc<AtRest>>,
}

/// Faults that are no leaks, each with the bits of its size.
type Shaping = Vec<(usize, u64)>;

/// One hold test, and how it looks with parts blocked.
struct Hold {
    seen: Observation,
    courses: RefCell<Vec<Course>>,
    shapes: RefCell<BTreeMap<Shaping, Arc<Shape>>>,
}

/// What the pump sees with some faults that are no leaks.
struct Shape {
    /// Leak of the sound parts, std cm³/min.
    base: f64,
    reached: Vec<bool>,
    /// The number of its course.
    course: usize,
}

/// ln likelihood of what was seen, by leak, worked out where it is asked for.
struct Course {
    trapped: Trapped,
    ln: Vec<f64>,
}

/// A leak that a hold sees, std cm³/min, and whether it leaks in some tests only.
type Leak = (f64, bool);

/// All hold tests of a job.
pub(super) struct Holds<'m> {
    model: &'m Model<'m>,
    memory: &'m HoldMemory,
    /// The numbers of the job's holds in the memory.
    holds: Vec<usize>,
    leaks: &'m LeakSizes,
    /// Whether a fault changes which parts the pump reaches.
    shaping: Vec<bool>,
    /// The role of each fault beside any that changes no such thing, by number; and one more for no fault.
    roles: Vec<usize>,
    /// How many such roles there are, and what is known for two of them.
    kinds: usize,
    usual: RefCell<Vec<Option<Arc<AtRest>>>>,
    known: RefCell<BTreeMap<[Role; 2], Arc<AtRest>>>,
}

impl HoldMemory {
    /// Takes up all holds among what was seen.
    pub fn learn(&mut self, seen: &[Observation]) {
        for observation in seen.iter().filter(|o| is_hold(o)) {
            if self.holds.iter().all(|h| h.seen != *observation) {
                self.holds.push(Hold {
                    seen: observation.clone(),
                    courses: RefCell::default(),
                    shapes: RefCell::default(),
                });
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
        let holds: Vec<usize> = seen.iter().filter_map(number).collect();
        let known = if memory.results.holds == holds {
            memory.results.of.clone()
        } else {
            BTreeMap::new()
        };
        let mut all = Self {
            model,
            memory,
            leaks: memory
                .leaks
                .get_or_init(|| LeakSizes::new(&model.faults, model.data.physics.leak_at_work_times.0)),
            holds,
            shaping: Vec::new(),
            roles: Vec::new(),
            kinds: 0,
            usual: RefCell::default(),
            known: RefCell::new(known),
        };
        let faults = 0..model.faults.len();
        all.shaping = faults.clone().map(|f| all.shapes_holds(f)).collect();
        let mut roles: Vec<Role> = Vec::new();
        let mut number = |role: Role| {
            roles.iter().position(|r| *r == role).unwrap_or_else(|| {
                roles.push(role);
                roles.len() - 1
            })
        };
        all.roles = faults.map(|f| number(all.role(f, &[]))).collect();
        all.roles.push(number(Role::None));
        all.kinds = roles.len();
        all.usual = RefCell::new(vec![None; roles.len() * roles.len()]);
        all
    }

    /// What was worked out, to be kept.
    pub fn results(self) -> Results {
        Results {
            holds: self.holds,
            of: self.known.into_inner(),
        }
    }

    /// What all holds say of up to two faults of the vacuum side.
    pub fn of(&self, faults: &[usize]) -> Arc<AtRest> {
        if faults.iter().any(|f| self.shaping[*f]) {
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
        let shaping: Vec<usize> = faults.iter().copied().filter(|f| self.shaping[*f]).collect();
        let role = |at: usize| faults.get(at).map_or(Role::None, |f| self.role(*f, &shaping));
        let key = [role(0), role(1)];
        if let Some(known) = self.known.borrow().get(&key) {
            return Arc::clone(known);
        }
        let at_rest = Arc::new(self.work_out(&key, &shaping));
        self.known.borrow_mut().insert(key, Arc::clone(&at_rest));
        at_rest
    }

    fn all(&self) -> impl Iterator<Item = &'m Hold> {
        self.holds.iter().filter_map(|n| self.memory.holds.get(*n))
    }

    /// Whether a fault changes which parts the pump reaches, or lets in air that has no size of its own.
    fn shapes_holds(&self, fault: usize) -> bool {
        let fault = &self.model.faults[fault];
        let shapes = |e: &Effect| {
            matches!(
                e,
                Effect::Blocks | Effect::Stuck(Stuck::Open) | Effect::VentBlocked
            )
        };
        fault.effects.iter().any(shapes)
            && fault
                .part
                .is_some_and(|part| self.all().any(|h| h.scope().contains(part)))
    }

    fn role(&self, fault: usize, shaping: &[usize]) -> Role {
        let of = &self.model.faults[fault];
        if shaping.contains(&fault) {
            return Role::Shape(fault);
        }
        match of.size() {
            Size::Needle(_) if !self.holds.is_empty() => Role::Needle(fault),
            Size::Leak(spread) => {
                let shows = of.effects.iter().any(Effect::shows_in_hold);
                let sized: Vec<(usize, f64)> = shaping.iter().map(|f| (*f, self.median(*f))).collect();
                let sees = |hold: &Hold| {
                    shows
                        && of.part.is_some_and(|part| {
                            Some(part) == self.model.layout.tester
                                || hold.shape(self.model, &sized).reached.get(part) == Some(&true)
                        })
                };
                let sees: Vec<bool> = self.all().map(sees).collect();
                let at_work = of.has_size_at_work();
                if !at_work && !sees.contains(&true) {
                    return Role::None;
                }
                Role::Leak {
                    spread: self.leaks.spreads.iter().position(|s| *s == spread).unwrap_or(0),
                    at_times: self
                        .all()
                        .map(|h| of.effects.iter().any(|e| e.hides_at_times(h.scope().is_one())))
                        .collect(),
                    sees,
                    at_work,
                }
            }
            _ => Role::None,
        }
    }

    fn median(&self, fault: usize) -> f64 {
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
            Role::Shape(fault) => unlinked(Points::one(self.median(*fault))),
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

    fn work_out(&self, roles: &[Role; 2], shaping: &[usize]) -> AtRest {
        let both = roles.iter().all(|r| matches!(r, Role::Leak { .. }));
        let (first, first_link) = self.points(&roles[0], !both);
        let (second, second_link) = self.points(&roles[1], !both);
        let points = [&first, &second];
        let needles = roles.iter().any(|r| matches!(r, Role::Needle(_)));
        let mut own = [ln(&first.weights), ln(&second.weights)];
        let mut constant = 0.0;
        let mut joint: Vec<Together<'_>> = Vec::new();
        for (number, hold) in self.all().enumerate() {
            if needles {
                let shapes = self.needle_shapes(hold, roles, points);
                joint.push(Together::new(hold, shapes, roles, number));
                continue;
            }
            let fixed: Vec<(usize, f64)> = shaping.iter().map(|f| (*f, self.median(*f))).collect();
            let shape = hold.shape(self.model, &fixed);
            match (roles[0].seen_by(number), roles[1].seen_by(number)) {
                (true, true) => joint.push(Together::new(hold, vec![shape], roles, number)),
                (false, false) => constant += hold.ln(self.model, &shape, &[]),
                (first_sees, _) => {
                    let at = usize::from(!first_sees);
                    let at_times = roles[at].at_times(number);
                    for (ln, size) in own[at].iter_mut().zip(&points[at].sizes) {
                        *ln += hold.ln(self.model, &shape, &[(*size, at_times)]);
                    }
                }
            }
        }
        let top = max(&own[0]) + max(&own[1]);
        let least = LEFT_OUT.ln();
        let mut rest_ln = vec![f64::NEG_INFINITY; first.len() * second.len()];
        for (i, a) in own[0].iter().enumerate() {
            for (j, b) in own[1].iter().enumerate() {
                if a + b - top > least || joint.is_empty() {
                    let sizes = [first.sizes[i], second.sizes[j]];
                    let shape = i * second.len() + j;
                    let of_joint: f64 = joint.iter().map(|t| t.ln(self.model, shape, sizes)).sum();
                    rest_ln[shape] = a + b + of_joint;
                }
            }
        }
        let scale = max(&rest_ln);
        let rest: Vec<f64> = rest_ln.iter().map(|ln| (ln - scale).exp()).collect();
        AtRest {
            ln: constant + scale,
            work: to_work(&rest, second.len(), [&first_link, &second_link]),
            points: [first, second],
            rest,
            links: [first_link, second_link],
        }
    }

    /// What the pump sees for each pair of sizes, where at least one fault moves the needle.
    fn needle_shapes(&self, hold: &Hold, roles: &[Role; 2], points: [&Arc<Points>; 2]) -> Vec<Arc<Shape>> {
        let [first, second] = points;
        let mut shapes = Vec::with_capacity(first.len() * second.len());
        let by_size = |role: &Role, size: f64| match role {
            Role::Needle(fault) => Some((*fault, size)),
            Role::Shape(fault) => Some((*fault, self.median(*fault))),
            _ => None,
        };
        for a in &first.sizes {
            for b in &second.sizes {
                let faults: Vec<(usize, f64)> = [by_size(&roles[0], *a), by_size(&roles[1], *b)]
                    .into_iter()
                    .flatten()
                    .collect();
                shapes.push(match shapes.last() {
                    // A leak's size changes no shape.
                    Some(last) if matches!(roles[1], Role::Leak { .. }) && *b != second.sizes[0] => {
                        Arc::clone(last)
                    }
                    _ => hold.shape(self.model, &faults),
                });
            }
        }
        shapes
    }
}

/// A hold that two faults show in together.
struct Together<'m> {
    hold: &'m Hold,
    /// What the pump sees: one for all sizes, or one for each pair of them.
    shapes: Vec<Arc<Shape>>,
    /// Which faults let in air here, and whether they do so in some tests only.
    leaks: [Option<bool>; 2],
}

impl<'m> Together<'m> {
    fn new(hold: &'m Hold, shapes: Vec<Arc<Shape>>, roles: &[Role; 2], number: usize) -> Self {
        let leaks = [0, 1].map(|n| roles[n].seen_by(number).then(|| roles[n].at_times(number)));
        Self { hold, shapes, leaks }
    }

    fn ln(&self, model: &Model<'_>, pair: usize, sizes: [f64; 2]) -> f64 {
        let Some(shape) = self.shapes.get(pair).or(self.shapes.first()) else {
            return 0.0;
        };
        let leak = |n: usize| self.leaks[n].map(|at_times| (sizes[n], at_times));
        match [leak(0), leak(1)] {
            [Some(a), Some(b)] => self.hold.ln(model, shape, &[a, b]),
            [Some(leak), None] | [None, Some(leak)] => self.hold.ln(model, shape, &[leak]),
            [None, None] => self.hold.ln(model, shape, &[]),
        }
    }
}

impl Role {
    fn seen_by(&self, hold: usize) -> bool {
        matches!(self, Self::Leak { sees, .. } if sees.get(hold) == Some(&true))
    }

    fn at_times(&self, hold: usize) -> bool {
        matches!(self, Self::Leak { at_times, .. } if at_times.get(hold) == Some(&true))
    }
}

impl Hold {
    fn scope(&self) -> &HoldScope {
        const NOTHING: &HoldScope = &HoldScope::nothing();
        self.seen.scope.as_ref().unwrap_or(NOTHING)
    }

    fn shape(&self, model: &Model<'_>, faults: &[(usize, f64)]) -> Arc<Shape> {
        let key: Shaping = faults.iter().map(|(f, size)| (*f, size.to_bits())).collect();
        if let Some(known) = self.shapes.borrow().get(&key) {
            return Arc::clone(known);
        }
        let (trapped, reached) = model.under_vacuum(&model.world(faults), self.scope());
        let shape = Arc::new(Shape {
            base: trapped.leak,
            reached,
            course: self.course(trapped),
        });
        self.shapes.borrow_mut().insert(key, Arc::clone(&shape));
        shape
    }

    /// The number of the course for what is trapped: with the same volume it is the same.
    fn course(&self, trapped: Trapped) -> usize {
        let same = |c: &Course| {
            Trapped {
                leak: trapped.leak,
                ..c.trapped
            } == trapped
        };
        let mut courses = self.courses.borrow_mut();
        courses.iter().position(same).unwrap_or_else(|| {
            courses.push(Course {
                trapped,
                ln: vec![f64::NAN; LEAKS.2],
            });
            courses.len() - 1
        })
    }

    /// ln likelihood of what was seen, with what the pump sees besides, and these leaks.
    fn ln(&self, model: &Model<'_>, shape: &Shape, leaks: &[Leak]) -> f64 {
        let always: f64 = leaks.iter().filter(|l| !l.1).map(|l| l.0).sum();
        let base = shape.base + always;
        let without = self.ln_at(model, shape.course, base);
        let Some((leak, _)) = leaks.iter().find(|l| l.1) else {
            return without;
        };
        let with = self.ln_at(model, shape.course, base + leak);
        let top = with.max(without);
        top + (AT_TIMES * (with - top).exp() + (1.0 - AT_TIMES) * (without - top).exp()).ln()
    }

    fn ln_at(&self, model: &Model<'_>, course: usize, leak: f64) -> f64 {
        let Seen::Hold(seen) = &self.seen.seen else {
            return 0.0;
        };
        let (first, steps, number) = LEAKS;
        let at = (leak.log10() - first) * steps;
        let below = at.floor().clamp(1.0, (number - 3) as f64) as usize;
        let mut courses = self.courses.borrow_mut();
        let Some(course) = courses.get_mut(course) else {
            return 0.0;
        };
        let mut node = |n: usize| {
            if course.ln[n].is_nan() {
                course.ln[n] = ln_of(model, seen, course.trapped, 10f64.powf(first + n as f64 / steps));
            }
            course.ln[n]
        };
        let t = (at - below as f64).clamp(0.0, 1.0);
        if t < 1e-9 {
            return node(below);
        }
        // Cubic through four points (Catmull and Rom, from memory): exact for the parabola that a normal density is.
        let [a, b, c, d] = [node(below - 1), node(below), node(below + 1), node(below + 2)];
        b + 0.5 * t * (c - a + t * (2.0 * a - 5.0 * b + 4.0 * c - d + t * (3.0 * (b - c) + d - a)))
    }
}

fn ln_of(model: &Model<'_>, seen: &HoldSeen, trapped: Trapped, leak: f64) -> f64 {
    model.hold_likelihood(Trapped { leak, ..trapped }, seen).ln()
}

/// Weights by sizes at work from weights by sizes at rest.
fn to_work(rest: &[f64], second: usize, links: [&Link; 2]) -> Vec<f64> {
    let (works, of_second) = (links[0][0].len(), links[1][0].len());
    let mut work = vec![0.0; works * of_second];
    let mut by_second = vec![0.0; of_second];
    for (row, first_link) in rest.chunks(second).zip(links[0]) {
        by_second.fill(0.0);
        for (p, link) in row.iter().zip(links[1]).filter(|(p, _)| **p > 1e-12) {
            for (sum, l) in by_second.iter_mut().zip(link) {
                *sum += p * l;
            }
        }
        for (of_work, first) in work.chunks_mut(of_second).zip(first_link) {
            for (sum, p) in of_work.iter_mut().zip(&by_second) {
                *sum += first * p;
            }
        }
    }
    work
}

fn ln(weights: &[f64]) -> Vec<f64> {
    weights.iter().map(|w| w.ln()).collect()
}

fn max(values: &[f64]) -> f64 {
    values.iter().copied().fold(f64::NEG_INFINITY, f64::max)
}
