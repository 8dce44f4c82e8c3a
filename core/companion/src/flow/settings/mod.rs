//! Settings: units, instruments, limit, certainty, speech and buzz.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept; if valid it holds from now on |
//! | `Type` a line of the script | said from now on in this language |
//! | `Pick` | that option holds from now on |
//! | `Back` | where it was opened from; an open job gets the instruments as they are now |

mod fields;
mod instruments;
mod language;
mod person;
mod stated;
mod units;

use holdfast_measure::PressureUnit;

use crate::companion::Companion;
use crate::drawn::Drawn;
use crate::error::ActError;
use crate::experience::Experience;
use crate::flow::cues::Cue;
use crate::flow::numbers;
use crate::flow::taught::taught_section;
use crate::protocol::{Action, Body, FieldId, FormScreen, Frame, Pick};
use crate::session::At;
use crate::turn::Turn;
use crate::typed::Typed;
use crate::units::Units;

pub(crate) use stated::payloads;

pub(super) fn act(
    core: &mut Companion,
    mut typed: Typed,
    before: Box<At>,
    action: Action,
    turn: &mut Turn<'_>,
) -> Result<(), ActError> {
    match action {
        Action::Type {
            field: FieldId::Business,
            text,
        } => {
            core.session.settings.business = text.chars().take(600).collect();
        }
        Action::Type {
            field: FieldId::Technician,
            text,
        } => core.session.settings.technician = line(&text),
        Action::Type {
            field: FieldId::GaugeIdentity,
            text,
        } => core.session.settings.gauge_identity = line(&text),
        Action::Type {
            field: FieldId::MeterIdentity,
            text,
        } => core.session.settings.meter_identity = line(&text),
        Action::Type {
            field: FieldId::Script { cue },
            text,
        } if Cue::ALL.iter().any(|known| known.id() == cue) => {
            let tag = core.texts.language().tag().to_owned();
            let lines = core.session.settings.script.entry(tag).or_default();
            lines.insert(cue, line(&text));
        }
        Action::Type { field, text } => {
            typed.put(field.clone(), &text);
            let mut settings = core.session.settings.clone();
            for (number, kept) in fields::fields(&mut settings) {
                if let (true, Ok(figure)) = (number.id == field, numbers::read(core, &number.bound, &text)) {
                    *kept = figure.to_string();
                }
            }
            core.session.settings = settings;
        }
        Action::Pick {
            pick: Pick::ForgetJobs,
        } => {
            core.session.settings.learned_since_ms = turn.clock.wall_ms;
            core.experience = Experience::default();
        }
        Action::Pick { pick } => picked(core, pick),
        _ => return Ok(()),
    }
    core.session.at = At::Settings { typed, before };
    Ok(())
}

/// A line of a sensible length.
fn line(text: &str) -> String {
    text.chars().take(200).collect()
}

fn picked(core: &mut Companion, pick: Pick) {
    let settings = &mut core.session.settings;
    match pick {
        Pick::Language { tag } => {
            settings.language = tag;
            let larger = core.texts.larger();
            core.texts = core.session.settings.texts(&core.facts.locale);
            core.texts.show_larger(larger);
            core.drawn = Drawn::default();
            return;
        }
        Pick::ShownUnit { symbol } => settings.shown_unit = symbol,
        Pick::UnitSet { id } => {
            if let Some((_, units)) = Units::SETS.into_iter().find(|(set, _)| *set == id) {
                settings.units = units;
            }
        }
        Pick::UnitOf { instrument, symbol } => settings.units.choose(&instrument, &symbol),
        Pick::GaugeUnit { symbol } => {
            if let Some(unit) = PressureUnit::from_symbol(&symbol) {
                settings.read_gauge_in(unit);
            }
        }
        Pick::GaugeGrade { grade } => settings.gauge.grade = grade,
        Pick::Paper { id } => settings.paper = id,
        Pick::Speech => settings.speech = settings.speech.turned(),
        Pick::Buzzing => settings.buzz = settings.buzz.turned(),
        Pick::LargeFigures => settings.large_figures = settings.large_figures.turned(),
        Pick::PlainScript => {
            settings.script.remove(core.texts.language().tag());
        }
        _ => {}
    }
    core.session.settings.show_in_units(&mut core.texts);
}

/// An open job gets the instruments as they are now.
pub(super) fn settle(core: &mut Companion, turn: &mut Turn<'_>) -> Result<(), ActError> {
    core.session.settings.show_in_units(&mut core.texts);
    if core.job.is_some() {
        core.state_settings(turn);
    }
    Ok(())
}

pub(super) fn screen(core: &Companion, typed: &Typed) -> (Frame, Body) {
    let sections = vec![
        language::shown_section(core),
        language::script_section(core),
        units::units_section(core),
        instruments::gauge_section(core, typed),
        instruments::meter_section(core, typed),
        fields::numbers_section(
            core,
            typed,
            "settings-limit",
            &[FieldId::LimitDrop, FieldId::LimitSeconds, FieldId::Confidence],
        ),
        person::person_section(core),
        taught_section(core),
    ];
    let form = FormScreen { sections, next: None };
    (Frame::titled(core.say("settings-title")), Body::Settings { form })
}
