//! What else is to be said about a hold.

use holdfast_measure::{LeakForm, LeakPosterior, LeakRate};

use super::{Case, kpa};
use crate::judge::hold_setup::VolumeFrom;
use crate::judge::{HoldResult, Outcome, additivity, effect};
use crate::{Arg, ComponentKind, Message, TestKind};

/// Scatter beyond which the readings contradict each other.
const STRAINED: f64 = 3.0;
/// A start below this share of the target is worth a remark.
const NEAR_TARGET: f64 = 0.8;

impl Case<'_> {
    pub(super) fn remarks(
        &self,
        posterior: &LeakPosterior,
        outcome: Outcome,
        numbers: &HoldResult,
        says: &mut Vec<Message>,
    ) {
        let tests_car = self.test().kind != TestKind::HandPump;
        match self.volume_from {
            VolumeFrom::StrokesLess => {
                says.push(Message::new("hold-strokes-few").with("volume", Arg::Cm3(numbers.volume_cm3)))
            }
            VolumeFrom::StrokesMore => says.push(Message::new("hold-strokes-many")),
            VolumeFrom::Circuit | VolumeFrom::Both => {}
        }
        if posterior.strain() > STRAINED {
            says.push(Message::new("hold-readings-scatter"));
        }
        if numbers.start_kpa < NEAR_TARGET * numbers.target_kpa {
            let target = Arg::Pressure(kpa(numbers.target_kpa));
            says.push(Message::new("hold-start-low").with("target", target));
        }
        if tests_car && self.tester.is_none() {
            says.push(Message::new("tester-not-tested"));
        }
        if let Some(tester) = self.tester.filter(|t| t.value > 0.0) {
            let leak = LeakRate::from_std_m3_s(tester.value).std_cm3_min();
            says.push(Message::new("hold-tester-taken-off").with("leak", Arg::Leak(leak)));
        }
        if self.has_bleed() {
            says.push(Message::new("hold-bleed-normal"));
        }
        let holds = matches!(outcome, Outcome::Holds | Outcome::SlowLeak);
        if holds && self.has(ComponentKind::Mount) {
            says.push(Message::new("hold-clears-no-torn-mount"));
        }
        if holds && self.has(ComponentKind::Hose) && self.volume_from != VolumeFrom::Both {
            says.push(Message::new("hold-clears-no-blocked-hose"));
        }
        if let Some(form) = numbers.form {
            says.push(Message::new(match form {
                LeakForm::Hole => "hold-form-hole",
                LeakForm::Viscous => "hold-form-thin-path",
            }));
        }
        says.extend(additivity::compare(
            self.circuit,
            self.situation,
            self.earlier,
            self.reading,
            numbers,
        ));
        says.extend(effect::of_result(
            self.circuit,
            self.situation,
            self.earlier,
            self.test(),
            numbers,
        ));
    }
}
