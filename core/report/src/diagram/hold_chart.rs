//! The hold chart: how the needle fell, the limit, and the fitted line with its band.

use crate::diagram::axes::{Axes, End, HEIGHT, RIGHT, WIDTH, name_ends};
use crate::diagram::sketch::{Sketch, at, dashed, dotted, solid};
use crate::diagram::state::State;
use crate::scene::{Role, Scene, Weight};

/// One or two vacuum hold tests on one pair of axes. Readings in the gauge's unit, times in seconds.
#[derive(Debug, Clone, PartialEq)]
pub struct HoldChart {
    /// Alternative text.
    pub alt: String,
    /// Unit of the readings, written on the upright axis, such as "inHg".
    pub unit: String,
    /// Words under the time axis, such as "seconds".
    pub time_label: String,
    /// Tests in time order: one, or before and after.
    pub series: Vec<HoldSeries>,
    /// The limit.
    pub limit: Option<LimitLine>,
    /// Decimal mark of the person's language, for the numbers on the axes.
    pub decimal: char,
}

impl Default for HoldChart {
    fn default() -> Self {
        Self {
            alt: String::new(),
            unit: "inHg".into(),
            time_label: String::new(),
            series: Vec::new(),
            limit: None,
            decimal: '.',
        }
    }
}

/// One test's readings and fit.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct HoldSeries {
    /// Name, such as "before".
    pub label: String,
    /// What the test said; decides colour and shape of the points.
    pub state: Option<State>,
    /// Readings: seconds since pumping stopped, and gauge reading. Values that are not finite are left out. A single
    /// one without a fit is the highest that was reached: a dotted level.
    pub points: Vec<(f64, f64)>,
    /// The fitted fall, in rising time.
    pub fit: Vec<FitPoint>,
}

/// A point of the fitted line.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct FitPoint {
    /// Seconds since pumping stopped.
    pub seconds: f64,
    /// Fitted reading.
    pub value: f64,
    /// Lower edge of its band.
    pub low: f64,
    /// Upper edge of its band.
    pub high: f64,
}

/// The line below which a fall is over the limit.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LimitLine {
    /// Words on the line, such as "limit".
    pub label: String,
    /// Its points: seconds and reading.
    pub points: Vec<(f64, f64)>,
}

/// Readings that lie closer than this share of the highest fill no more of the axis: a still needle looks still.
const LEAST_RANGE: f64 = 0.1;
/// More points than this are thinned out to every second, third, … for drawing.
const MOST_POINTS: usize = 60;
/// Up to here each point has the shape of its state; in a trace only the last has.
const FEW_POINTS: usize = 12;

/// Axes that show all of a chart.
fn axes_over(chart: &HoldChart) -> Axes {
    let fits = chart
        .series
        .iter()
        .flat_map(|s| s.fit.iter())
        .flat_map(|f| [(f.seconds, f.low), (f.seconds, f.high)]);
    let readings = chart.series.iter().flat_map(|s| s.points.iter().copied());
    let limit = chart.limit.iter().flat_map(|l| l.points.iter().copied());
    let (mut seconds, mut low, mut high) = (0.0_f64, f64::INFINITY, f64::NEG_INFINITY);
    for (t, value) in readings
        .chain(fits)
        .chain(limit)
        .filter(|(t, v)| t.is_finite() && v.is_finite())
    {
        seconds = seconds.max(t);
        low = low.min(value);
        high = high.max(value);
    }
    if low > high {
        (low, high) = (0.0, 1.0);
    }
    let missing = (high.abs() * LEAST_RANGE).max(1e-6) - (high - low);
    if missing > 0.0 {
        low -= missing * 0.75;
        high += missing * 0.25;
    }
    Axes::over(seconds.max(1.0), low, high)
}

