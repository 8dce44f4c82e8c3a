//! What was stated of place, limit, instruments and vehicle, in words.

use holdfast_diagnose::{CircuitChoice, ComponentId, CustomCircuit};
use holdfast_joblog::{CircuitStated, Instruments, Limit, Place, Typed};
use holdfast_measure::PressureUnit;
use serde_json::Value;

use crate::protocol::FieldId;
use crate::text::{Args, Texts, capital, kebab};

/// The circuit: its template, and what was stated beyond it.
#[must_use]
pub(super) fn circuit_words(texts: &Texts, stated: &CircuitStated) -> String {
    let Ok(choice) = serde_json::from_value::<CircuitChoice>(stated.choice.clone()) else {
        return texts.say_with("log-circuit", &Args::new().text("template", ""));
    };
    let template = texts.say(&format!("template-{}", choice.template()));
    let mut said = vec![texts.say_with("log-circuit", &Args::new().text("template", template))];
    let custom = choice.to_custom();
    let properties = stated.choice.as_object().into_iter().flatten();
    said.extend(properties.filter_map(|(name, value)| {
        let word = match value {
            Value::String(word) if word != "unknown" => word.as_str(),
            Value::Bool(there) => {
                if *there {
                    "yes"
                } else {
                    "no"
                }
            }
            _ => return None,
        };
        let name = kebab(name);
        let label = texts.find(&format!("property-{name}"), &Args::new())?;
        let value = texts.find(&format!("property-{name}-{}", kebab(word)), &Args::new())?;
        Some(texts.say_with(
            "reading-field",
            &Args::new().text("label", label).text("value", value),
        ))
    }));
    said.extend(figures(&custom).into_iter().map(|figure| {
        let label = match &figure.part {
            Some(part) => texts.say_with(figure.label, &Args::new().text("part", texts.part(part))),
            None => texts.say(figure.label),
        };
        let key = figure_key(&figure.field).unwrap_or_default();
        let value =
            as_typed(texts, &stated.typed, &key).unwrap_or_else(|| texts.figure(figure.number, figure.unit));
        texts.say_with(
            "reading-field",
            &Args::new().text("label", label).text("value", value),
        )
    }));
    said.join("; ")
}

/// A figure that was stated of a circuit.
struct CircuitFigure {
    field: FieldId,
    label: &'static str,
    part: Option<ComponentId>,
    number: f64,
    unit: &'static str,
}

fn figures(custom: &CustomCircuit) -> Vec<CircuitFigure> {
    let of_part =
        |(part, number): (&ComponentId, &f64), label, unit, field: fn(String) -> FieldId| CircuitFigure {
            field: field(part.to_string()),
            label,
            part: Some(part.clone()),
            number: *number,
            unit,
        };
    let chambers = custom.chamber_cm3.iter().map(|it| {
        of_part(it, "circuit-volume", "cm³", |component| FieldId::ChamberVolume {
            component,
        })
    });
    let lengths = custom.length_m.iter().map(|it| {
        of_part(it, "circuit-length", "m", |component| FieldId::HoseLength {
            component,
        })
    });
    let doubt = custom.chamber_rel_sd.map(|share| share * 100.0);
    let (low, high) = custom.coil_ohm.unzip();
    let shared = [
        (FieldId::ChamberDoubt, "circuit-doubt", doubt, "%"),
        (FieldId::HoseBore, "circuit-bore", custom.bore_mm, "mm"),
        (FieldId::CoilLow, "circuit-coil-low", low, "Ω"),
        (FieldId::CoilHigh, "circuit-coil-high", high, "Ω"),
        (FieldId::FuseRating, "circuit-fuse", custom.fuse_a, "A"),
    ];
    let shared = shared.into_iter().filter_map(|(field, label, number, unit)| {
        let part = None;
        number.map(|number| CircuitFigure {
            field,
            label,
            part,
            number,
            unit,
        })
    });
    chambers.chain(lengths).chain(shared).collect()
}

/// By which key the log has what was typed for a circuit's figure: where the figure stands in the stated circuit.
#[must_use]
pub(crate) fn figure_key(field: &FieldId) -> Option<String> {
    Some(match field {
        FieldId::ChamberVolume { component } => format!("chamber_cm3/{component}"),
        FieldId::HoseLength { component } => format!("length_m/{component}"),
        FieldId::ChamberDoubt => "chamber_rel_sd".to_owned(),
        FieldId::HoseBore => "bore_mm".to_owned(),
        FieldId::CoilLow => "coil_ohm/0".to_owned(),
        FieldId::CoilHigh => "coil_ohm/1".to_owned(),
        FieldId::FuseRating => "fuse_a".to_owned(),
        _ => return None,
    })
}

/// A figure as it was typed, with the unit it was typed in.
fn as_typed(texts: &Texts, typed: &[Typed], key: &str) -> Option<String> {
    let typed = typed.iter().find(|typed| typed.key == key)?;
    Some(texts.with_unit(typed.text.trim(), &typed.unit))
}

