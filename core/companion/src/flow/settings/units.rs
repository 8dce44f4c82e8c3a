//! The units figures are shown and typed in.

use holdfast_measure::PressureUnit;

use crate::companion::Companion;
use crate::flow::parts::{one_of, option, section};
use crate::protocol::{Pick, Section};
use crate::units::{Reader, Units};

/// A set for the region, then each instrument's own; the gauge's stands with the gauge.
pub(super) fn units_section(core: &Companion) -> Section {
    let settings = &core.session.settings;
    let sets = Units::SETS
        .into_iter()
        .map(|(id, units)| {
            let mut set = option(
                core.say(&format!("settings-unit-set-{id}")),
                settings.units == units,
                Pick::UnitSet { id: id.to_owned() },
            );
            set.detail = Reader::ALL.map(|reader| units.reads(reader).symbol()).join(" · ");
            set
        })
        .collect();
    let vacuum = PressureUnit::ALL
        .iter()
        .map(|unit| {
            let symbol = unit.symbol().to_owned();
            let picked = settings.shown_unit == symbol;
            option(core.texts.unit_name(&symbol), picked, Pick::ShownUnit { symbol })
        })
        .collect();
    let mut items = vec![
        one_of(core.say("settings-shown-unit"), vacuum),
        one_of(core.say("settings-unit-set"), sets),
    ];
    items.extend(Reader::ALL.map(|reader| {
        let options = reader.offered().map(|unit| {
            let pick = Pick::UnitOf {
                instrument: reader.id().to_owned(),
                symbol: unit.symbol().to_owned(),
            };
            option(
                unit.symbol().to_owned(),
                settings.units.reads(reader) == unit,
                pick,
            )
        });
        one_of(
            core.say(&format!("settings-unit-{}", reader.id())),
            options.into(),
        )
    }));
    section(core.say("settings-units"), items)
}
