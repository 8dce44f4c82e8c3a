//! Does the 95 % interval hold the truth 95 times in a hundred, and is it no wider than it must be?

use holdfast_measure::{HoldData, LeakPosterior, infer_leak};

use crate::exact::{Curve, Curves, exact};
use crate::physics::Shape;
use crate::simulator::{Draw, HoldTest, Watch};

/// Two thousand would leave a decade's share uncertain by 1 %, half of the band.
const TESTS: usize = 8000;
const COMPARED: usize = 160;
/// Decades of the truth, std cm³/min.
const EDGES: [f64; 5] = [0.5, 5.0, 50.0, 500.0, 5000.0];

fn simulate(draw: &mut Draw, truth: f64, watch: Watch) -> (HoldTest, HoldData, LeakPosterior) {
    let mut test = HoldTest::random(draw, truth);
    let last = test.sensible_time();
    let data = test.watch(draw, watch, last);
    let posterior = infer_leak(&test.setup, &data).unwrap();
    (test, data, posterior)
}

/// One simulated test: what leak it had, and on which side of the interval it fell.
struct Row {
    truth: f64,
    watch: Watch,
    under: bool,
    over: bool,
}

/// Share of rows whose interval holds the truth, printed with the misses on both sides.
fn report<'a>(name: &str, rows: impl Iterator<Item = &'a Row>) -> f64 {
    let (mut all, mut under, mut over) = (0, 0, 0);
    for row in rows {
        all += 1;
        under += usize::from(row.under);
        over += usize::from(row.over);
    }
    let share = 1.0 - (under + over) as f64 / all as f64;
    println!(
        "{name:>12}: {:.1} % of {all} (truth below the interval {under}, above {over})",
        share * 100.0
    );
    share
}

#[test]
fn the_interval_holds_the_truth_as_often_as_it_says() {
    let mut draw = Draw::seeded(20_251_125);
    let rows: Vec<Row> = (0..TESTS)
        .map(|index| {
            let truth = draw.log_uniform(0.5, 5000.0);
            let watch = [Watch::Once, Watch::Once, Watch::Thrice, Watch::Trace][index % 4];
            let (_, _, posterior) = simulate(&mut draw, truth, watch);
            let (low, high) = posterior.interval(0.95);
            Row {
                truth,
                watch,
                under: truth < low.std_cm3_min(),
                over: truth > high.std_cm3_min(),
            }
        })
        .collect();
    let all = report("all", rows.iter());
    let decades: Vec<f64> = EDGES
        .windows(2)
        .map(|edge| {
            let decade = rows
                .iter()
                .filter(|row| row.truth >= edge[0] && row.truth < edge[1]);
            report(&format!("{}-{}", edge[0], edge[1]), decade)
        })
        .collect();
    for watch in [Watch::Once, Watch::Thrice, Watch::Trace] {
        report(
            &format!("{watch:?}"),
            rows.iter().filter(|row| row.watch == watch),
        );
    }
    assert!((0.93..=0.97).contains(&all), "{all}");
    for share in decades {
        // The band is 93 to 97 %; one standard deviation of the count of two thousand is half a per cent.
        assert!((0.925..=0.975).contains(&share), "{share}");
    }
}

fn median(figures: impl Iterator<Item = f64>) -> f64 {
    let mut sorted: Vec<f64> = figures.collect();
    sorted.sort_by(f64::total_cmp);
    sorted[sorted.len() / 2]
}

/// Readings by hand only: for a trace the brute force keeps too few of its draws, see the next test.
#[test]
fn the_interval_is_little_wider_than_the_exact_one() {
    let curves = Curves {
        hole: Curve::of(Shape::Hole),
        capillary: Curve::of(Shape::Capillary),
    };
    let mut draw = Draw::seeded(7);
    let mut ratios: Vec<(f64, f64)> = Vec::new();
    let (mut thin, mut held) = (0, 0);
    for index in 0..COMPARED {
        let truth = draw.log_uniform(0.5, 5000.0);
        let watch = if index % 3 == 2 {
            Watch::Thrice
        } else {
            Watch::Once
        };
        let (test, data, posterior) = simulate(&mut draw, truth, watch);
        let (wide_low, wide_high) = posterior.interval(0.999);
        let around = (wide_low.std_cm3_min() / 2.0, wide_high.std_cm3_min() * 2.0);
        let mut by_force = |draws| exact(&curves, &test, &data, around, &mut draw, draws);
        let mut best = by_force(30_000);
        if best.draws < 200.0 {
            best = by_force(300_000);
        }
        if best.draws < 150.0 {
            thin += 1;
            continue;
        }
        held += usize::from((best.low..=best.high).contains(&truth));
        let (low, high) = posterior.interval(0.95);
        ratios.push((
            truth,
            (high.std_cm3_min() - low.std_cm3_min()) / (best.high - best.low),
        ));
    }
    for edge in EDGES.windows(2) {
        let decade = ratios
            .iter()
            .filter(|r| r.0 >= edge[0] && r.0 < edge[1])
            .map(|r| r.1);
        println!(
            "{:>6}-{:<6} median width / exact {:.3}",
            edge[0],
            edge[1],
            median(decade)
        );
    }
    let all = median(ratios.iter().map(|r| r.1));
    println!(
        "all: {all:.3}; the exact interval itself holds {held} of {}",
        ratios.len()
    );
    println!("{thin} of {COMPARED} left out: too few effective draws to know the exact width");
    assert!(all <= 1.3, "{all}");
    assert!(thin <= COMPARED / 8, "{thin}");
}

/// No posterior can be narrower than the uncertainty of volume and gauge slope alone make it; so a width close to
/// that is close to the exact one. Only where a leak stands clear of the errors of reading.
#[test]
fn of_a_trace_the_interval_is_little_wider_than_the_volume_makes_it() {
    let mut draw = Draw::seeded(8);
    for edge in EDGES.windows(2).skip(1) {
        let ratios = (0..250).map(|_| {
            let truth = draw.log_uniform(edge[0], edge[1]);
            let (test, _, posterior) = simulate(&mut draw, truth, Watch::Trace);
            let (low, high) = posterior.interval(0.95);
            let share = test.volume_share.hypot(test.setup.gauge.relative_u_slope());
            let least = (1.96 * share).exp() - (-1.96 * share).exp();
            (high.std_cm3_min() - low.std_cm3_min()) / truth / least
        });
        let ratio = median(ratios.collect::<Vec<_>>().into_iter());
        println!(
            "{:>6}-{:<6} median width / width by volume and slope alone {ratio:.3}",
            edge[0], edge[1]
        );
        assert!(edge[0] < 50.0 || ratio <= 1.3, "{ratio}");
    }
}
