//! The chance of each outcome of a test under each cause and way.

use std::borrow::Cow;

use super::in_play::{InPlay, WayInPlay};
use super::kinds::Sorted;
use super::outcomes::{Drops, Outcomes, WATCHED};
use crate::inference::{Model, Observation, Seen, World};

/// Outcomes that a test keeps at most.
const KEPT: usize = 6;
/// Outcomes are put together where this is lost by it at most, of the mean square contingency.
const LOST: f64 = 2e-3;

/// A test's outcomes and their chances.
pub(super) struct Imagined {
    /// Readings that stand for the outcomes.
    pub outcomes: Vec<Observation>,
    /// For each outcome its chance in each kind of way.
    pub chances: Vec<Vec<f64>>,
    /// The kind of each way.
    pub kinds: Vec<usize>,
}

impl Imagined {
    /// What a test could show; none where nothing can be seen.
    pub fn new(
        model: &Model<'_>,
        in_play: &InPlay<'_>,
        sorted: &Sorted<'_>,
        outcomes: &Outcomes,
    ) -> Option<Self> {
        let test = outcomes.test()?;
        let kinds = sorted.of(test);
        let of_kind = |first: &usize| chances(model, in_play, test, outcomes, &in_play.ways[*first]);
        let columns: Vec<Vec<f64>> = kinds.firsts.iter().map(of_kind).collect();
        let number = columns.first().map_or(0, Vec::len);
        let rows: Vec<Vec<f64>> = (0..number)
            .map(|o| columns.iter().map(|c| c[o]).collect())
            .collect();
        let in_order = matches!(outcomes, Outcomes::Hold(_));
        let (kept, chances) = put_together(rows, &kinds.p(&in_play.ways), in_order);
        Some(Self {
            outcomes: kept.into_iter().map(|o| outcomes.observation(o)).collect(),
            chances,
            kinds: match kinds {
                Cow::Borrowed(kinds) => kinds.of_way.clone(),
                Cow::Owned(kinds) => kinds.of_way,
            },
        })
    }

    /// By how much the chance of an outcome differs at most between two ways.
    pub fn apart(&self, a: usize, b: usize) -> f64 {
        let (a, b) = (self.kinds[a], self.kinds[b]);
        if a == b {
            return 0.0;
        }
        let of_row = |row: &Vec<f64>| (row[a] - row[b]).abs();
        self.chances.iter().map(of_row).fold(0.0, f64::max)
    }
}

/// The chance of each outcome in one way of a cause; they sum to 1.
fn chances(
    model: &Model<'_>,
    in_play: &InPlay<'_>,
    test: &Observation,
    outcomes: &Outcomes,
    way: &WayInPlay,
) -> Vec<f64> {
    let case = &way.at_work;
    let mut chances = match outcomes {
        Outcomes::Hold(drops) => of_drops(model, drops, in_play.at_rest(model, way)),
        Outcomes::Readings(readings) => {
            // Every outcome is a set of values of the same test, and stands for all like it: what the test should show is
            // worked out once, and as coarse as that.
            let expected = matches!(test.seen, Seen::Fields(_)).then(|| {
                let mut fields = model.fields(test, case);
                for (_, expect) in fields.iter_mut().flat_map(|(_, set)| set) {
                    *expect = expect.coarse();
                }
                fields
            });
            let likelihood = |o: &Observation| match (&o.seen, &expected) {
                (Seen::Fields(values), Some(expected)) => model.values_likelihood(o, values, expected),
                _ => model.likelihood(o, case),
            };
            readings.iter().map(likelihood).collect()
        }
    };
    let total: f64 = chances.iter().sum();
    chances.iter_mut().for_each(|c| *c /= total);
    chances
}

/// Still after few strokes, each drop, never reached.
fn of_drops(model: &Model<'_>, drops: &Drops, world: &World) -> Vec<f64> {
    let densities = model.drop_likelihoods(world, &drops.test, (drops.start, WATCHED), &drops.drops);
    let mut chances: Vec<f64> = densities.iter().zip(&drops.widths).map(|(d, w)| d * w).collect();
    let reached: f64 = chances.iter().sum();
    if let Some(by_strokes) = &drops.by_strokes {
        let each = model.hold_likelihoods(world, &drops.test, by_strokes);
        let few = each[1] / (each[0] + each[1]).max(f64::MIN_POSITIVE);
        let mut still = 0.0;
        for chance in chances.iter_mut().take(drops.still) {
            still += *chance * few;
            *chance *= 1.0 - few;
        }
        chances.insert(0, still);
    }
    chances.push((1.0 - reached).max(0.0));
    chances
}

/// Puts outcomes together that tell the ways of causes apart little or not at all. `in_order`: only neighbours. Gives for
/// each that is left the number of the one that stands for it, and its chances.
///
/// Source of the measure: Pearson's mean square contingency, from memory; what is lost of it is what two rows differ by.
fn put_together(mut rows: Vec<Vec<f64>>, p: &[f64], in_order: bool) -> (Vec<usize>, Vec<Vec<f64>>) {
    let chance = |row: &[f64]| -> f64 { row.iter().zip(p).map(|(c, p)| c * p).sum() };
    let mut of_row: Vec<f64> = rows.iter().map(|row| chance(row)).collect();
    let loss = |a: (&[f64], f64), b: (&[f64], f64)| -> f64 {
        if a.1 <= 0.0 || b.1 <= 0.0 {
            return 0.0;
        }
        let (x, y) = (1.0 / a.1, 1.0 / b.1);
        let sum: f64 =
            a.0.iter()
                .zip(b.0)
                .zip(p)
                .map(|((a, b), p)| p * (a * x - b * y).powi(2))
                .sum();
        sum * a.1 * b.1 / (a.1 + b.1)
    };
    let mut stands: Vec<usize> = (0..rows.len()).collect();
    let mut alive: Vec<usize> = (0..rows.len()).collect();
    let mut known: Vec<Vec<Option<f64>>> = vec![vec![None; rows.len()]; rows.len()];
    while alive.len() > 1 {
        let mut least = (f64::INFINITY, 0, 0);
        for i in 0..alive.len() {
            let end = if in_order {
                (i + 2).min(alive.len())
            } else {
                alive.len()
            };
            for j in i + 1..end {
                let (a, b) = (alive[i], alive[j]);
                let of = || loss((&rows[a], of_row[a]), (&rows[b], of_row[b]));
                let lost = *known[a][b].get_or_insert_with(of);
                if lost < least.0 {
                    least = (lost, i, j);
                }
            }
        }
        let (lost, i, j) = least;
        if lost > LOST && alive.len() <= KEPT {
            break;
        }
        let (a, b) = (alive[i], alive.remove(j));
        // The likelier outcome stands for both.
        if of_row[b] > of_row[a] {
            stands.swap(a, b);
        }
        let row = std::mem::take(&mut rows[b]);
        rows[a].iter_mut().zip(row).for_each(|(a, b)| *a += b);
        of_row[a] += of_row[b];
        for other in &alive {
            known[a][*other] = None;
            known[*other][a] = None;
        }
    }
    (
        alive.iter().map(|a| stands[*a]).collect(),
        alive.iter().map(|a| std::mem::take(&mut rows[*a])).collect(),
    )
}
