//! One hold test: what the pump sees, and how likely what was seen is for a leak.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::Arc;

use crate::inference::hold::{HoldScope, HoldSeen, Trapped};
use crate::inference::model::Model;
use crate::inference::observation::{Observation, Seen};

/// Decimal logarithms of leaks for which a hold is worked out, std cm³/min: first, steps of a decade, number.
const LEAKS: (f64, f64, usize) = (-1.5, 24.0, 206);

/// Faults that are no leaks, each with the bits of its size.
type Shaping = Vec<(usize, u64)>;

/// One hold test, and how it looks with parts blocked.
pub(super) struct Hold {
    pub seen: Observation,
    courses: RefCell<Vec<Course>>,
    shapes: RefCell<BTreeMap<Shaping, Arc<Shape>>>,
}

/// What the pump sees with some faults that are no leaks.
pub(super) struct Shape {
    /// Leak of the sound parts, std cm³/min.
    base: f64,
    pub reached: Vec<bool>,
    /// The number of its course.
    course: usize,
}

/// ln likelihood of what was seen, by leak, worked out where it is asked for.
struct Course {
    trapped: Trapped,
    ln: Vec<f64>,
}

/// A leak that a hold sees, std cm³/min, and how often it does.
pub(super) type Leak = (f64, f64);

impl Hold {
    pub fn new(seen: Observation) -> Self {
        Self {
            seen,
            courses: RefCell::default(),
            shapes: RefCell::default(),
        }
    }

    pub fn scope(&self) -> &HoldScope {
        const NOTHING: &HoldScope = &HoldScope::nothing();
        self.seen.scope.as_ref().unwrap_or(NOTHING)
    }

    pub fn shape(&self, model: &Model<'_>, faults: &[(usize, f64)]) -> Arc<Shape> {
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
    pub fn ln(&self, model: &Model<'_>, shape: &Shape, leaks: &[Leak]) -> f64 {
        self.ln_with(model, shape.course, shape.base, leaks)
    }

    fn ln_with(&self, model: &Model<'_>, course: usize, base: f64, leaks: &[Leak]) -> f64 {
        let Some(((leak, often), others)) = leaks.split_first() else {
            return self.ln_at(model, course, base);
        };
        let with = self.ln_with(model, course, base + leak, others);
        if *often >= 1.0 {
            return with;
        }
        let without = self.ln_with(model, course, base, others);
        let top = with.max(without);
        top + (often * (with - top).exp() + (1.0 - often) * (without - top).exp()).ln()
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