/// Where the work is done, as far as stated.
#[must_use]
pub(super) fn place_words(texts: &Texts, place: &Place) -> String {
    let typed = |key| as_typed(texts, &place.typed, key);
    let mut said = Vec::new();
    if let Some(metres) = place.altitude_m {
        said.push(texts.say_with(
            "log-altitude",
            &Args::new().text(
                "altitude",
                typed("altitude_m").unwrap_or_else(|| texts.altitude(metres)),
            ),
        ));
    }
    if let Some(kpa) = place.ambient_kpa {
        let from = texts.find(
            &format!("log-ambient-{}", kebab(&place.ambient_from)),
            &Args::new(),
        );
        said.push(
            texts.say_with(
                "log-ambient",
                &Args::new()
                    .text("pressure", texts.absolute_kpa(kpa))
                    .text("from", from.unwrap_or_else(|| texts.say("log-ambient-typed"))),
            ),
        );
    }
    if let Some(celsius) = place.air_c {
        said.push(texts.say_with(
            "log-air",
            &Args::new().text(
                "temperature",
                typed("air_c").unwrap_or_else(|| texts.celsius(celsius)),
            ),
        ));
    }
    if said.is_empty() {
        texts.say("log-place-unknown")
    } else {
        capital(&said.join("; "))
    }
}

/// What may be lost and how sure a finding has to be, as far as stated.
#[must_use]
pub(super) fn limit_words(texts: &Texts, limit: &Limit) -> String {
    let mut said = Vec::new();
    if let (Some(drop), Some(seconds)) = (limit.drop, limit.seconds) {
        let unit = limit
            .unit
            .as_deref()
            .and_then(PressureUnit::from_symbol)
            .unwrap_or_else(|| texts.unit());
        said.push(
            texts.say_with(
                "log-limit",
                &Args::new()
                    .text("drop", texts.vacuum_in(unit.to_pressure(drop), unit))
                    .text("seconds", texts.seconds(seconds)),
            ),
        );
    }
    if let Some(share) = limit.confidence {
        said.push(texts.say_with(
            "log-confidence",
            &Args::new().text("percent", texts.percent(share)),
        ));
    }
    if said.is_empty() {
        texts.say("log-limit-unchanged")
    } else {
        capital(&said.join("; "))
    }
}

/// Gauge, hand pump and meter with what decides their uncertainty.
#[must_use]
pub(super) fn instrument_words(texts: &Texts, instruments: &Instruments) -> String {
    let mut said = Vec::new();
    if let Some(gauge) = &instruments.gauge {
        said.push(
            texts.say_with(
                "instrument-gauge",
                &Args::new()
                    .text("span", trimmed(texts, gauge.span))
                    .text("unit", gauge.unit.as_str())
                    .text("division", trimmed(texts, gauge.division))
                    .text("grade", gauge.grade.as_str())
                    .text("read", trimmed(texts, gauge.read_to)),
            ),
        );
        said.extend(identity(&gauge.identity));
    }
    if let Some(cm3) = instruments.pump_cm3 {
        said.push(texts.say_with("instrument-pump", &Args::new().text("volume", texts.volume(cm3))));
    }
    if let Some(cm3) = instruments.stroke_cm3 {
        said.push(texts.say_with(
            "instrument-stroke",
            &Args::new().text("volume", texts.volume(cm3)),
        ));
    }
    if let Some(meter) = &instruments.meter {
        said.push(
            texts.say_with(
                "instrument-meter",
                &Args::new()
                    .text("percent", trimmed(texts, meter.percent))
                    .quantity("counts", trimmed(texts, meter.counts), meter.counts),
            ),
        );
        said.extend(identity(&meter.identity));
    }
    if said.is_empty() {
        texts.say("instrument-unknown")
    } else {
        said.join("; ")
    }
}

/// Which instrument it is, where that was typed.
fn identity(typed: &str) -> Option<String> {
    Some(typed.trim().to_owned()).filter(|typed| !typed.is_empty())
}

/// A figure as typed: up to three decimals, none that are zero.
fn trimmed(texts: &Texts, figure: f64) -> String {
    let decimals = (0..3)
        .find(|d| {
            let step = 10f64.powi(*d);
            ((figure * step).round() / step - figure).abs() < 5e-4
        })
        .unwrap_or(3);
    texts.number(figure, usize::try_from(decimals).unwrap_or(3))
}

/// The fields that are there, each with its label.
#[must_use]
pub(super) fn fields(texts: &Texts, fields: &[(&str, Option<&str>)]) -> String {
    let said: Vec<String> = fields
        .iter()
        .filter_map(|(label, value)| {
            let value = (*value)?.trim();
            let shown = if value.is_empty() {
                texts.say("log-wiped")
            } else {
                value.to_owned()
            };
            Some(texts.say_with(
                "reading-field",
                &Args::new().text("label", texts.say(label)).text("value", shown),
            ))
        })
        .collect();
    said.join("; ")
}
