//! Published worked examples of troubleshooting and diagnosis, one test each, its source in the first line.

use crate::network::{Enumerates, Network, Plain};
use crate::small::{MostDoubtAMinute, Planner, SmallProblem};

fn posterior(network: &Network, seen: &[(&str, bool)]) -> Vec<f64> {
    let number = |id: &str| network.tests.iter().position(|t| t.id == id).unwrap();
    let seen: Vec<(usize, usize)> = seen
        .iter()
        .map(|(id, yes)| (number(id), usize::from(*yes)))
        .collect();
    Plain.posterior(network, &seen)
}

fn close(found: f64, printed: f64, within: f64) {
    assert!((found - printed).abs() <= within, "{found} {printed}");
}

/// Takes the tests in an order that was fixed before.
struct Order(Vec<usize>);

impl Planner for Order {
    fn next(&self, _: &SmallProblem, _: &[f64], left: &[usize]) -> usize {
        *self.0.iter().find(|t| left.contains(t)).unwrap()
    }
}

#[test]
fn components_are_tested_in_the_order_of_cost_over_probability() {
    // Source: J. Kalagnanam and M. Henrion, "A comparison of decision analysis and expert rules for sequential diagnosis",
    // arXiv 1304.2362: with one fault and certain tests the best order is by rising c/p. Numbers worked out by brute force.
    let (p, c) = ([0.40, 0.25, 0.20, 0.10, 0.05], [4.0, 12.0, 6.0, 8.0, 1.0]);
    let problem = SmallProblem::classic(&p, &c, false);
    close(problem.optimum(), 12.9, 1e-6);
    close(problem.with(&Order(vec![0, 4, 2, 1, 3])), 12.9, 1e-6);
    close(problem.with(&Order(vec![3, 1, 2, 4, 0])), 24.75, 1e-6);
    let problem = SmallProblem::classic(&[0.5, 0.3, 0.2], &[10.0, 4.0, 5.0], false);
    close(problem.optimum(), 12.0, 1e-6);
    close(problem.with(&Order(vec![1, 0, 2])), 12.0, 1e-6);
}

#[test]
fn the_order_changes_where_the_last_component_is_inferred() {
    // Source: worked out by hand for the case that the last cause left needs no test: order 2 3 1 costs 4 + 0.7 · 5.
    let problem = SmallProblem::classic(&[0.5, 0.3, 0.2], &[10.0, 4.0, 5.0], true);
    close(problem.optimum(), 7.5, 1e-9);
    close(problem.with(&Order(vec![1, 0, 2])), 11.0, 1e-9);
    let (p, c) = ([0.40, 0.25, 0.20, 0.10, 0.05], [4.0, 12.0, 6.0, 8.0, 1.0]);
    let problem = SmallProblem::classic(&p, &c, true);
    close(problem.optimum(), 10.7, 1e-9);
    close(problem.with(&Order(vec![0, 4, 2, 1, 3])), 12.1, 1e-9);
}

#[test]
fn nobody_beats_the_optimum() {
    // Source: the definition of an optimum; the problems are `exact.rs`'s.
    for problem in crate::exact::problems(60) {
        let (best, greedy) = (problem.optimum(), problem.with(&MostDoubtAMinute));
        assert!(best <= greedy + 1e-9, "{best} {greedy}");
    }
}

#[test]
fn an_imperfect_test_changes_the_odds_by_bayes_s_rule() {
    // Source: Bayes's rule; sensitivity 0.90, specificity 0.95, prior 0.30.
    let network = Network::of(&[("fault", 0.30), ("sound", 0.70)]).asking("test", &[0.90, 0.05]);
    close(posterior(&network, &[("test", true)])[0], 0.885_246, 1e-6);
    close(posterior(&network, &[("test", false)])[0], 0.043_165, 1e-6);
    let network = Network::of(&[("fault", 0.10), ("sound", 0.90)]).asking("test", &[0.95, 0.10]);
    close(posterior(&network, &[("test", true)])[0], 0.513_514, 1e-6);
    close(posterior(&network, &[("test", false)])[0], 0.006_135, 1e-6);
}

#[test]
fn two_findings_about_three_causes_multiply() {
    // Source: Bayes's rule for three exclusive causes and independent findings.
    let network = Network::of(&[("a", 0.5), ("b", 0.3), ("c", 0.2)])
        .asking("first", &[0.9, 0.2, 0.5])
        .asking("second", &[0.3, 0.7, 0.5]);
    let found = posterior(&network, &[("first", true), ("second", true)]);
    for (p, printed) in found.iter().zip([0.594_714, 0.185_022, 0.220_264]) {
        close(*p, printed, 1e-6);
    }
}

