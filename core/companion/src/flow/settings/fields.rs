//! The number fields of the settings: what each may be, and where its text is kept.

use holdfast_measure::Bound;

use crate::companion::Companion;
use crate::flow::numbers::{self, NumberField};
use crate::flow::parts::{entry, section};
use crate::protocol::{FieldId, FormItem, Section};
use crate::settings::Settings;
use crate::typed::Typed;

/// The division of a gauge, in its own unit.
const DIVISION: Bound = Bound {
    name: "gauge-division",
    unit: "",
    min: 0.001,
    max: 100.0,
};
/// Decimals of a meter.
const DIGITS: Bound = Bound {
    name: "meter-digits",
    unit: "",
    min: 0.0,
    max: 6.0,
};
/// Certainty, percent.
const CONFIDENCE: Bound = Bound {
    name: "confidence",
    unit: "%",
    min: 55.0,
    max: 99.0,
};
/// Allowed drop, in the gauge's unit.
const DROP: Bound = Bound {
    name: "limit-drop",
    unit: "",
    min: 0.001,
    max: 500.0,
};

/// The number fields, each with where its text is kept.
pub(super) fn fields(settings: &mut Settings) -> Vec<(NumberField, &mut String)> {
    let number = |id, label, bound| NumberField { id, label, bound };
    vec![
        (
            number(FieldId::GaugeSpan, "settings-span", Bound::GAUGE_SPAN),
            &mut settings.gauge.span,
        ),
        (
            number(FieldId::GaugeDivision, "settings-division", DIVISION),
            &mut settings.gauge.division,
        ),
        (
            number(FieldId::GaugeReadTo, "settings-read-to", DIVISION),
            &mut settings.gauge.read_to,
        ),
        (
            number(FieldId::PumpVolume, "settings-pump", Bound::PUMP_VOLUME),
            &mut settings.pump_cm3,
        ),
        (
            number(FieldId::PumpStroke, "settings-stroke", Bound::STROKE),
            &mut settings.stroke_cm3,
        ),
        (
            number(FieldId::MeterPercent, "settings-percent", Bound::METER_PERCENT),
            &mut settings.meter_percent,
        ),
        (
            number(FieldId::MeterCounts, "settings-counts", Bound::METER_COUNTS),
            &mut settings.meter_counts,
        ),
        (
            number(FieldId::MeterDigits, "settings-digits", DIGITS),
            &mut settings.meter_digits,
        ),
        (
            number(FieldId::LimitDrop, "settings-drop", DROP),
            &mut settings.limit_drop,
        ),
        (
            number(FieldId::LimitSeconds, "settings-seconds", Bound::HOLD_TIME),
            &mut settings.limit_s,
        ),
        (
            number(FieldId::Confidence, "settings-confidence", CONFIDENCE),
            &mut settings.confidence,
        ),
    ]
}

pub(super) fn numbers_section(core: &Companion, typed: &Typed, heading: &str, ids: &[FieldId]) -> Section {
    section(core.say(heading), number_items(core, typed, ids))
}

pub(super) fn number_items(core: &Companion, typed: &Typed, ids: &[FieldId]) -> Vec<FormItem> {
    let mut settings = core.session.settings.clone();
    let gauge_unit = settings.gauge.unit.clone();
    fields(&mut settings)
        .into_iter()
        .filter(|(number, _)| ids.contains(&number.id))
        .map(|(number, kept)| {
            let mut field = number.field(core, typed, numbers::figure(kept));
            let in_gauge_unit = [
                FieldId::GaugeSpan,
                FieldId::GaugeDivision,
                FieldId::GaugeReadTo,
                FieldId::LimitDrop,
            ];
            if in_gauge_unit.contains(&number.id) {
                field.unit.clone_from(&gauge_unit);
            }
            entry(field)
        })
        .collect()
}
