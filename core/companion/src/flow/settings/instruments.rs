//! Gauge, hand pump and meter: which they are and how finely they read.

use holdfast_measure::PressureUnit;

use super::fields::number_items;
use crate::companion::Companion;
use crate::flow::parts::{entry, one_of, option, section, text_field, words};
use crate::protocol::{FieldId, FormItem, Keys, Pick, Section};
use crate::typed::Typed;

/// Accuracy grades as dials name them: ASME B40.100.
const GRADES: [&str; 8] = ["4A", "3A", "2A", "1A", "A", "B", "C", "D"];
pub(super) fn gauge_section(core: &Companion, typed: &Typed) -> Section {
    let settings = &core.session.settings;
    let units = PressureUnit::ALL
        .iter()
        .map(|unit| {
            let symbol = unit.symbol();
            option(
                core.texts.unit_name(symbol),
                settings.gauge.unit == symbol,
                Pick::GaugeUnit {
                    symbol: symbol.to_owned(),
                },
            )
        })
        .collect();
    let grades = GRADES
        .iter()
        .map(|letter| {
            let grade = (*letter).to_owned();
            option(
                grade.clone(),
                settings.gauge.grade == grade,
                Pick::GaugeGrade { grade },
            )
        })
        .collect();
    let mut items = vec![
        words(core.say("settings-gauge-hint")),
        one_of(core.say("settings-gauge-unit"), units),
        one_of(core.say("settings-gauge-grade"), grades),
    ];
    let ids = [
        FieldId::GaugeSpan,
        FieldId::GaugeDivision,
        FieldId::GaugeReadTo,
        FieldId::PumpVolume,
        FieldId::PumpStroke,
    ];
    items.extend(number_items(core, typed, &ids));
    let kept = core.session.settings.gauge_identity.clone();
    items.push(identity(core, FieldId::GaugeIdentity, kept));
    section(core.say("settings-gauge"), items)
}

pub(super) fn meter_section(core: &Companion, typed: &Typed) -> Section {
    let ids = [FieldId::MeterPercent, FieldId::MeterCounts, FieldId::MeterDigits];
    let mut items = number_items(core, typed, &ids);
    let kept = core.session.settings.meter_identity.clone();
    items.push(identity(core, FieldId::MeterIdentity, kept));
    section(core.say("settings-meter"), items)
}

/// Which instrument it is, for the record.
fn identity(core: &Companion, id: FieldId, kept: String) -> FormItem {
    let mut field = text_field(id, core.say("settings-identity"), kept, Keys::Text);
    field.hint = core.say("settings-identity-hint");
    entry(field)
}
