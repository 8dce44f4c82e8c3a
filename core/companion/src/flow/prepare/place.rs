//! Where the work is done: height, the air's pressure and temperature.

use holdfast_joblog::{Place, Typed};
use holdfast_measure::Bound;

use crate::companion::Companion;
use crate::flow::numbers::{Logged, NumberField};
use crate::flow::parts::{entry, section, words};
use crate::protocol::{FieldId, Section};
use crate::session::PrepareDraft;

const ALTITUDE: NumberField = NumberField {
    id: FieldId::Altitude,
    label: "prepare-altitude",
    bound: Bound::ALTITUDE,
};
const AMBIENT: NumberField = NumberField {
    id: FieldId::Ambient,
    label: "prepare-ambient",
    bound: Bound::AMBIENT,
};
const AIR: NumberField = NumberField {
    id: FieldId::AirTemperature,
    label: "prepare-air",
    bound: Bound::AIR,
};
/// The place as it will stand when this is confirmed.
pub(super) fn place(core: &Companion, draft: &PrepareDraft) -> Place {
    let there = core
        .job
        .as_ref()
        .and_then(|job| job.log.place.clone())
        .unwrap_or_default();
    let altitude_m = ALTITUDE.holds(core, &draft.typed, there.altitude_m);
    let typed = AMBIENT.typed(core, &draft.typed);
    let logged = if AMBIENT.emptied(&draft.typed) {
        None
    } else {
        there.ambient_kpa
    };
    let ambient_kpa = typed.or(draft.barometer_kpa).or(logged);
    let ambient_from = match (typed, draft.barometer_kpa, logged, altitude_m) {
        (Some(_), ..) => "typed".to_owned(),
        (None, Some(_), ..) => "barometer".to_owned(),
        (None, None, Some(_), _) => there.ambient_from,
        (None, None, None, Some(_)) => "altitude".to_owned(),
        (None, None, None, None) => "sea_level".to_owned(),
    };
    Place {
        altitude_m,
        ambient_kpa,
        ambient_from,
        air_c: AIR.holds(core, &draft.typed, there.air_c),
        typed: typed_records(core, draft, there.typed),
    }
}

/// What was typed for the place: now, else before where the field was left alone.
fn typed_records(core: &Companion, draft: &PrepareDraft, before: Vec<Typed>) -> Vec<Typed> {
    let mut records = before;
    for (field, key) in [
        (&ALTITUDE, "altitude_m"),
        (&AMBIENT, "ambient_kpa"),
        (&AIR, "air_c"),
    ] {
        if draft.typed.get(&field.id).is_some() {
            records.retain(|record| record.key != key);
            records.extend(field.record(core, &draft.typed, key));
        }
    }
    records
}

pub(super) fn place_section(core: &Companion, draft: &PrepareDraft) -> Section {
    let there = core
        .job
        .as_ref()
        .and_then(|job| job.log.place.clone())
        .unwrap_or_default();
    let logged = |figure, key| Logged::with(figure, &there.typed, key);
    let ambient_kpa = draft.barometer_kpa.or(there.ambient_kpa);
    let mut ambient = AMBIENT.field(core, &draft.typed, logged(ambient_kpa, "ambient_kpa"));
    let found = draft.typed.get(&FieldId::Ambient).is_none() && draft.barometer_kpa.is_some();
    if found {
        ambient.hint = core.say("prepare-ambient-found");
    }
    section(
        core.say("prepare-place"),
        vec![
            words(core.say("prepare-place-hint")),
            entry(ALTITUDE.field(core, &draft.typed, logged(there.altitude_m, "altitude_m"))),
            entry(ambient),
            entry(AIR.field(core, &draft.typed, logged(there.air_c, "air_c"))),
        ],
    )
}
