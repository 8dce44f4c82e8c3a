//! What confirmed jobs on the same kind of circuit say of how often each fault comes.

use super::causes::Fault;
use crate::Learned;
use crate::faults::Learning;

/// Updates the faults' weights: a Dirichlet distribution over the faults of the car, begun with as many made-up jobs as the
/// data say, shared out by weight, and then with the person's own. No weight moves by more than the data allow, so that the
/// past never outvotes a reading.
///
/// Source: the posterior mean of a Dirichlet distribution, (α + n) / (Σα + N), from memory.
pub(super) fn learn(faults: &mut [Fault], learned: &Learned, learning: &Learning) {
    let counted = |f: &Fault| f64::from(learned.of(&f.id));
    let of_car = |f: &&mut Fault| !f.tester;
    let all: f64 = faults.iter().filter(|f| !f.tester).map(|f| f.weight).sum();
    let jobs: f64 = faults.iter().filter(|f| !f.tester).map(counted).sum();
    if jobs <= 0.0 || all <= 0.0 {
        return;
    }
    for fault in faults.iter_mut().filter(of_car) {
        let begun_with = learning.jobs * fault.weight / all;
        let share = (begun_with + counted(fault)) / (learning.jobs + jobs);
        let times = share * all / fault.weight;
        fault.weight *= times.clamp(1.0 / learning.most_times, learning.most_times);
    }
}
