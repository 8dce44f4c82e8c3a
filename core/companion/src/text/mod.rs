//! All wording: Fluent files in `texts/<language>`, looked up by key.
//!
//! The rest of the crate asks for a key and hands in values; no sentence stands in Rust. A quantity goes in
//! as text to show (number, no-break space, unit) and once more as a number, which only plurals use:
//! [`Args::quantity`].

mod args;
#[cfg(test)]
mod checks;
mod embedded;
mod message;
mod names;
mod quantity;
#[cfg(test)]
mod uses;

pub use args::Args;
pub(crate) use names::kebab;
pub use names::{capital, sentence};

use std::borrow::Cow;

use fluent_bundle::{FluentError, FluentResource, concurrent::FluentBundle};
use holdfast_measure::PressureUnit;
use unic_langid::LanguageIdentifier;

/// The wording in one language, with the units a person wants to see.
pub struct Texts {
    bundle: FluentBundle<FluentResource>,
    language: LanguageIdentifier,
    unit: PressureUnit,
}

impl Texts {
    /// The wording for a phone's locale, a BCP 47 tag such as `en-GB`.
    ///
    /// English is the only language; its regional words (hood or bonnet, ground or earth) follow the locale. An
    /// unreadable tag is treated as `en-US`.
    #[must_use]
    pub fn new(locale: &str) -> Self {
        let asked: Option<LanguageIdentifier> = locale.parse().ok();
        let language = asked
            .filter(|asked| asked.language.as_str() == "en")
            .or_else(|| "en-US".parse().ok())
            .unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language.clone()]);
        bundle.set_use_isolating(false);
        for (_, source) in embedded::FILES {
            bundle.add_resource_overriding(parsed(source));
        }
        if embedded::speaks_british(&language) {
            bundle.add_resource_overriding(parsed(embedded::BRITISH_TERMS));
        }
        Self {
            bundle,
            language,
            unit: PressureUnit::InHg,
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

    /// BCP 47 tag of the language of the words, for a voice.
    #[must_use]
    pub fn language(&self) -> String {
        self.language.to_string()
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
