//! The hold chart: how the needle fell, the limit, and the fitted line with its band.

use crate::diagram::label::cut_to;
use crate::diagram::scale::{number, step};
use crate::diagram::sketch::{Sketch, at, dashed, solid};
use crate::diagram::state::State;
use crate::scene::{Anchor, Point, Role, Scene, Weight};

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
    /// Readings: seconds since pumping stopped, and gauge reading. Values that are not finite are left out.
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

const WIDTH: f32 = 360.0;
const HEIGHT: f32 = 264.0;
const LEFT: f32 = 46.0;
const RIGHT: f32 = 282.0;
const TOP: f32 = 34.0;
const BOTTOM: f32 = 216.0;
const SMALL: f32 = 14.0;
/// Readings that lie closer than this share of the highest fill no more of the axis: a still needle looks still.
const LEAST_RANGE: f64 = 0.1;
/// More points than this are thinned out to every second, third, … for drawing.
const MOST_POINTS: usize = 60;
/// Up to here each point has the shape of its state; in a trace only the last has.
const FEW_POINTS: usize = 12;

/// From seconds and reading to the paper.
struct Axes {
    seconds: f64,
    low: f64,
    high: f64,
    time_step: f64,
    value_step: f64,
}

impl Axes {
    fn over(chart: &HoldChart) -> Self {
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
        let value_step = step(high - low, 5.0);
        let seconds = seconds.max(1.0);
        let floor = if low >= 0.0 { 0.0 } else { f64::NEG_INFINITY };
        Self {
            seconds,
            low: ((low / value_step - 0.2).floor() * value_step).max(floor),
            high: (high / value_step + 0.2).ceil() * value_step,
            time_step: step(seconds, 6.0),
            value_step,
        }
    }

    fn x(&self, seconds: f64) -> f32 {
        LEFT + (RIGHT - LEFT) * (seconds / self.seconds).clamp(0.0, 1.0) as f32
    }

    fn y(&self, value: f64) -> f32 {
        BOTTOM - (BOTTOM - TOP) * ((value - self.low) / (self.high - self.low)).clamp(0.0, 1.0) as f32
    }

    fn at(&self, seconds: f64, value: f64) -> Point {
        at(self.x(seconds), self.y(value))
    }

    fn line(&self, points: &[(f64, f64)]) -> Vec<Point> {
        points
            .iter()
            .filter(|(t, v)| t.is_finite() && v.is_finite())
            .map(|(t, v)| self.at(*t, *v))
            .collect()
    }
}

/// Words at the right end of a line.
struct End {
    y: f32,
    text: String,
    role: Role,
    weight: Weight,
}

/// Draws the chart, 360 by 264 units.
#[must_use]
pub fn hold_chart(chart: &HoldChart) -> Scene {
    let axes = Axes::over(chart);
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
    frame(&mut sketch, chart, &axes);
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
        if fit.len() > 1 {
            sketch.line(&fit, solid(2.2, role));
        }
        let points = axes.line(&series.points);
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

/// Axes, graduation and their words.
fn frame(sketch: &mut Sketch, chart: &HoldChart, axes: &Axes) {
    let lines = ((axes.high - axes.low) / axes.value_step).round() as i64;
    for i in 0..=lines {
        let value = axes.low + axes.value_step * i as f64;
        let y = axes.y(value);
        sketch.line(&[at(LEFT, y), at(RIGHT, y)], solid(0.5, Role::Line));
        let text = number(value, axes.value_step, chart.decimal);
        sketch.text(
            at(LEFT - 10.0, y + 5.0),
            Anchor::End,
            SMALL,
            Weight::Regular,
            Role::Ink,
            &text,
        );
    }
    sketch.line(&[at(LEFT, BOTTOM), at(RIGHT, BOTTOM)], solid(1.5, Role::Ink));
    let ticks = (axes.seconds / axes.time_step + 1e-6).floor() as i64;
    for i in 0..=ticks {
        let seconds = axes.time_step * i as f64;
        let x = axes.x(seconds);
        sketch.line(&[at(x, BOTTOM), at(x, BOTTOM + 5.0)], solid(1.5, Role::Ink));
        let text = number(seconds, axes.time_step, chart.decimal);
        sketch.text(
            at(x, BOTTOM + 20.0),
            Anchor::Middle,
            SMALL,
            Weight::Regular,
            Role::Ink,
            &text,
        );
    }
    let middle = at((LEFT + RIGHT) / 2.0, BOTTOM + 40.0);
    sketch.text(
        middle,
        Anchor::Middle,
        SMALL,
        Weight::Regular,
        Role::QuietInk,
        &chart.time_label,
    );
    sketch.text(
        at(LEFT - 34.0, 16.0),
        Anchor::Start,
        SMALL,
        Weight::Regular,
        Role::QuietInk,
        &chart.unit,
    );
}

/// Names the lines at their right ends, pushed apart where they would overlap.
fn name_ends(sketch: &mut Sketch, mut ends: Vec<End>) {
    const APART: f32 = 17.0;
    ends.retain(|e| !e.text.is_empty());
    ends.sort_by(|a, b| a.y.total_cmp(&b.y));
    let mut least = TOP;
    for end in &mut ends {
        end.y = end.y.max(least);
        least = end.y + APART;
    }
    let mut most = BOTTOM;
    for end in ends.iter_mut().rev() {
        end.y = end.y.min(most);
        most = end.y - APART;
    }
    for end in ends {
        let text = cut_to(&end.text, end.weight, SMALL, WIDTH - RIGHT - 9.0);
        sketch.text(
            at(RIGHT + 9.0, end.y + 5.0),
            Anchor::Start,
            SMALL,
            end.weight,
            end.role,
            &text,
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::Item;

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
