//! The hold chart: how the needle fell, the limit, and the fitted line with its band.

use crate::diagram::sketch::{Sketch, at, dashed, solid};
use crate::diagram::state::State;
use crate::scene::{Anchor, Point, Role, Scene, Weight};

/// One or two vacuum hold tests on one pair of axes. Readings in the gauge's unit, times in seconds.
#[derive(Debug, Clone, PartialEq, Default)]
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

/// Draws the chart, 360 by 260 units.
#[must_use]
pub fn hold_chart(chart: &HoldChart) -> Scene {
    let mut sketch = Sketch::new();
    let all = || chart.series.iter().flat_map(|s| s.points.iter().copied());
    let seconds = all().map(|p| p.0).fold(1.0, f64::max);
    let top = all().map(|p| p.1).fold(1.0, f64::max);
    #[expect(clippy::cast_possible_truncation, reason = "a place to draw")]
    let place = |(t, v): (f64, f64)| -> Point {
        at(
            44.0 + 300.0 * (t / seconds) as f32,
            220.0 - 200.0 * (v / top) as f32,
        )
    };
    sketch.line(
        &[at(44.0, 20.0), at(44.0, 220.0), at(344.0, 220.0)],
        solid(1.5, Role::Ink),
    );
    if let Some(limit) = &chart.limit {
        let points: Vec<Point> = limit.points.iter().map(|p| place(*p)).collect();
        sketch.line(&points, dashed(2.0, Role::Ink));
    }
    for series in &chart.series {
        let role = series.state.map_or(Role::Ink, State::role);
        let fit: Vec<Point> = series.fit.iter().map(|f| place((f.seconds, f.value))).collect();
        sketch.line(&fit, solid(2.0, role));
        for point in &series.points {
            sketch.circle(place(*point), 4.0, None, Some(role));
        }
    }
    sketch.text(
        at(194.0, 252.0),
        Anchor::Middle,
        14.0,
        Weight::Regular,
        Role::QuietInk,
        &chart.time_label,
    );
    sketch.text(
        at(4.0, 14.0),
        Anchor::Start,
        14.0,
        Weight::Regular,
        Role::QuietInk,
        &chart.unit,
    );
    sketch.finish(360.0, 260.0, &chart.alt)
}
