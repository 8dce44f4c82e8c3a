//! Every message that catalogue, results and questions can say: for whoever writes the words.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::{Arg, Message};

const MESSAGES: &str = include_str!("../data/messages.json");

/// A message as it stands in the list.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ListedMessage {
    /// Its id.
    pub id: String,
    /// Its arguments: name and kind. A name that ends in a question mark can be missing.
    pub args: BTreeMap<String, ArgKind>,
    /// What is meant, for a writer; never shown.
    pub gist: String,
}

impl ListedMessage {
    /// Whether a message has this id, all arguments that it must have, each of its kind, and no others.
    pub fn fits(&self, message: &Message) -> bool {
        let listed = |name: &str| {
            self.args
                .get(name)
                .or_else(|| self.args.get(&format!("{name}?")))
                .copied()
        };
        message.id.as_str() == self.id
            && message
                .args
                .iter()
                .all(|(name, arg)| listed(name) == Some(arg.kind()))
            && self
                .args
                .keys()
                .filter(|name| !name.ends_with('?'))
                .all(|name| message.args.iter().any(|(given, _)| given == name))
    }
}

/// The kind of an argument.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs, reason = "each is the kind of the argument of the same name")]
pub enum ArgKind {
    Text,
    Words,
    Part,
    Test,
    Fault,
    Pressure,
    Unit,
    Volts,
    Ohms,
    Amps,
    Seconds,
    Minutes,
    Percent,
    Leak,
    Cm3,
    Millimetres,
    Metres,
    Celsius,
    Rpm,
    Count,
    Times,
}

impl Arg {
    /// What kind of argument it is.
    pub fn kind(&self) -> ArgKind {
        match self {
            Self::Text(_) => ArgKind::Text,
            Self::Words(_) => ArgKind::Words,
            Self::Part(_) => ArgKind::Part,
            Self::Test(_) => ArgKind::Test,
            Self::Fault(_) => ArgKind::Fault,
            Self::Pressure(_) => ArgKind::Pressure,
            Self::Unit(_) => ArgKind::Unit,
            Self::Volts(_) => ArgKind::Volts,
            Self::Ohms(_) => ArgKind::Ohms,
            Self::Amps(_) => ArgKind::Amps,
            Self::Seconds(_) => ArgKind::Seconds,
            Self::Minutes(_) => ArgKind::Minutes,
            Self::Percent(_) => ArgKind::Percent,
            Self::Leak(_) => ArgKind::Leak,
            Self::Cm3(_) => ArgKind::Cm3,
            Self::Millimetres(_) => ArgKind::Millimetres,
            Self::Metres(_) => ArgKind::Metres,
            Self::Celsius(_) => ArgKind::Celsius,
            Self::Rpm(_) => ArgKind::Rpm,
            Self::Count(_) => ArgKind::Count,
            Self::Times(_) => ArgKind::Times,
        }
    }
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct MessageData {
    #[serde(rename = "$schema")]
    _schema: String,
    #[serde(rename = "about")]
    _about: String,
    messages: Vec<ListedMessage>,
}

static DATA: LazyLock<MessageData> = LazyLock::new(|| serde_json::from_str(MESSAGES).unwrap_or_default());

/// Every message that catalogue, results and questions can say (those of faults, plan and findings are listed there).
pub fn listed_messages() -> &'static [ListedMessage] {
    &DATA.messages
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;
    use std::path::Path;

    use super::*;

    /// Ids in quotes in the sources that start like a message.
    fn ids_in(folder: &Path, found: &mut BTreeSet<String>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() && !path.ends_with("tests") {
                ids_in(&path, found);
            } else if path.is_file() && !path.ends_with("tests.rs") {
                let text = std::fs::read_to_string(&path).unwrap();
                let code = text.split("#[cfg(test)]").next().unwrap();
                let mut quoted = code.split('"').skip(1).step_by(2).map(str::to_owned);
                found.extend(quoted.by_ref().filter(|t| {
                    t.len() > 1
                        && t.contains('-')
                        && t.chars()
                            .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
                }));
            }
        }
    }

    #[test]
    fn what_is_said_and_what_is_listed_are_the_same() {
        serde_json::from_str::<MessageData>(MESSAGES).unwrap();
        let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        let mut said = BTreeSet::new();
        ids_in(&src.join("judge"), &mut said);
        ids_in(&src.join("question"), &mut said);
        let listed: BTreeSet<String> = listed_messages().iter().map(|m| m.id.clone()).collect();
        assert_eq!(listed.len(), listed_messages().len(), "an id is listed twice");
        let unlisted: Vec<_> = said.difference(&listed).collect();
        assert!(unlisted.is_empty(), "said but not listed: {unlisted:?}");
        let by_name = |id: &&String| id.starts_with("not-offered-") || id.starts_with("look-found-");
        let unsaid: Vec<_> = listed.difference(&said).filter(|id| !by_name(id)).collect();
        assert!(unsaid.is_empty(), "listed but never said: {unsaid:?}");
    }

    #[test]
    fn a_missing_or_strange_argument_is_found() {
        let listed = listed_messages().iter().find(|m| m.id == "flow-free").unwrap();
        let message = Message::new("flow-free");
        assert!(!listed.fits(&message));
        let good = message.clone().with("part", Arg::Part("front_hose".into()));
        assert!(listed.fits(&good));
        assert!(!listed.fits(&message.with("part", Arg::Volts(1.0))));
        assert!(!listed.fits(&good.with("volts", Arg::Volts(1.0))));
    }
}
