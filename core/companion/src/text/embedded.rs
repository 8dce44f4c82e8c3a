//! The Fluent files, part of the program.

use unic_langid::LanguageIdentifier;

/// Every English file by name.
pub(super) const FILES: &[(&str, &str)] = &[
    ("terms.ftl", include_str!("../../texts/en/terms.ftl")),
    ("quantities.ftl", include_str!("../../texts/en/quantities.ftl")),
    ("parts.ftl", include_str!("../../texts/en/parts.ftl")),
    ("tests.ftl", include_str!("../../texts/en/tests.ftl")),
    ("holds.ftl", include_str!("../../texts/en/holds.ftl")),
    ("electric.ftl", include_str!("../../texts/en/electric.ftl")),
    ("faults.ftl", include_str!("../../texts/en/faults.ftl")),
    ("repairs.ftl", include_str!("../../texts/en/repairs.ftl")),
    ("cautions.ftl", include_str!("../../texts/en/cautions.ftl")),
    ("choices.ftl", include_str!("../../texts/en/choices.ftl")),
    ("states.ftl", include_str!("../../texts/en/states.ftl")),
    ("readings.ftl", include_str!("../../texts/en/readings.ftl")),
    ("log.ftl", include_str!("../../texts/en/log.ftl")),
    ("finding.ftl", include_str!("../../texts/en/finding.ftl")),
    ("messages.ftl", include_str!("../../texts/en/messages.ftl")),
    ("problems.ftl", include_str!("../../texts/en/problems.ftl")),
    ("report.ftl", include_str!("../../texts/en/report.ftl")),
    ("screens.ftl", include_str!("../../texts/en/screens.ftl")),
];

/// British words for the terms that differ from American ones.
pub(super) const BRITISH_TERMS: &str = include_str!("../../texts/en-GB/terms.ftl");

/// Whether a locale says bonnet and earth rather than hood and ground.
pub(super) fn speaks_british(language: &LanguageIdentifier) -> bool {
    language
        .region
        .is_some_and(|region| matches!(region.as_str(), "GB" | "IE" | "AU" | "NZ" | "ZA" | "IN"))
}
