//! What is to be said, as an id and typed arguments; the words are made elsewhere.

use std::borrow::Cow;
use std::fmt;

use holdfast_measure::{Pressure, PressureUnit};
use serde::{Deserialize, Serialize};

use crate::{ComponentId, FaultId, TestId};

/// The name of a text, such as `hold-result-leaks`.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct MessageId(Cow<'static, str>);

impl MessageId {
    /// A name known at compile time.
    pub const fn fixed(text: &'static str) -> Self {
        Self(Cow::Borrowed(text))
    }

    /// A name put together at run time.
    pub fn new(text: impl Into<String>) -> Self {
        Self(Cow::Owned(text.into()))
    }

    /// As text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for MessageId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl From<&'static str> for MessageId {
    fn from(text: &'static str) -> Self {
        Self::fixed(text)
    }
}

/// An argument of a [`Message`]: a value with its kind, so that whoever renders it knows unit and number form.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// Another text, by its id.
    Text(MessageId),
    /// Words as a person or a tool gave them, shown as they are.
    Words(String),
    /// A component.
    Part(ComponentId),
    /// A test.
    Test(TestId),
    /// A fault.
    Fault(FaultId),
    /// A vacuum below ambient, or a difference of two.
    Pressure(Pressure),
    /// A pressure unit.
    Unit(PressureUnit),
    /// Volts.
    Volts(f64),
    /// Ohms.
    Ohms(f64),
    /// Amperes.
    Amps(f64),
    /// Seconds.
    Seconds(f64),
    /// Minutes.
    Minutes(f64),
    /// A share, 1 = 100 %.
    Percent(f64),
    /// A leak, std cm³/min (20 °C, 101.325 kPa).
    Leak(f64),
    /// A volume, cm³.
    Cm3(f64),
    /// A length, mm.
    Millimetres(f64),
    /// A height, m.
    Metres(f64),
    /// A temperature, °C.
    Celsius(f64),
    /// Revolutions a minute.
    Rpm(f64),
    /// A plain count.
    Count(i64),
    /// How many times as much.
    Times(f64),
}

/// A text by its id, with its arguments.
#[derive(Debug, Clone, PartialEq)]
pub struct Message {
    /// Which text.
    pub id: MessageId,
    /// What goes in, by name.
    pub args: Vec<(&'static str, Arg)>,
}

impl Message {
    /// A text without arguments.
    pub fn new(id: impl Into<MessageId>) -> Self {
        Self {
            id: id.into(),
            args: Vec::new(),
        }
    }

    /// The same text with one argument more.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args.push((name, arg));
        self
    }
}
