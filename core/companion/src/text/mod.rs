//! All wording: Fluent files in `texts/<language>`, looked up by key.
//!
//! The rest of the crate asks for a key and hands in values; no sentence stands in Rust. A quantity goes in
//! as text to show (number, no-break space, unit) and once more as a number, which only plurals use:
//! [`Args::quantity`].

mod args;
#[cfg(test)]
mod checks;
mod embedded;
mod figures;
mod language;
mod message;
mod money;
mod names;
mod pseudo;
mod quantity;
#[cfg(test)]
mod uses;

pub use args::Args;
pub use language::Language;
pub(crate) use names::kebab;
pub use names::{capital, sentence};

use std::borrow::Cow;

use figures::Figures;

use fluent_bundle::{FluentError, FluentResource, concurrent::FluentBundle};
use holdfast_measure::PressureUnit;
use icu_locale_core::{Locale, locale};
use unic_langid::LanguageIdentifier;

use crate::units::Units;

/// The wording in one language, with the units a person wants to see.
pub struct Texts {
    bundle: FluentBundle<FluentResource>,
    language: Language,
    figures: Figures,
    unit: PressureUnit,
    units: Units,
    larger: f32,
}

impl Texts {
    /// The wording for a phone's locale, a BCP 47 tag such as `en-GB`.
    ///
    /// An unreadable tag is treated as `en-US`.
    #[must_use]
    pub fn new(locale: &str) -> Self {
        let locale = locale_of(locale);
        Self::in_language(Language::of(&locale), &locale)
    }

    /// The wording in a language, numbers and dates as the phone's locale has them where it speaks that language.
    #[must_use]
    pub fn in_language(language: Language, phone: &Locale) -> Self {
        let figures = language.figures_of(phone);
        let plurals: LanguageIdentifier = figures.id.language.as_str().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![plurals]);
        bundle.set_use_isolating(false);
        bundle.set_transform(language.transform());
        for (_, source) in language.files() {
            bundle.add_resource_overriding(parsed(source));
        }
        for source in language.instead().into_iter().chain([embedded::SHARED]) {
            bundle.add_resource_overriding(parsed(source));
        }
        Self {
            bundle,
            language,
            figures: Figures::new(&figures),
            unit: PressureUnit::InHg,
            units: Units::METRIC,
            larger: 1.0,
        }
    }

    /// Shows vacuum in `unit` from now on.
    pub fn show_in(&mut self, unit: PressureUnit) {
        self.unit = unit;
    }

    /// The unit vacuum is shown in.
    #[must_use]
    pub fn unit(&self) -> PressureUnit {
        self.unit
    }

    /// Shows lengths and temperatures in these units from now on.
    pub(crate) fn measure_in(&mut self, units: Units) {
        self.units = units;
    }

    /// The units lengths and temperatures are shown and typed in.
    pub(crate) fn units(&self) -> &Units {
        &self.units
    }

    /// Draws words in drawings so much larger than usual from now on, as far as there is room.
    pub fn show_larger(&mut self, larger: f32) {
        self.larger = larger;
    }

    /// How much larger than usual words are drawn in drawings.
    #[must_use]
    pub fn larger(&self) -> f32 {
        self.larger
    }

    /// A language by its own name.
    #[must_use]
    pub fn name_of(&self, language: Language) -> String {
        self.say(&format!("language-{}", language.tag().to_lowercase()))
    }

    /// The language of the words.
    #[must_use]
    pub fn language(&self) -> Language {
        self.language
    }

    /// The words for a key without arguments.
    ///
    /// A key that does not exist gives the key's own words (`test-hold-title` → "test hold title"), never a
    /// panic and never an empty screen; the tests make sure that this does not happen for a key in use.
    #[must_use]
    pub fn say(&self, key: &str) -> String {
        self.say_with(key, &Args::new())
    }

    /// The words for a key with its arguments. A missing argument shows as an ellipsis.
    #[must_use]
    pub fn say_with(&self, key: &str, args: &Args) -> String {
        self.find(key, args).unwrap_or_else(|| key.replace('-', " "))
    }

    /// The words for a key, or nothing where the key does not exist.
    #[must_use]
    pub fn find(&self, key: &str, args: &Args) -> Option<String> {
        let (id, attribute) = match key.split_once('.') {
            Some((id, attribute)) => (id, Some(attribute)),
            None => (key, None),
        };
        let message = self.bundle.get_message(id)?;
        let pattern = match attribute {
            Some(name) => message.get_attribute(name)?.value(),
            None => message.value()?,
        };
        let mut errors: Vec<FluentError> = Vec::new();
        let text = self
            .bundle
            .format_pattern(pattern, Some(args.fluent()), &mut errors);
        if errors.is_empty() {
            return Some(text.into_owned());
        }
        #[cfg(test)]
        assert!(errors.is_empty(), "{key}: {errors:?}");
        Some(without_braces(&text))
    }

    /// Whether a key exists.
    #[cfg(test)]
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
    }

    /// Several things in one phrase: "a", "a and b", "a, b and c".
    #[must_use]
    pub fn list(&self, things: &[String]) -> String {
        match things {
            [] => String::new(),
            [one] => one.clone(),
            [first, last] => self.say_with("list-two", &Args::new().text("first", first).text("last", last)),
            [first @ .., last] => self.say_with(
                "list-many",
                &Args::new().text("first", first.join(", ")).text("last", last),
            ),
        }
    }
}

/// A phone's locale; American English where its tag does not read.
#[must_use]
pub fn locale_of(tag: &str) -> Locale {
    tag.replace('_', "-").parse().unwrap_or(locale!("en-US"))
}

/// A Fluent source as a resource. What can't be parsed is left out; the tests parse every file strictly.
fn parsed(source: &str) -> FluentResource {
    match FluentResource::try_new(source.to_owned()) {
        Ok(resource) => resource,
        Err((resource, _)) => resource,
    }
}

/// Fluent shows what it could not resolve as `{$name}`; a person sees an ellipsis instead.
fn without_braces(text: &str) -> String {
    let mut shown = String::with_capacity(text.len());
    let mut rest = Cow::Borrowed(text);
    while let Some((before, inside)) = rest.split_once('{') {
        shown.push_str(before);
        shown.push('…');
        rest = Cow::Owned(
            inside
                .split_once('}')
                .map_or_else(String::new, |(_, after)| after.to_owned()),
        );
    }
    shown.push_str(&rest);
    shown
}