/// Draws the chart, 360 by 264 units.
#[must_use]
pub fn hold_chart(chart: &HoldChart) -> Scene {
    let axes = axes_over(chart);
    let mut sketch = Sketch::new();
    let mut ends = Vec::new();
    for series in &chart.series {
        let edge = |pick: fn(&FitPoint) -> f64| -> Vec<(f64, f64)> {
            series.fit.iter().map(|f| (f.seconds, pick(f))).collect()
        };
        let mut band = axes.line(&edge(|f| f.high));
        band.extend(axes.line(&edge(|f| f.low)).into_iter().rev());
        if band.len() > 2 {
            sketch.shape(&band, None, Some(Role::Band));
        }
    }
    axes.draw(&mut sketch, &chart.unit, &chart.time_label, chart.decimal);
    if let Some(limit) = &chart.limit {
        let points = axes.line(&limit.points);
        sketch.line(&points, dashed(2.0, Role::Ink));
        if let Some(last) = points.last() {
            ends.push(End {
                y: last.y,
                text: limit.label.clone(),
                role: Role::Ink,
                weight: Weight::Regular,
            });
        }
    }
    for series in &chart.series {
        let role = series.state.map_or(Role::Ink, State::role);
        let fit: Vec<(f64, f64)> = series.fit.iter().map(|f| (f.seconds, f.value)).collect();
        let fit = axes.line(&fit);
        let points = axes.line(&series.points);
        if fit.len() > 1 {
            sketch.line(&fit, solid(2.2, role));
        } else if let [highest] = points.as_slice() {
            sketch.line(&[*highest, at(RIGHT, highest.y)], dotted(2.2, role));
        }
        let dense = points.len() > FEW_POINTS;
        for point in points.iter().step_by(points.len().div_ceil(MOST_POINTS).max(1)) {
            match series.state {
                Some(state) if !dense => sketch.state(*point, 5.5, state),
                _ => sketch.circle(*point, if dense { 1.8 } else { 4.5 }, None, Some(role)),
            }
        }
        if let (Some(state), Some(last), true) = (series.state, points.last(), dense) {
            sketch.state(*last, 5.5, state);
        }
        if let Some(last) = points.last().or(fit.last()) {
            ends.push(End {
                y: last.y,
                text: series.label.clone(),
                role,
                weight: Weight::Bold,
            });
        }
    }
    name_ends(&mut sketch, ends);
    sketch.finish(WIDTH, HEIGHT, &chart.alt)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::{Dash, Item, Point};

    fn texts(scene: &Scene) -> Vec<(String, Point)> {
        let text = |i: &Item| match i {
            Item::Text { text, at, .. } => Some((text.clone(), *at)),
            _ => None,
        };
        scene.items.iter().filter_map(text).collect()
    }

    #[test]
    fn names_of_lines_that_end_together_do_not_overlap() {
        let series = |label: &str| HoldSeries {
            label: label.into(),
            points: vec![(0.0, 20.0), (20.0, 19.5)],
            ..HoldSeries::default()
        };
        let chart = HoldChart {
            series: vec![series("before"), series("after")],
            limit: Some(LimitLine {
                label: "limit".into(),
                points: vec![(0.0, 20.0), (20.0, 19.5)],
            }),
            ..HoldChart::default()
        };
        let names: Vec<f32> = texts(&hold_chart(&chart))
            .iter()
            .filter(|t| t.1.x > RIGHT)
            .map(|t| t.1.y)
            .collect();
        assert_eq!(names.len(), 3);
        assert!(names.windows(2).all(|w| (w[0] - w[1]).abs() >= 16.9), "{names:?}");
    }

    #[test]
    fn values_that_are_not_finite_are_left_out() {
        let points = vec![(0.0, 20.0), (f64::NAN, 3.0), (5.0, f64::INFINITY), (20.0, 19.0)];
        let chart = HoldChart {
            series: vec![HoldSeries {
                points,
                ..HoldSeries::default()
            }],
            ..HoldChart::default()
        };
        let dots = hold_chart(&chart)
            .items
            .iter()
            .filter(|i| matches!(i, Item::Circle { .. }))
            .count();
        assert_eq!(dots, 2);
    }

    #[test]
    fn what_never_built_vacuum_is_a_dotted_level_on_the_axis_of_the_other() {
        let series = |label: &str, points: Vec<(f64, f64)>| HoldSeries {
            label: label.into(),
            points,
            ..HoldSeries::default()
        };
        let scene = hold_chart(&HoldChart {
            series: vec![
                series("before", vec![(0.0, 3.0)]),
                series("after", vec![(0.0, 20.0), (20.0, 20.0)]),
            ],
            ..HoldChart::default()
        });
        let dotted = |item: &Item| match item {
            Item::Path {
                points,
                stroke: Some(stroke),
                ..
            } if stroke.dash == Dash::Dotted => Some(points.clone()),
            _ => None,
        };
        let level = scene.items.iter().find_map(dotted).expect("a level");
        assert!(level[0].y == level[1].y && level[1].x == RIGHT, "{level:?}");
        let name = |words: &str| {
            texts(&scene)
                .iter()
                .find(|(text, _)| text == words)
                .map(|(_, at)| at.y)
        };
        assert!(name("before") > name("after"), "lower vacuum stands lower");
    }

    #[test]
    fn an_empty_chart_has_axes_and_no_more() {
        let scene = hold_chart(&HoldChart::default());
        assert!(!scene.items.is_empty());
        assert!(scene.items.iter().all(|i| !matches!(i, Item::Circle { .. })));
    }

    #[test]
    fn a_still_needle_looks_still() {
        let points = vec![(0.0, 20.0), (20.0, 19.95)];
        let chart = HoldChart {
            series: vec![HoldSeries {
                points,
                ..HoldSeries::default()
            }],
            ..HoldChart::default()
        };
        let scene = hold_chart(&chart);
        let places: Vec<f32> = scene
            .items
            .iter()
            .filter_map(|i| {
                if let Item::Circle { centre, .. } = i {
                    Some(centre.y)
                } else {
                    None
                }
            })
            .collect();
        assert!((places[0] - places[1]).abs() < 6.0, "{places:?}");
    }
}
