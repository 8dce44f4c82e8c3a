//! Published worked examples of troubleshooting and diagnosis, asked of the core's own enumeration and search.

use approx::assert_abs_diff_eq;
use holdfast_diagnose::{Network, NetworkTest, Problem, Ready, State, TestId, TestKind, Trial, plan_small};

/// Causes by what is true in them, with their probabilities.
struct Worlds<const N: usize>(Vec<([bool; N], f64)>);

/// A yes-or-no test, by its probability of yes in each world, and what was seen.
type Seen<'t, const N: usize> = (&'t dyn Fn([bool; N]) -> f64, bool);

impl<const N: usize> Worlds<N> {
    /// Every combination of so many things, weighed by `p`.
    fn all(p: impl Fn([bool; N]) -> f64) -> Self {
        let world = |number: usize| std::array::from_fn(|bit| number >> bit & 1 == 1);
        Self((0..1 << N).map(world).map(|w| (w, p(w))).collect())
    }

    /// Probability of what `is` in all worlds after tests, each by its probability of yes and what was seen.
    fn after(&self, seen: &[Seen<'_, N>], is: impl Fn([bool; N]) -> bool) -> f64 {
        let test = |(yes, _): &Seen<'_, N>| {
            let row: Vec<f64> = self.0.iter().map(|(w, _)| yes(*w)).collect();
            NetworkTest {
                test: TestId::of(TestKind::Look),
                minutes: 1.0,
                outcomes: vec!["no".into(), "yes".into()],
                chances: vec![row.iter().map(|p| 1.0 - p).collect(), row],
            }
        };
        let network = Network {
            causes: self.0.iter().map(|(w, p)| (format!("{w:?}"), *p)).collect(),
            tests: seen.iter().map(test).collect(),
        };
        let outcomes: Vec<(usize, usize)> = seen
            .iter()
            .enumerate()
            .map(|(n, (_, yes))| (n, usize::from(*yes)))
            .collect();
        let posterior = network.posterior(&outcomes);
        self.0
            .iter()
            .zip(posterior)
            .filter(|((w, _), _)| is(*w))
            .map(|(_, p)| p)
            .sum()
    }
}

fn of(yes: bool, p: f64) -> f64 {
    if yes { p } else { 1.0 - p }
}

