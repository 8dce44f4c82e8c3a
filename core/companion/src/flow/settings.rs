//! Settings: units, instruments, limit, certainty, speech and buzz.
//!
//! | event | leads to |
//! |---|---|
//! | `Type` | the field's text kept; if valid it holds from now on |
//! | `Type` a line of the script | said from now on in this language |
//! | `Pick` | that option holds from now on |
//! | `Back` | where it was opened from; an open job gets the instruments as they are now |

use holdfast_joblog::{
    GaugeRecord, Instruments, Limit, MeterRecord, Payload, Profile as ProfileRecord, Workshop,
};
use holdfast_measure::{Bound, PressureUnit};

use crate::companion::Companion;
use crate::drawn::Drawn;
use crate::error::ActError;
use crate::experience::Experience;
use crate::flow::cues::{self, Cue};
use crate::flow::numbers::{self, NumberField};
use crate::flow::parts::{any_of, entry, one_of, option, quiet, section, tap, text_field, words};
use crate::flow::report::paper_choice;
use crate::flow::taught::taught_section;
use crate::protocol::{
    Action, Body, ChoiceOption, FieldId, FormItem, FormScreen, Frame, Keys, Pick, Section,
};
use crate::session::At;
use crate::settings::Settings;
use crate::text::Language;
use crate::turn::Turn;
use crate::typed::Typed;
use crate::units::{Reader, Units};

/// Accuracy grades as dials name them: ASME B40.100.
const GRADES: [&str; 8] = ["4A", "3A", "2A", "1A", "A", "B", "C", "D"];
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
fn fields(settings: &mut Settings) -> Vec<(NumberField, &mut String)> {
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
            for (number, kept) in fields(&mut settings) {
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

/// The settings as the log states them for a job.
pub(crate) fn payloads(settings: &Settings) -> Vec<Payload> {
    let figure = |text: &str| numbers::figure(text);
    let gauge = GaugeRecord {
        unit: settings.gauge.unit.clone(),
        span: figure(&settings.gauge.span).unwrap_or(30.0),
        division: figure(&settings.gauge.division).unwrap_or(1.0),
        grade: settings.gauge.grade.clone(),
        read_to: figure(&settings.gauge.read_to).unwrap_or(0.5),
        identity: settings.gauge_identity.trim().to_owned(),
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 6 by its bound"
    )]
    let digits = figure(&settings.meter_digits).unwrap_or(2.0).clamp(0.0, 6.0) as u8;
    let meter = MeterRecord {
        percent: figure(&settings.meter_percent).unwrap_or(0.5),
        counts: figure(&settings.meter_counts).unwrap_or(2.0),
        digits,
        identity: settings.meter_identity.trim().to_owned(),
    };
    vec![
        Payload::Profile(ProfileRecord {
            id: settings.profile.id().to_owned(),
        }),
        Payload::Instruments(Instruments {
            gauge: Some(gauge),
            pump_cm3: figure(&settings.pump_cm3),
            stroke_cm3: figure(&settings.stroke_cm3),
            meter: Some(meter),
        }),
        Payload::Limit(Limit {
            drop: figure(&settings.limit_drop),
            unit: Some(settings.gauge.unit.clone()),
            seconds: figure(&settings.limit_s),
            confidence: figure(&settings.confidence).map(|percent| percent / 100.0),
        }),
        Payload::Workshop(Workshop {
            business: settings.business.trim().to_owned(),
            technician: settings.technician.trim().to_owned(),
        }),
    ]
}

pub(super) fn screen(core: &Companion, typed: &Typed) -> (Frame, Body) {
    let sections = vec![
        shown_section(core),
        script_section(core),
        units_section(core),
        gauge_section(core, typed),
        meter_section(core, typed),
        numbers_section(
            core,
            typed,
            "settings-limit",
            &[FieldId::LimitDrop, FieldId::LimitSeconds, FieldId::Confidence],
        ),
        person_section(core),
        taught_section(core),
    ];
    let form = FormScreen { sections, next: None };
    (Frame::titled(core.say("settings-title")), Body::Settings { form })
}

fn shown_section(core: &Companion) -> Section {
    let cues = vec![
        option(
            core.say("settings-speech"),
            core.session.settings.speech.is_on(),
            Pick::Speech,
        ),
        option(
            core.say("settings-buzz"),
            core.session.settings.buzz.is_on(),
            Pick::Buzzing,
        ),
        option(
            core.say("settings-large-figures"),
            core.session.settings.large_figures.is_on(),
            Pick::LargeFigures,
        ),
    ];
    section(
        core.say("settings-shown"),
        vec![
            one_of(core.say("settings-language"), languages(core)),
            any_of(core.say("settings-cues"), cues),
        ],
    )
}

/// What is said during a hold, line by line, while it is said at all.
fn script_section(core: &Companion) -> Section {
    let settings = &core.session.settings;
    if !settings.speech.is_on() {
        return section(String::new(), Vec::new());
    }
    let mut items = vec![words(core.say("settings-script-hint"))];
    items.extend(Cue::ALL.map(|cue| {
        let id = FieldId::Script {
            cue: cue.id().to_owned(),
        };
        let label = core.say(&format!("script-{}", cue.id()));
        entry(text_field(id, label, cues::line(core, cue), Keys::Text))
    }));
    if settings.script.contains_key(core.texts.language().tag()) {
        let as_before = Action::Pick {
            pick: Pick::PlainScript,
        };
        items.push(tap(quiet(core.say("settings-script-plain"), as_before)));
    }
    section(core.say("settings-script"), items)
}

/// A set for the region, then each instrument's own; the gauge's stands with the gauge.
fn units_section(core: &Companion) -> Section {
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
            option(symbol.clone(), picked, Pick::ShownUnit { symbol })
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

/// The phone's language, then each by its own name.
fn languages(core: &Companion) -> Vec<ChoiceOption> {
    let picked = &core.session.settings.language;
    let language = |tag: &str, label| option(label, picked == tag, Pick::Language { tag: tag.to_owned() });
    let named = Language::OFFERED
        .into_iter()
        .map(|it| language(it.tag(), core.texts.name_of(it)));
    std::iter::once(language("", core.say("settings-language-phone")))
        .chain(named)
        .collect()
}

fn gauge_section(core: &Companion, typed: &Typed) -> Section {
    let settings = &core.session.settings;
    let units = PressureUnit::ALL
        .iter()
        .map(|unit| {
            let symbol = unit.symbol();
            option(
                symbol.to_owned(),
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

fn meter_section(core: &Companion, typed: &Typed) -> Section {
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

fn numbers_section(core: &Companion, typed: &Typed, heading: &str, ids: &[FieldId]) -> Section {
    section(core.say(heading), number_items(core, typed, ids))
}

fn number_items(core: &Companion, typed: &Typed, ids: &[FieldId]) -> Vec<FormItem> {
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

fn person_section(core: &Companion) -> Section {
    let settings = &core.session.settings;
    let mut business = text_field(
        FieldId::Business,
        core.say("settings-business"),
        settings.business.clone(),
        Keys::Lines,
    );
    business.hint = core.say("settings-business-hint");
    let technician = text_field(
        FieldId::Technician,
        core.say("settings-technician"),
        settings.technician.clone(),
        Keys::Text,
    );
    section(
        core.say("settings-report"),
        vec![entry(business), entry(technician), paper_choice(core)],
    )
}
