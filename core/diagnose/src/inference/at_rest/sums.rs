//! The sums over the sizes that two faults can have.

use std::sync::Arc;

use super::one_hold::{Hold, Shape};
use super::role::Role;
use super::{AtRest, Holds, Shapes};
use crate::inference::model::Model;
use crate::inference::sizes::{Link, Points};

/// Points less likely than this share of the likeliest are left out where two leaks are summed over.
const LEFT_OUT: f64 = 1e-7;

impl Holds<'_> {
    /// What all holds say of faults in these roles, `shapes` being what each pump sees with those that change its reach.
    pub(super) fn work_out(&self, roles: &[Role; 2], shapes: &Shapes) -> AtRest {
        let both = roles.iter().all(|r| matches!(r, Role::Leak { .. }));
        let (first, first_link) = self.points(&roles[0], !both);
        let (second, second_link) = self.points(&roles[1], !both);
        let points = [&first, &second];
        let needles = roles.iter().any(|r| matches!(r, Role::Needle(_)));
        let mut own = [ln(&first.weights), ln(&second.weights)];
        let mut constant = 0.0;
        let mut joint: Vec<Together<'_>> = Vec::new();
        for (number, (hold, shape)) in self.holds.iter().copied().zip(shapes.iter()).enumerate() {
            if needles {
                let shapes = self.needle_shapes(hold, roles, points);
                joint.push(Together::new(hold, shapes, self.leaks_of(roles, number)));
                continue;
            }
            match (roles[0].seen_by(number), roles[1].seen_by(number)) {
                (true, true) => joint.push(Together::new(
                    hold,
                    vec![Arc::clone(shape)],
                    self.leaks_of(roles, number),
                )),
                (false, false) => constant += hold.ln(self.model, shape, &[]),
                (first_sees, _) => {
                    let at = usize::from(!first_sees);
                    let often = roles[at].often(&self.model.data.rates, number);
                    for (ln, size) in own[at].iter_mut().zip(&points[at].sizes) {
                        *ln += hold.ln(self.model, shape, &[(*size, often)]);
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

    /// Which of two faults let in air in a hold, and how often.
    fn leaks_of(&self, roles: &[Role; 2], hold: usize) -> [Option<f64>; 2] {
        let rates = &self.model.data.rates;
        [0, 1].map(|n| roles[n].seen_by(hold).then(|| roles[n].often(rates, hold)))
    }

    /// What the pump sees for each pair of sizes, where at least one fault moves the needle.
    fn needle_shapes(&self, hold: &Hold, roles: &[Role; 2], points: [&Arc<Points>; 2]) -> Vec<Arc<Shape>> {
        let [first, second] = points;
        let mut shapes = Vec::with_capacity(first.len() * second.len());
        let by_size = |role: &Role, size: f64| match role {
            Role::Needle(fault) => Some((*fault, size)),
            Role::Shape(fault) => Some((*fault, self.usual_size(*fault))),
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
    /// Which faults let in air here, and how often.
    leaks: [Option<f64>; 2],
}

impl<'m> Together<'m> {
    fn new(hold: &'m Hold, shapes: Vec<Arc<Shape>>, leaks: [Option<f64>; 2]) -> Self {
        Self { hold, shapes, leaks }
    }

    fn ln(&self, model: &Model<'_>, pair: usize, sizes: [f64; 2]) -> f64 {
        let Some(shape) = self.shapes.get(pair).or(self.shapes.first()) else {
            return 0.0;
        };
        let leak = |n: usize| self.leaks[n].map(|often| (sizes[n], often));
        match [leak(0), leak(1)] {
            [Some(a), Some(b)] => self.hold.ln(model, shape, &[a, b]),
            [Some(leak), None] | [None, Some(leak)] => self.hold.ln(model, shape, &[leak]),
            [None, None] => self.hold.ln(model, shape, &[]),
        }
    }
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
