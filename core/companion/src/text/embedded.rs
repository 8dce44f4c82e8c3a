//! The Fluent files, part of the program.

/// The files of a language by name.
pub(super) type Files = &'static [(&'static str, &'static str)];

/// The same files for each language, from its folder.
macro_rules! files {
    ($folder:literal) => {
        files!($folder; "terms", "quantities", "parts", "tests", "holds", "electric", "faults", "repairs", "cautions",
            "choices", "states", "readings", "log", "finding", "messages", "problems", "report", "costs", "jobs", "photos",
            "screens")
    };
    ($folder:literal; $($file:literal),+) => {
        &[$((
            concat!($file, ".ftl"),
            include_str!(concat!("../../texts/", $folder, "/", $file, ".ftl")),
        )),+]
    };
}

pub(super) const ENGLISH: Files = files!("en");
pub(super) const GERMAN: Files = files!("de");
pub(super) const SPANISH: Files = files!("es");
pub(super) const FRENCH: Files = files!("fr");

/// British words for the terms that differ from American ones.
pub(super) const BRITISH_TERMS: &str = include_str!("../../texts/en-GB/terms.ftl");

/// The languages by their own names, and what they all share.
pub(super) const SHARED: &str = include_str!("../../texts/shared.ftl");
