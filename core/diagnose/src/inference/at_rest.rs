//! What the hold tests say of a cause, its leaks at rest summed over.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use super::causes::Size;
use super::hold::{HoldScope, HoldSeen, Trapped};
use super::model::Model;
use super::observation::{Observation, Seen};
use super::sizes::{Points, link};
use crate::faults::{Effect, Spread, Stuck};

/// Decimal logarithms of leaks for which a hold is worked out, std cm³/min: first, steps of a decade, number.
const LEAKS: (f64, f64, usize) = (-1.5, 40.0, 341);
/// Points less likely than this share of the likeliest are left out where two leaks are summed over.
const LEFT_OUT: f64 = 1e-7;

/// What all holds say of one cause.
pub(super) struct AtRest {
    /// ln of the scale of what follows.
    pub ln: f64,
    /// The sizes at rest of the cause's two faults.
    pub points: [Rc<Points>; 2],
    /// Weight × likelihood for each pair of sizes, the first fault's size outside.
    pub rest: Vec<f64>,
    /// The same for each pair of sizes at work; one where a fault has none.
    pub work: Vec<f64>,
    /// How many sizes at work each fault has.
    pub works: [usize; 2],
    links: [Rc<Link>; 2],
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

/// Probability of each size at work for each size at rest.
type Link = Vec<Vec<f64>>;

/// How a fault shows in the holds.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Role {
    /// There is no such fault, or no hold sees it and it has no size.
    None,
    /// A leak with its spread, by number, and which holds see it.
    Leak(usize, Vec<bool>),
    /// Something else: the fault itself, and its spread if it has one.
    Own(usize, Option<usize>),
}

/// All hold tests of a job.
pub(super) struct Holds<'m> {
    model: &'m Model<'m>,
    holds: Vec<Hold<'m>>,
    spreads: Vec<Spread>,
    points: BTreeMap<(usize, bool), (Rc<Points>, Rc<Link>)>,
    known: RefCell<BTreeMap<[Role; 2], Rc<AtRest>>>,
}

/// One hold test, and how it looks with parts blocked.
struct Hold<'m> {
    seen: &'m HoldSeen,
    scope: &'m HoldScope,
    courses: RefCell<Vec<Rc<Course>>>,
    shapes: RefCell<BTreeMap<Vec<usize>, Rc<Shape>>>,
}

/// What the pump sees with some parts blocked or stuck.
struct Shape {
    /// Leak of the sound parts, std cm³/min.
    base: f64,
    reached: Vec<bool>,
    course: Rc<Course>,
}

/// ln likelihood of what was seen, by leak, worked out where it is asked for.
struct Course {
    trapped: Trapped,
    ln: Vec<Cell<f64>>,
}

