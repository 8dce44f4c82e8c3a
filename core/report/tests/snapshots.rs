//! Scenes as text, so that a change in a drawing is read before it is looked at.

#[path = "layouts/mod.rs"]
mod layouts;

use holdfast_report::{
    Item, Paper, Point, Scene, Stroke, band, circuit_map, connector_face, gauge, hold_chart, pages,
};
use layouts::{LAYOUTS, map, sample_report, samples};

fn place(p: &Point) -> String {
    format!("{:.0},{:.0}", p.x, p.y)
}

fn pen(stroke: &Option<Stroke>) -> String {
    stroke.map_or_else(String::new, |s| {
        format!(" line {:?} {:.1} {:?}", s.role, s.width, s.dash)
    })
}

/// One line an item, lengths rounded to whole units.
fn described(scene: &Scene) -> String {
    let mut out = format!("{:.0} × {:.0}: {}\n", scene.width, scene.height, scene.alt);
    for item in &scene.items {
        let line = match item {
            Item::Path {
                points,
                ends,
                stroke,
                fill,
            } => {
                let shown: Vec<String> = points.iter().take(5).map(place).collect();
                let more = if points.len() > 5 {
                    format!(" … {}", points.len())
                } else {
                    String::new()
                };
                let fill = fill.map_or_else(String::new, |f| format!(" fill {f:?}"));
                format!("path {ends:?} {}{more}{}{fill}", shown.join(" "), pen(stroke))
            }
            Item::Circle {
                centre,
                radius,
                stroke,
                fill,
            } => {
                let fill = fill.map_or_else(String::new, |f| format!(" fill {f:?}"));
                format!("circle {} r {radius:.1}{}{fill}", place(centre), pen(stroke))
            }
            Item::Arc {
                centre,
                radius,
                start_deg,
                sweep_deg,
                stroke,
            } => {
                let line = pen(&Some(*stroke));
                format!(
                    "arc {} r {radius:.0} from {start_deg:.0} by {sweep_deg:.0}{line}",
                    place(centre)
                )
            }
            Item::Text {
                at,
                anchor,
                size,
                weight,
                role,
                text,
            } => {
                format!(
                    "text {} {anchor:?} {size:.1} {weight:?} {role:?} “{text}”",
                    place(at)
                )
            }
            Item::Image {
                path,
                at,
                width,
                height,
            } => format!("image {} {width:.0} × {height:.0} {path}", place(at)),
            Item::Needle {
                pivot,
                length,
                angle_deg,
                doubt_deg,
                role,
            } => {
                format!(
                    "needle {} length {length:.0} at {angle_deg:.1} ± {doubt_deg:.1} {role:?}",
                    place(pivot)
                )
            }
            Item::Region {
                id,
                at,
                width,
                height,
                label,
            } => {
                format!("region {id} {} {width:.0} × {height:.0} “{label}”", place(at))
            }
        };
        out.push_str(&line);
        out.push('\n');
    }
    out
}

#[test]
fn map_with_two_mounts_in_a_job() {
    insta::assert_snapshot!(described(&circuit_map(&samples::map_in_a_job())));
}

#[test]
fn map_with_four_mounts() {
    insta::assert_snapshot!(described(&circuit_map(&map(LAYOUTS[4].1))));
}

#[test]
fn gauge_while_pumping() {
    insta::assert_snapshot!(described(&gauge(&samples::dial())));
}

#[test]
fn chart_before_and_after() {
    insta::assert_snapshot!(described(&hold_chart(&samples::before_after())));
}

#[test]
fn connector_with_leads() {
    insta::assert_snapshot!(described(&connector_face(&samples::connector())));
}

#[test]
fn band_with_a_low_reading() {
    insta::assert_snapshot!(described(&band(&samples::volts_loaded())));
}

#[test]
fn customers_page() {
    insta::assert_snapshot!(described(
        &pages(&sample_report::report(10, None), Paper::A4)[0].scene
    ));
}