#[test]
fn the_burglary_alarm() {
    // Source: the alarm network of a standard textbook of artificial intelligence (tables of B, E and J from memory);
    // figures by pgmpy's variable elimination.
    let mut causes = Vec::new();
    let (mut john, mut mary) = (Vec::new(), Vec::new());
    for (burglary, earthquake) in [(true, true), (true, false), (false, true), (false, false)] {
        let alarm = match (burglary, earthquake) {
            (true, true) => 0.95,
            (true, false) => 0.94,
            (false, true) => 0.29,
            (false, false) => 0.001,
        };
        let p = if burglary { 0.001 } else { 0.999 } * if earthquake { 0.002 } else { 0.998 };
        for (rings, q) in [(true, alarm), (false, 1.0 - alarm)] {
            causes.push((format!("{burglary} {earthquake} {rings}"), p * q));
            john.push(if rings { 0.90 } else { 0.05 });
            mary.push(if rings { 0.70 } else { 0.01 });
        }
    }
    let named: Vec<(&str, f64)> = causes.iter().map(|(n, p)| (n.as_str(), *p)).collect();
    let network = Network::of(&named).asking("john", &john).asking("mary", &mary);
    let found = posterior(&network, &[("john", true), ("mary", true)]);
    let sum = |of: &[usize]| -> f64 { of.iter().map(|n| found[*n]).sum() };
    close(sum(&[0, 1, 2, 3]), 0.284_172, 1e-6);
    close(sum(&[0, 1, 4, 5]), 0.176_067, 1e-6);
    close(sum(&[0, 2, 4, 6]), 0.760_692, 1e-6);
    let found = posterior(&network, &[("john", true)]);
    close(found.iter().take(4).sum(), 0.016_284, 1e-6);
}

#[test]
fn the_chest_clinic() {
    // Source: S. L. Lauritzen and D. J. Spiegelhalter 1988; figures by pgmpy's variable elimination.
    let mut causes = Vec::new();
    let (mut xray, mut short_of_breath, mut asia) = (Vec::new(), Vec::new(), Vec::new());
    let both = [true, false];
    let mut flags = Vec::new();
    for trip in both {
        for smoke in both {
            for tub in both {
                for lung in both {
                    for bronc in both {
                        let pick = |yes: bool, p: f64| if yes { p } else { 1.0 - p };
                        let p = pick(trip, 0.01)
                            * 0.5
                            * pick(tub, if trip { 0.05 } else { 0.01 })
                            * pick(lung, if smoke { 0.10 } else { 0.01 })
                            * pick(bronc, if smoke { 0.60 } else { 0.30 });
                        let either = tub || lung;
                        flags.push([tub, lung, bronc, smoke]);
                        causes.push((flags.len().to_string(), p));
                        asia.push(f64::from(u8::from(trip)));
                        xray.push(if either { 0.98 } else { 0.05 });
                        short_of_breath.push(match (either, bronc) {
                            (true, true) => 0.9,
                            (true, false) => 0.7,
                            (false, true) => 0.8,
                            (false, false) => 0.1,
                        });
                    }
                }
            }
        }
    }
    let named: Vec<(&str, f64)> = causes.iter().map(|(n, p)| (n.as_str(), *p)).collect();
    let network = Network::of(&named)
        .asking("asia", &asia)
        .asking("xray", &xray)
        .asking("dysp", &short_of_breath);
    let share = |found: &[f64], of: usize| -> f64 {
        found
            .iter()
            .zip(&flags)
            .filter(|(_, f)| f[of])
            .map(|(p, _)| p)
            .sum()
    };
    for (seen, printed) in [
        (
            &[("asia", true), ("dysp", true)][..],
            [0.087_751, 0.099_525, 0.811_402],
        ),
        (&[("dysp", true)], [0.018_845, 0.102_759, 0.833_967]),
        (
            &[("xray", true), ("dysp", true)],
            [0.113_933, 0.621_253, 0.681_869],
        ),
        (
            &[("asia", true), ("xray", true), ("dysp", true)],
            [0.391_712, 0.444_271, 0.628_822],
        ),
    ] {
        let found = posterior(&network, seen);
        for (of, p) in printed.into_iter().enumerate() {
            close(share(&found, of), p, 1e-6);
        }
    }
}

#[test]
fn a_car_that_will_not_start() {
    // Source: the no-start network of a textbook (structure published, tables from memory); figures by pgmpy.
    let mut causes = Vec::new();
    let (mut empty, mut half, mut starts) = (Vec::new(), Vec::new(), Vec::new());
    for (fuel, clean) in [(true, true), (true, false), (false, true), (false, false)] {
        let p = if fuel { 0.98 } else { 0.02 } * if clean { 0.96 } else { 0.04 };
        causes.push((format!("{fuel} {clean}"), p));
        empty.push(if fuel { 0.01 } else { 0.998 });
        half.push(if fuel { 0.60 } else { 0.001 });
        starts.push(match (fuel, clean) {
            (true, true) => 0.99,
            (true, false) => 0.01,
            _ => 0.0,
        });
    }
    let named: Vec<(&str, f64)> = causes.iter().map(|(n, p)| (n.as_str(), *p)).collect();
    let network = Network::of(&named)
        .asking("starts", &starts)
        .asking("empty", &empty)
        .asking("half", &half);
    for (seen, no_fuel, dirty) in [
        (&[("starts", false)][..], 0.293_186, 0.580_626),
        (&[("starts", false), ("half", true)], 0.000_691, 0.804_350),
        (&[("starts", false), ("empty", true)], 0.976_413, 0.058_041),
    ] {
        let found = posterior(&network, seen);
        close(found[2] + found[3], no_fuel, 1e-6);
        close(found[1] + found[3], dirty, 1e-6);
    }
}
