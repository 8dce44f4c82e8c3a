//! The case in the log: vehicle, complaint, notes, the repair, how it ended, what was reported.

use holdfast_diagnose::ComponentId;
use holdfast_joblog::{
    Closed, Complaint, Note, Opened, Repair, ReportLanguage, ReportMade, ReportParts, Vehicle, VehicleKind,
};

use super::about;
use crate::compose::stated::fields;
use crate::text::{Args, Language, Texts, capital, kebab, sentence};

pub(super) fn opened(texts: &Texts, opened: &Opened) -> String {
    texts.say_with(
        "log-opened",
        &Args::new().text("software", opened.software.as_str()),
    )
}

pub(super) fn vehicle_kind(texts: &Texts, kind: &VehicleKind) -> String {
    texts.say_with("log-vehicle-kind", &Args::new().text("kind", kind.label.as_str()))
}

pub(super) fn vehicle(texts: &Texts, vehicle: &Vehicle) -> String {
    fields(
        texts,
        &[
            ("record-plate", vehicle.plate.as_deref()),
            ("record-label", vehicle.label.as_deref()),
            ("record-vin", vehicle.vin.as_deref()),
            (
                "record-odometer",
                vehicle
                    .odometer
                    .as_deref()
                    .map(|typed| texts.odometer(typed))
                    .as_deref(),
            ),
            (
                "record-odometer-out",
                vehicle
                    .odometer_out
                    .as_deref()
                    .map(|typed| texts.odometer(typed))
                    .as_deref(),
            ),
            ("record-handed-over", vehicle.handed_over.as_deref()),
            ("record-customer", vehicle.customer.as_deref()),
            ("record-agreed", vehicle.agreed.as_deref()),
        ],
    )
}

pub(super) fn complaint(texts: &Texts, complaint: &Complaint) -> String {
    let mut said: Vec<String> = complaint
        .phrases
        .iter()
        .map(|id| texts.say(&format!("complaint-{}", kebab(id))))
        .collect();
    if !complaint.note.trim().is_empty() {
        said.push(texts.say_with("quoted", &Args::new().text("words", complaint.note.trim())));
    }
    texts.say_with("log-complaint", &Args::new().text("complaint", said.join("; ")))
}

pub(super) fn note(texts: &Texts, note: &Note) -> String {
    let words = texts.say_with("log-note", &Args::new().text("note", note.text.trim()));
    about(texts, words, &note.about)
}

pub(super) fn repair(texts: &Texts, repair: &Repair) -> String {
    let part = ComponentId::new(repair.component.clone());
    let key = if repair.done {
        "log-repair-done"
    } else {
        "log-repair-proposed"
    };
    let mut words = texts.say_with(key, &texts.of_part(&part));
    let torque = repair.torque.trim();
    let torque = if torque.is_empty() {
        String::new()
    } else {
        texts.say_with("log-repair-torque", &Args::new().text("torque", torque))
    };
    for more in [&repair.part, &torque, &repair.note] {
        if !more.trim().is_empty() {
            words.push(' ');
            words.push_str(&sentence(more));
        }
    }
    words
}

pub(super) fn closed(texts: &Texts, closed: &Closed) -> String {
    let headline = if closed.headline.trim().is_empty() {
        let parts: Vec<String> = closed
            .parts
            .iter()
            .map(|id| texts.part(&ComponentId::new(id.clone())))
            .collect();
        if parts.is_empty() {
            texts.say("job-state-no-fault")
        } else {
            capital(&texts.list(&parts))
        }
    } else {
        closed.headline.clone()
    };
    texts.say_with(
        if closed.repaired {
            "log-closed-repaired"
        } else {
            "log-closed"
        },
        &Args::new()
            .text("finding", headline.trim_end_matches('.'))
            .text("percent", texts.percent(closed.p))
            .text("software", closed.software.as_str()),
    )
}

pub(super) fn report_language(texts: &Texts, chosen: &ReportLanguage) -> String {
    match Language::of_tag(&chosen.tag) {
        Some(language) => texts.say_with(
            "log-report-language",
            &Args::new().text("language", texts.name_of(language)),
        ),
        None => texts.say("log-report-language-screens"),
    }
}

pub(super) fn report_parts(texts: &Texts, parts: &ReportParts) -> String {
    if parts.left_out.is_empty() {
        return texts.say("log-report-whole");
    }
    let named: Vec<String> = parts
        .left_out
        .iter()
        .map(|part| texts.say(&format!("report-part-{}", part.as_str())))
        .collect();
    texts.say_with("log-report-parts", &Args::new().text("parts", named.join(", ")))
}

pub(super) fn report_made(texts: &Texts, made: &ReportMade) -> String {
    texts.say_with(
        "log-report",
        &Args::new()
            .count("pages", made.pages as usize)
            .text("digest", made.sha256.chars().take(12).collect::<String>()),
    )
}
