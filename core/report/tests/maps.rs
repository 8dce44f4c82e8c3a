//! Circuit maps of all twelve layouts: tidy, touchable, fast.

#[path = "layouts/mod.rs"]
mod layouts;

use std::collections::HashSet;
use std::hint::black_box;
use std::time::{Duration, Instant};

use holdfast_report::{
    CircuitMap, Item, MapLink, MapPart, PartKind, Point, Role, Scene, circuit_map, gauge, hold_chart,
};
use layouts::{LAYOUTS, map, samples};

fn regions(scene: &Scene) -> Vec<(String, Point, f32, f32)> {
    let region = |i: &Item| match i {
        Item::Region {
            id,
            at,
            width,
            height,
            ..
        } => Some((id.clone(), *at, *width, *height)),
        _ => None,
    };
    scene.items.iter().filter_map(region).collect()
}

/// The straight pieces of hoses and wires.
fn strokes(scene: &Scene) -> Vec<(Point, Point)> {
    let mut strokes = Vec::new();
    for item in &scene.items {
        let Item::Path {
            points,
            stroke: Some(stroke),
            ..
        } = item
        else {
            continue;
        };
        if matches!(stroke.role, Role::Vacuum | Role::Electric) {
            strokes.extend(points.windows(2).map(|w| (w[0], w[1])));
        }
    }
    strokes
}

/// Whether an upright and a level piece cross in their insides.
fn cross(a: (Point, Point), b: (Point, Point)) -> bool {
    let upright = |s: (Point, Point)| s.0.x == s.1.x;
    let (up, level) = match (upright(a), upright(b)) {
        (true, false) => (a, b),
        (false, true) => (b, a),
        _ => return false,
    };
    let (left, right) = (level.0.x.min(level.1.x), level.0.x.max(level.1.x));
    let (top, bottom) = (up.0.y.min(up.1.y), up.0.y.max(up.1.y));
    left < up.0.x && up.0.x < right && top < level.0.y && level.0.y < bottom
}

#[test]
fn every_part_has_a_place_of_its_own_big_enough_to_touch() {
    for (name, chains) in LAYOUTS {
        let input = map(chains);
        let scene = circuit_map(&input);
        let regions = regions(&scene);
        assert_eq!(regions.len(), input.parts.len(), "{name}");
        let places: HashSet<(i32, i32)> = regions.iter().map(|r| (r.1.x as i32, r.1.y as i32)).collect();
        assert_eq!(places.len(), regions.len(), "{name}: two parts in one place");
        for (id, at, width, height) in regions {
            // 48 dp at least on a phone 360 dp wide, however wide the scene.
            let shrink = 360.0 / scene.width;
            assert!(
                width * shrink >= 48.0 && height >= 48.0,
                "{name}: {id} is {width} by {height}"
            );
            assert!(at.x >= 0.0 && at.x + width <= scene.width + 0.5, "{name}: {id}");
            assert!(at.y >= 0.0 && at.y + height <= scene.height + 0.5, "{name}: {id}");
        }
    }
}

#[test]
fn no_line_crosses_another_in_any_layout() {
    let p = |x: f32, y: f32| Point { x, y };
    assert!(
        cross((p(5.0, 0.0), p(5.0, 9.0)), (p(0.0, 4.0), p(9.0, 4.0))),
        "a crossing is seen"
    );
    for (name, chains) in LAYOUTS {
        let strokes = strokes(&circuit_map(&map(chains)));
        for (i, a) in strokes.iter().enumerate() {
            for b in &strokes[i + 1..] {
                assert!(!cross(*a, *b), "{name}: {a:?} crosses {b:?}");
            }
        }
    }
}

#[test]
fn state_and_suspicion_show_in_shape_and_number_not_only_in_colour() {
    let scene = circuit_map(&samples::map_in_a_job());
    let ring = scene
        .items
        .iter()
        .any(|i| matches!(i, Item::Arc { sweep_deg, .. } if (*sweep_deg - 0.62 * 360.0).abs() < 0.1));
    let number = scene
        .items
        .iter()
        .any(|i| matches!(i, Item::Text { text, .. } if text == "62\u{a0}%"));
    assert!(ring && number);
}

#[test]
fn links_that_loop_or_name_nobody_are_survived() {
    let mut input = CircuitMap::default();
    for id in ["a", "b", "c"] {
        input.parts.push(MapPart::new(id, PartKind::Hose, id));
    }
    for (from, to) in [("a", "b"), ("b", "c"), ("c", "a"), ("a", "a"), ("a", "nobody")] {
        input.links.push(MapLink::new(from, to));
    }
    assert_eq!(regions(&circuit_map(&input)).len(), 3);
    assert_eq!(regions(&circuit_map(&CircuitMap::default())).len(), 0);
}

#[expect(
    clippy::disallowed_methods,
    reason = "measures its own time; nothing of it goes into a scene"
)]
fn time_of(run: &dyn Fn() -> Scene) -> Duration {
    let start = Instant::now();
    black_box(run());
    start.elapsed()
}

/// Scenes are built on every act, so each has a share of its time: less than 0.3 ms.
#[test]
fn scenes_that_every_act_builds_take_under_three_tenths_of_a_millisecond() {
    let (map, dial, chart, trace) = (
        samples::map_in_a_job(),
        samples::dial(),
        samples::before_after(),
        samples::trace(),
    );
    let median = |run: &dyn Fn() -> Scene| {
        let mut times: Vec<Duration> = (0..201).map(|_| time_of(run)).collect();
        times.sort();
        times[100]
    };
    for (name, time) in [
        ("map", median(&|| circuit_map(&map))),
        ("gauge", median(&|| gauge(&dial))),
        ("chart", median(&|| hold_chart(&chart))),
        ("trace", median(&|| hold_chart(&trace))),
    ] {
        println!("{name}: {time:?}");
        assert!(time < Duration::from_micros(300), "{name} took {time:?}");
    }
}
