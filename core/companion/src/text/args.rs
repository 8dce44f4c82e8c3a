//! The values that go into a sentence.

use std::borrow::Cow;

use fluent_bundle::{FluentArgs, FluentValue};

/// The values that go into a sentence, by name.
#[derive(Debug, Default)]
pub struct Args {
    fluent: FluentArgs<'static>,
}

impl Args {
    /// No values.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Words, or an id that a sentence selects by.
    #[must_use]
    pub fn text(mut self, name: impl Into<Cow<'static, str>>, words: impl Into<String>) -> Self {
        self.fluent.set(name, FluentValue::from(words.into()));
        self
    }

    /// A whole number, shown as digits and usable for plurals.
    #[must_use]
    pub fn count(mut self, name: &'static str, count: usize) -> Self {
        self.fluent.set(name, FluentValue::from(count));
        self
    }

    /// A quantity: `$name` is the text to show, `$name-n` the number, for plurals only.
    #[must_use]
    pub fn quantity(mut self, name: &'static str, shown: impl Into<String>, number: f64) -> Self {
        self.fluent.set(name, FluentValue::from(shown.into()));
        self.fluent.set(format!("{name}-n"), FluentValue::from(number));
        self
    }

    pub(super) fn fluent(&self) -> &FluentArgs<'static> {
        &self.fluent
    }
}

impl Clone for Args {
    fn clone(&self) -> Self {
        let mut fluent = FluentArgs::new();
        for (name, value) in self.fluent.iter() {
            fluent.set(name.to_owned(), value.clone().into_owned());
        }
        Self { fluent }
    }
}
