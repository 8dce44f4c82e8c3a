//! Every cause that is weighed: nothing wrong, each fault, each pair of faults.

use super::model::Model;

/// A supposed cause with the ln of its weight before any reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Hypothesis {
    faults: [usize; 2],
    number: usize,
    pub ln_weight: f64,
}

impl Hypothesis {
    /// Its faults, as numbers in [`Model::faults`], the smaller number first.
    pub fn faults(&self) -> &[usize] {
        self.faults.get(..self.number).unwrap_or_default()
    }
}

/// Every cause of a circuit.
///
/// A second fault of the car comes with a first as often as the data say, the likelier ones more often; the tester's
/// faults come with any.
pub(super) fn hypotheses(model: &Model<'_>) -> Vec<Hypothesis> {
    let faults = &model.faults;
    let of_car: Vec<f64> = faults.iter().filter(|f| !f.tester).map(|f| f.weight).collect();
    let all: f64 = of_car.iter().sum();
    let pairs = 0.5 * (all * all - of_car.iter().map(|w| w * w).sum::<f64>());
    let of_second = if pairs > 0.0 {
        model.data.rates.second_fault.value * all / pairs
    } else {
        0.0
    };
    let nothing = model.data.nothing_wrong.ln();
    let mut hypotheses = vec![Hypothesis {
        faults: [0; 2],
        number: 0,
        ln_weight: nothing,
    }];
    for (a, first) in faults.iter().enumerate() {
        hypotheses.push(Hypothesis {
            faults: [a, 0],
            number: 1,
            ln_weight: nothing + first.weight.ln(),
        });
        for (b, second) in faults.iter().enumerate().skip(a + 1) {
            if first.excludes(second) {
                continue;
            }
            let times = if first.tester || second.tester {
                1.0
            } else {
                of_second
            };
            hypotheses.push(Hypothesis {
                faults: [a, b],
                number: 2,
                ln_weight: nothing + (first.weight * second.weight * times).ln(),
            });
        }
    }
    hypotheses
}
