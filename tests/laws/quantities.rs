//! Laws of units, typed figures and uncertainties.

use holdfast_measure::{Measured, PressureUnit, parse_number, parse_vacuum};
use proptest::prelude::*;

fn any_unit() -> impl Strategy<Value = PressureUnit> {
    prop::sample::select(PressureUnit::ALL.to_vec())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_figure_survives_its_unit(unit in any_unit(), figure in -1e4..1e4_f64) {
        prop_assert!((unit.from_pressure(unit.to_pressure(figure)) - figure).abs() <= 1e-11 * figure.abs().max(1.0));
    }

    #[test]
    fn units_agree_through_each_other(a in any_unit(), b in any_unit(), figure in 0.0..1000.0_f64) {
        let pressure = a.to_pressure(figure);
        let through = b.to_pressure(b.from_pressure(pressure));
        prop_assert!((through.value - pressure.value).abs() <= 1e-9 * pressure.value.abs().max(1.0));
    }

    #[test]
    fn what_is_shown_can_be_typed(unit in any_unit(), figure in 0.0..1.0_f64) {
        let max = PressureUnit::Bar.to_pressure(1.0);
        let vacuum = max * figure;
        let typed = parse_vacuum(&unit.format(vacuum).replace('.', ","), unit, max * 1.01).unwrap();
        let step = unit.to_pressure(10f64.powi(-i32::try_from(unit.decimals()).unwrap()));
        prop_assert!((typed - vacuum).value.abs() <= 0.5001 * step.value);
    }

    #[test]
    fn no_text_breaks_the_parser(text in "\\PC*") {
        if let Ok(figure) = parse_number(&text) {
            prop_assert!(figure.is_finite());
        }
    }

    #[test]
    fn every_plain_figure_is_read(figure in -1e6..1e6_f64) {
        prop_assert_eq!(parse_number(&figure.to_string()), Ok(figure));
    }

    #[test]
    fn uncertainty_never_shrinks_in_a_sum(a in 0.0..10.0, b in 0.0..10.0) {
        let sum = Measured::new(1.0, a) + Measured::new(2.0, b);
        prop_assert!(sum.u >= a.max(b) && sum.u <= a + b + 1e-12);
    }
}
