//! Small pieces that screens are put together from.

use crate::protocol::{
    Action, Button, ButtonWeight, Choice, ChoiceKind, ChoiceOption, Field, FieldId, FormItem, Frame, Keys,
    Notice, Pick, Picked, Section,
};

/// The thing to do next.
pub(crate) fn primary(label: String, action: Action) -> Button {
    Button {
        label,
        action,
        weight: ButtonWeight::Primary,
        why_not: None,
    }
}

/// One of several things to do.
pub(crate) fn plain(label: String, action: Action) -> Button {
    Button {
        label,
        action,
        weight: ButtonWeight::Plain,
        why_not: None,
    }
}

/// A way out, or something rare.
pub(crate) fn quiet(label: String, action: Action) -> Button {
    Button {
        label,
        action,
        weight: ButtonWeight::Quiet,
        why_not: None,
    }
}

impl Button {
    /// The same button, not to be tapped while there is a reason.
    pub(crate) fn unless(mut self, why_not: Option<String>) -> Self {
        self.why_not = why_not;
        self
    }
}

impl Frame {
    /// A frame with only a name.
    pub(crate) fn titled(title: String) -> Self {
        Self {
            spoken: title.clone(),
            title,
            back: None,
            menu: Vec::new(),
            cautions: Vec::new(),
            notice: None,
        }
    }

    /// The same frame with a way back.
    pub(crate) fn with_back(mut self, label: String) -> Self {
        self.back = Some(quiet(label, Action::Back));
        self
    }

    /// The same frame with something to know.
    pub(crate) fn with_notice(mut self, notice: Option<Notice>) -> Self {
        self.notice = notice.or(self.notice);
        self
    }
}

/// A paragraph.
pub(crate) fn words(text: String) -> FormItem {
    FormItem::Words { text }
}

/// Something to tap.
pub(crate) fn tap(button: Button) -> FormItem {
    FormItem::Tap { button }
}

/// Something to type.
pub(crate) fn entry(field: Field) -> FormItem {
    FormItem::Entry { field }
}

/// A part of a form.
pub(crate) fn section(heading: String, items: Vec<FormItem>) -> Section {
    Section { heading, items }
}

/// A field for words.
pub(crate) fn text_field(id: FieldId, label: String, value: String, keys: Keys) -> Field {
    Field {
        id,
        label,
        value,
        unit: String::new(),
        hint: String::new(),
        problem: None,
        keys,
    }
}

/// An option that can be picked.
pub(crate) fn option(label: String, picked: bool, pick: Pick) -> ChoiceOption {
    ChoiceOption {
        label,
        detail: String::new(),
        picture: None,
        picked: if picked { Picked::Yes } else { Picked::No },
        action: Action::Pick { pick },
    }
}

/// One of these.
pub(crate) fn one_of(label: String, options: Vec<ChoiceOption>) -> FormItem {
    FormItem::Options {
        choice: Choice {
            label,
            kind: ChoiceKind::One,
            options,
        },
    }
}

/// Any of these.
pub(crate) fn any_of(label: String, options: Vec<ChoiceOption>) -> FormItem {
    FormItem::Options {
        choice: Choice {
            label,
            kind: ChoiceKind::Many,
            options,
        },
    }
}
