//! The languages the texts exist in, and which of them a locale gets.

use icu_locale_core::Locale;

use super::embedded::{self, Files};
use super::pseudo;
use crate::protocol::Direction;

/// A language with words of its own, or one of the two that only tests use.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Language {
    /// English with American words.
    American,
    /// English with British words.
    British,
    /// German.
    German,
    /// Spanish.
    Spanish,
    /// French.
    French,
    /// English made longer and accented: what is cut off or does not come from the texts shows.
    Longer,
    /// English set from right to left.
    Mirrored,
}

impl Language {
    /// What a person can choose from.
    pub const OFFERED: [Self; 5] = [
        Self::American,
        Self::British,
        Self::German,
        Self::Spanish,
        Self::French,
    ];

    /// Every language, those of the tests too.
    #[cfg(test)]
    pub(crate) const ALL: [Self; 7] = [
        Self::American,
        Self::British,
        Self::German,
        Self::Spanish,
        Self::French,
        Self::Longer,
        Self::Mirrored,
    ];

    /// Its BCP 47 tag; the pseudo-locales have those that are in common use for them.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::American => "en-US",
            Self::British => "en-GB",
            Self::German => "de",
            Self::Spanish => "es",
            Self::French => "fr",
            Self::Longer => "en-XA",
            Self::Mirrored => "ar-XB",
        }
    }

    /// The language of a tag of ours.
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Self> {
        let all = Self::OFFERED.into_iter().chain([Self::Longer, Self::Mirrored]);
        all.into_iter().find(|language| language.tag() == tag)
    }

    /// The language for a phone's locale; English where there is no better one.
    #[must_use]
    pub fn of(locale: &Locale) -> Self {
        let region = locale.id.region.as_ref().map_or("", |region| region.as_str());
        match (locale.id.language.as_str(), region) {
            ("de", _) => Self::German,
            ("es", _) => Self::Spanish,
            ("fr", _) => Self::French,
            ("en", "XA") => Self::Longer,
            ("ar", "XB") => Self::Mirrored,
            ("en", "GB" | "IE" | "AU" | "NZ" | "ZA" | "IN") => Self::British,
            _ => Self::American,
        }
    }

    /// Which way it runs.
    #[must_use]
    pub const fn direction(self) -> Direction {
        match self {
            Self::Mirrored => Direction::RightToLeft,
            _ => Direction::LeftToRight,
        }
    }

    /// Its Fluent files.
    pub(super) const fn files(self) -> Files {
        match self {
            Self::German => embedded::GERMAN,
            Self::Spanish => embedded::SPANISH,
            Self::French => embedded::FRENCH,
            Self::American | Self::British | Self::Longer | Self::Mirrored => embedded::ENGLISH,
        }
    }

    /// Words that replace some of the files'.
    pub(super) const fn instead(self) -> Option<&'static str> {
        match self {
            Self::British => Some(embedded::BRITISH_TERMS),
            _ => None,
        }
    }

    /// What happens to every text before it is shown.
    pub(super) fn transform(self) -> Option<pseudo::Transform> {
        match self {
            Self::Longer => Some(pseudo::longer),
            Self::Mirrored => Some(pseudo::mirrored),
            _ => None,
        }
    }

    /// The locale for numbers, dates and plurals: the phone's own if it speaks this language, else the language's.
    pub(super) fn figures_of(self, phone: &Locale) -> Locale {
        let own: Locale = match self {
            Self::Longer | Self::Mirrored => "en-US",
            _ => self.tag(),
        }
        .parse()
        .unwrap_or(Locale::UNKNOWN);
        if Self::of(phone) == self && own.id.language == phone.id.language {
            phone.clone()
        } else {
            own
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(tag: &str) -> Language {
        Language::of(&tag.parse().unwrap())
    }

    #[test]
    fn a_locale_gets_its_language_and_english_where_there_is_none() {
        assert_eq!(of("de-AT"), Language::German);
        assert_eq!(of("fr-CA"), Language::French);
        assert_eq!(of("es-419"), Language::Spanish);
        assert_eq!(of("en-IE"), Language::British);
        assert_eq!(of("en"), Language::American);
        assert_eq!(of("ja-JP"), Language::American);
        for language in Language::ALL {
            assert_eq!(of(language.tag()), language);
            assert_eq!(Language::of_tag(language.tag()), Some(language));
        }
    }

    #[test]
    fn figures_follow_the_phone_where_it_speaks_the_language() {
        let swiss: Locale = "de-CH".parse().unwrap();
        assert_eq!(Language::German.figures_of(&swiss), swiss);
        assert_eq!(Language::French.figures_of(&swiss).to_string(), "fr");
        assert_eq!(
            Language::American
                .figures_of(&"ja-JP".parse().unwrap())
                .to_string(),
            "en-US"
        );
    }
}