/// Source: the alarm network of a standard textbook of artificial intelligence (A and M from there, B, E and J from memory);
/// figures by pgmpy's variable elimination, the textbook prints 0.284.
#[test]
fn the_burglary_alarm() {
    let worlds = Worlds::all(|[burglary, earthquake, alarm]| {
        let rings = match (burglary, earthquake) {
            (true, true) => 0.95,
            (true, false) => 0.94,
            (false, true) => 0.29,
            (false, false) => 0.001,
        };
        of(burglary, 0.001) * of(earthquake, 0.002) * of(alarm, rings)
    });
    let john = |[_, _, alarm]: [bool; 3]| if alarm { 0.90 } else { 0.05 };
    let mary = |[_, _, alarm]: [bool; 3]| if alarm { 0.70 } else { 0.01 };
    let both: [Seen<'_, 3>; 2] = [(&john, true), (&mary, true)];
    for (is, printed) in [(0, 0.284_172), (1, 0.176_067), (2, 0.760_692)] {
        assert_abs_diff_eq!(worlds.after(&both, |w| w[is]), printed, epsilon = 1e-6);
    }
    assert_abs_diff_eq!(worlds.after(&both[..1], |w| w[0]), 0.016_284, epsilon = 1e-6);
}

/// Source: S. L. Lauritzen and D. J. Spiegelhalter 1988, the chest clinic; figures by pgmpy's variable elimination.
#[test]
fn the_chest_clinic() {
    let worlds = Worlds::all(|[asia, smoke, tub, lung, bronc]| {
        of(asia, 0.01)
            * 0.5
            * of(tub, if asia { 0.05 } else { 0.01 })
            * of(lung, if smoke { 0.10 } else { 0.01 })
            * of(bronc, if smoke { 0.60 } else { 0.30 })
    });
    let asia = |[asia, ..]: [bool; 5]| f64::from(asia);
    let xray = |[_, _, tub, lung, _]: [bool; 5]| if tub || lung { 0.98 } else { 0.05 };
    let breath = |[_, _, tub, lung, bronc]: [bool; 5]| match (tub || lung, bronc) {
        (true, true) => 0.9,
        (true, false) => 0.7,
        (false, true) => 0.8,
        (false, false) => 0.1,
    };
    let seen: [Seen<'_, 5>; 3] = [(&xray, true), (&breath, true), (&asia, true)];
    for (seen, printed) in [
        (&seen[1..2], [0.018_845, 0.102_759, 0.833_967]),
        (&seen[..2], [0.113_933, 0.621_253, 0.681_869]),
        (&seen[1..], [0.087_751, 0.099_525, 0.811_402]),
        (&seen[..], [0.391_712, 0.444_271, 0.628_822]),
    ] {
        for (n, p) in printed.into_iter().enumerate() {
            assert_abs_diff_eq!(worlds.after(seen, |w| w[2 + n]), p, epsilon = 1e-6);
        }
    }
}

/// Source: a textbook's example of a car that does not start (its structure; the tables from memory), where an empty tank
/// explains the dirty plugs away; figures by pgmpy's variable elimination.
#[test]
fn the_car_that_does_not_start() {
    let worlds = Worlds::all(|[fuel, clean]| of(fuel, 0.98) * of(clean, 0.96));
    let starts = |[fuel, clean]: [bool; 2]| match (fuel, clean) {
        (true, true) => 0.99,
        (true, false) => 0.01,
        (false, _) => 0.0,
    };
    let half = |[fuel, _]: [bool; 2]| if fuel { 0.60 } else { 0.001 };
    let empty = |[fuel, _]: [bool; 2]| if fuel { 0.01 } else { 0.998 };
    for (meter, no_fuel, dirty) in [
        (None, 0.293_186, 0.580_626),
        (Some(&half as &dyn Fn([bool; 2]) -> f64), 0.000_691, 0.804_350),
        (Some(&empty), 0.976_413, 0.058_041),
    ] {
        let mut seen: Vec<Seen<'_, 2>> = vec![(&starts, false)];
        seen.extend(meter.map(|m| (m, true)));
        assert_abs_diff_eq!(worlds.after(&seen, |w| !w[0]), no_fuel, epsilon = 1e-6);
        assert_abs_diff_eq!(worlds.after(&seen, |w| !w[1]), dirty, epsilon = 1e-6);
    }
}

/// One fault, one certain test for each component; the component that is left last needs none.
fn certain(p: &[f64], minutes: &[f64]) -> Problem {
    Problem {
        states: p
            .iter()
            .enumerate()
            .map(|(n, p)| State {
                p: *p,
                right: vec![n],
                explains: true,
            })
            .collect(),
        aside: Vec::new(),
        tests: minutes
            .iter()
            .enumerate()
            .map(|(n, minutes)| {
                let bad: Vec<f64> = (0..p.len()).map(|state| f64::from(state == n)).collect();
                Trial {
                    minutes: *minutes,
                    running: None,
                    connected: None,
                    at_hot_parts: false,
                    chances: vec![bad.iter().map(|b| 1.0 - b).collect(), bad],
                }
            })
            .collect(),
        ready: Ready {
            running: false,
            connected: true,
            hot_minutes: 0.0,
        },
        engine_minutes: 0.0,
        connector_minutes: 0.0,
        heat_minutes: 0.5,
        cools_minutes: 20.0,
        enough: 1.0 - 1e-9,
        explained: 0.5,
        unexplained_worth: 0.0,
        wrong_minutes: 1e6,
        undecided_minutes: 0.0,
    }
}

/// Source: J. Kalagnanam and M. Henrion, arXiv 1304.2362, for one certain test a component; where the last one is inferred,
/// least minutes by brute force over every order (7.5 and 10.7), which is not the order of minutes over probability.
#[test]
fn components_are_tested_in_the_cheapest_order_where_the_last_is_inferred() {
    let best = |p: &[f64], minutes: &[f64]| plan_small(&certain(p, minutes)).unwrap();
    let three = best(&[0.5, 0.3, 0.2], &[10.0, 4.0, 5.0]);
    assert_eq!(three.test, 1);
    assert_abs_diff_eq!(three.expected(), 7.5, epsilon = 1e-6);
    let five = best(&[0.40, 0.25, 0.20, 0.10, 0.05], &[4.0, 12.0, 6.0, 8.0, 1.0]);
    assert_abs_diff_eq!(five.expected(), 10.7, epsilon = 1e-6);
}
