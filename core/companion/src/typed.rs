//! What was typed into fields, as it was typed.

use serde::{Deserialize, Serialize};

use crate::protocol::FieldId;

/// Texts of fields as typed, newest last; what stands in the log is shown until something is typed over it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub(crate) struct Typed(Vec<(FieldId, String)>);

impl Typed {
    /// What was typed into a field.
    pub(crate) fn get(&self, field: &FieldId) -> Option<&str> {
        self.0
            .iter()
            .find(|(id, _)| id == field)
            .map(|(_, text)| text.as_str())
    }

    /// Keeps what was typed, cut at a length no honest entry has.
    pub(crate) fn put(&mut self, field: FieldId, text: &str) {
        let lines = has_lines(&field);
        let text: String = text
            .chars()
            .filter(|c| !upsets(*c))
            .map(|c| if c == '\n' && !lines { ' ' } else { c })
            .take(MOST_CHARACTERS)
            .collect();
        match self.0.iter_mut().find(|(id, _)| *id == field) {
            Some((_, there)) => *there = text,
            None => self.0.push((field, text)),
        }
    }

    /// Drops what was typed into a field.
    pub(crate) fn forget(&mut self, field: &FieldId) {
        self.0.retain(|(id, _)| id != field);
    }

    /// Whether nothing was typed.
    pub(crate) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

/// Longest text a field keeps; longer ones are cut.
const MOST_CHARACTERS: usize = 2_000;

/// Characters that draw nothing and can upset a page: control codes, but for the line break, and those that turn the
/// direction of what stands around them. Scripts that run to the left need none of them.
fn upsets(c: char) -> bool {
    (c.is_control() && c != '\n') || matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

/// Fields with room for several lines.
fn has_lines(field: &FieldId) -> bool {
    matches!(
        field,
        FieldId::ComplaintNote | FieldId::Agreed | FieldId::Note | FieldId::Answer { .. }
    )
}