impl<'m> Holds<'m> {
    pub fn new(model: &'m Model<'m>, seen: &'m [Observation]) -> Self {
        let hold = |o: &'m Observation| match (&o.seen, &o.scope) {
            (Seen::Hold(seen), Some(scope)) => Some(Hold {
                seen,
                scope,
                courses: RefCell::default(),
                shapes: RefCell::default(),
            }),
            _ => None,
        };
        let mut spreads: Vec<Spread> = Vec::new();
        for fault in &model.faults {
            if let Size::Leak(spread) = fault.size()
                && !spreads.contains(&spread)
            {
                spreads.push(spread);
            }
        }
        let times = model.data.physics.leak_at_work_times.0;
        let mut points = BTreeMap::new();
        for (number, spread) in spreads.iter().enumerate() {
            for alone in [true, false] {
                let of_leak = Points::of_leak(*spread, alone);
                let link = link(&of_leak, times);
                points.insert((number, alone), (Rc::new(of_leak), Rc::new(link)));
            }
        }
        Self {
            model,
            holds: seen.iter().filter_map(hold).collect(),
            spreads,
            points,
            known: RefCell::default(),
        }
    }

    /// What all holds say of up to two faults.
    pub fn of(&self, faults: &[usize]) -> Rc<AtRest> {
        let shaping: Vec<usize> = faults.iter().copied().filter(|f| self.shapes_holds(*f)).collect();
        let role = |at: usize| faults.get(at).map_or(Role::None, |f| self.role(*f, &shaping));
        let key = [role(0), role(1)];
        if let Some(known) = self.known.borrow().get(&key) {
            return Rc::clone(known);
        }
        let at_rest = Rc::new(self.work_out(&key, &shaping));
        self.known.borrow_mut().insert(key, Rc::clone(&at_rest));
        at_rest
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
                .is_some_and(|part| self.holds.iter().any(|h| h.scope.contains(part)))
    }

    fn role(&self, fault: usize, shaping: &[usize]) -> Role {
        let of = &self.model.faults[fault];
        let spread = match of.size() {
            Size::Leak(spread) => self.spreads.iter().position(|s| *s == spread),
            Size::Fixed | Size::Resistance(_) => None,
        };
        if shaping.contains(&fault) {
            return Role::Own(fault, spread);
        }
        let Some(spread) = spread else { return Role::None };
        let shows = of.effects.iter().any(Effect::shows_in_hold);
        let sees = |hold: &Hold<'_>| {
            shows
                && of.part.is_some_and(|part| {
                    Some(part) == self.model.layout.tester
                        || self.shape(hold, shaping).reached.get(part) == Some(&true)
                })
        };
        Role::Leak(spread, self.holds.iter().map(sees).collect())
    }

    fn shape(&self, hold: &Hold<'_>, shaping: &[usize]) -> Rc<Shape> {
        if let Some(known) = hold.shapes.borrow().get(shaping) {
            return Rc::clone(known);
        }
        let faults: Vec<(usize, f64)> = shaping.iter().map(|f| (*f, 0.0)).collect();
        let (trapped, reached) = self.model.under_vacuum(&self.model.world(&faults), hold.scope);
        let shape = Rc::new(Shape {
            base: trapped.leak,
            reached,
            course: hold.course(trapped),
        });
        hold.shapes
            .borrow_mut()
            .insert(shaping.to_vec(), Rc::clone(&shape));
        shape
    }

    fn work_out(&self, roles: &[Role; 2], shaping: &[usize]) -> AtRest {
        let both = roles.iter().all(|r| matches!(r, Role::Leak(..)));
        let sized = |role: &Role| match role {
            Role::Leak(spread, _) | Role::Own(_, Some(spread)) => self.points.get(&(*spread, !both)).cloned(),
            Role::None | Role::Own(_, None) => None,
        };
        let none = || (Rc::new(Points::none()), Rc::new(vec![vec![1.0]]));
        let (first, first_link) = sized(&roles[0]).unwrap_or_else(none);
        let (second, second_link) = sized(&roles[1]).unwrap_or_else(none);
        let sees = |role: &Role, hold: usize| match role {
            Role::Leak(_, holds) => holds[hold],
            Role::None | Role::Own(..) => false,
        };
        let mut constant = 0.0;
        let mut own = [ln(&first.weights), ln(&second.weights)];
        let mut joint = Vec::new();
        for (number, hold) in self.holds.iter().enumerate() {
            let shape = self.shape(hold, shaping);
            let at = |leak: f64| self.ln_at(hold, &shape, leak);
            match (sees(&roles[0], number), sees(&roles[1], number)) {
                (false, false) => constant += at(0.0),
                (true, true) => joint.push((hold, shape)),
                (first_sees, _) => {
                    let (at_fault, points) = if first_sees { (0, &first) } else { (1, &second) };
                    for (ln, size) in own[at_fault].iter_mut().zip(&points.sizes) {
                        *ln += at(*size);
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
                    let sum = first.sizes[i] + second.sizes[j];
                    let of_joint: f64 = joint.iter().map(|(hold, s)| self.ln_at(hold, s, sum)).sum();
                    rest_ln[i * second.len() + j] = a + b + of_joint;
                }
            }
        }
        let scale = max(&rest_ln);
        let rest: Vec<f64> = rest_ln.iter().map(|ln| (ln - scale).exp()).collect();
        let works = [first_link[0].len(), second_link[0].len()];
        AtRest {
            ln: constant + scale,
            work: to_work(&rest, second.len(), [&first_link, &second_link]),
            points: [first, second],
            rest,
            works,
            links: [first_link, second_link],
        }
    }

    fn ln_at(&self, hold: &Hold<'_>, shape: &Shape, leak: f64) -> f64 {
        let (first, steps, number) = LEAKS;
        let course = &shape.course;
        let at = ((shape.base + leak).log10() - first) * steps;
        let below = at.floor().clamp(0.0, (number - 2) as f64) as usize;
        let node = |n: usize| {
            let cell = &course.ln[n];
            if cell.get().is_nan() {
                let trapped = Trapped {
                    leak: 10f64.powf(first + n as f64 / steps),
                    ..course.trapped
                };
                cell.set(self.model.hold_likelihood(trapped, hold.seen).ln());
            }
            cell.get()
        };
        let share = (at - below as f64).clamp(0.0, 1.0);
        if share < 1e-9 {
            return node(below);
        }
        (1.0 - share) * node(below) + share * node(below + 1)
    }
}

impl Hold<'_> {
    /// The course for what is trapped: with the same volume it is the same.
    fn course(&self, trapped: Trapped) -> Rc<Course> {
        let same = |c: &&Rc<Course>| {
            Trapped {
                leak: trapped.leak,
                ..c.trapped
            } == trapped
        };
        if let Some(known) = self.courses.borrow().iter().find(same) {
            return Rc::clone(known);
        }
        let course = Rc::new(Course {
            trapped,
            ln: vec![Cell::new(f64::NAN); LEAKS.2],
        });
        self.courses.borrow_mut().push(Rc::clone(&course));
        course
    }
}

/// Weights by sizes at work from weights by sizes at rest.
fn to_work(rest: &[f64], second: usize, links: [&Link; 2]) -> Vec<f64> {
    let (works, of_second) = (links[0][0].len(), links[1][0].len());
    let mut work = vec![0.0; works * of_second];
    for (row, first_link) in rest.chunks(second).zip(links[0]) {
        let mut by_second = vec![0.0; of_second];
        for (p, link) in row.iter().zip(links[1]).filter(|(p, _)| **p > 0.0) {
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
