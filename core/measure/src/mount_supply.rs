//! What vacuum a mount still gets at work when something leaks.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;

use crate::element::Element;

/// Steady vacuum at the mount while the source feeds it through passages in a row and leaks let air in.
///
/// `feed` are the passages between source and mount, in series, source first (valve, hose); the leaks sit at
/// the mount's end. `source` is the vacuum that the source keeps up whatever is drawn; a source that gives way
/// is not modelled, so the answer is the best case. Without leaks it is the source's vacuum; without a feed it
/// is zero when anything leaks.
#[must_use]
pub fn steady_vacuum_at_mount(
    source: Pressure,
    ambient: Pressure,
    air: ThermodynamicTemperature,
    feed: &[Element],
    leaks: &[Element],
) -> Pressure {
    let (pa, ps, kelvin) = (ambient.value, (ambient - source).value.max(0.0), air.value);
    if leaks.is_empty() {
        return source;
    }
    let surplus = |p: f64| {
        let inflow: f64 = leaks.iter().map(|leak| leak.mass_flow(pa, p, kelvin)).sum();
        inflow - flow_in_series(feed, p, ps, kelvin)
    };
    // Inflow falls and outflow rises with the pressure at the mount: one root, found by halving.
    let (mut low, mut high) = (ps, pa);
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if surplus(middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    Pressure::new::<pascal>(pa - f64::midpoint(low, high))
}

/// Mass flow through passages in a row from `from` down to `to`, Pa.
fn flow_in_series(feed: &[Element], from: f64, to: f64, kelvin: f64) -> f64 {
    let Some((nearest_source, rest)) = feed.split_first() else {
        return 0.0;
    };
    if rest.is_empty() {
        return nearest_source.mass_flow(from, to, kelvin);
    }
    let (mut low, mut high) = (to, from);
    for _ in 0..50 {
        let middle = f64::midpoint(low, high);
        if flow_in_series(rest, from, middle, kelvin) > nearest_source.mass_flow(middle, to, kelvin) {
            low = middle;
        } else {
            high = middle;
        }
    }
    nearest_source.mass_flow(f64::midpoint(low, high), to, kelvin)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pressure_unit::PressureUnit;
    use uom::si::f64::Length;
    use uom::si::length::millimeter;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn vacuum(passage_mm: f64, hole_mm: f64) -> f64 {
        let hole = |mm| Element::round_hole(Length::new::<millimeter>(mm));
        let found = steady_vacuum_at_mount(
            PressureUnit::InHg.to_pressure(20.0),
            Pressure::new::<pascal>(101_325.0),
            ThermodynamicTemperature::new::<degree_celsius>(20.0),
            &[hole(passage_mm)],
            &[hole(hole_mm)],
        );
        PressureUnit::InHg.from_pressure(found)
    }

    /// Figures of the project's trade sheet, section 1 item 9, worked out there by other means.
    #[test]
    fn small_holes_leave_the_mount_its_vacuum_and_large_ones_do_not() {
        for (passage, hole, left) in [
            (1.5, 0.1, 20.0),
            (1.5, 0.3, 19.97),
            (1.5, 0.5, 19.7),
            (1.5, 1.0, 15.7),
            (1.5, 1.5, 5.8),
            (0.8, 0.5, 16.7),
            (0.8, 1.0, 2.6),
        ] {
            let found = vacuum(passage, hole);
            assert!((found - left).abs() < 0.06, "{passage} {hole}: {found}");
        }
    }

    #[test]
    fn a_second_passage_in_the_row_costs_vacuum() {
        let hole = |mm| Element::round_hole(Length::new::<millimeter>(mm));
        let with = |feed: &[Element]| {
            steady_vacuum_at_mount(
                PressureUnit::InHg.to_pressure(20.0),
                Pressure::new::<pascal>(101_325.0),
                ThermodynamicTemperature::new::<degree_celsius>(20.0),
                feed,
                &[hole(0.5)],
            )
        };
        assert!(with(&[hole(1.0), hole(1.0)]) < with(&[hole(1.0)]));
        assert!(with(&[]).value.abs() < 1.0);
    }
}
