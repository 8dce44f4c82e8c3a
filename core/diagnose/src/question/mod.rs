//! Readings that can hardly be right: asked about once, with the likely slip named. Nothing is dropped or changed here;
//! what the person confirms is kept.

mod contradiction;
mod ohms_and_volts;
mod scale;

use holdfast_measure::PressureUnit;

use crate::{Answer, Circuit, FieldKey, Message, Reading, Situation};

/// A reading that can hardly be right.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// What is odd.
    pub message: Message,
    /// What has probably happened.
    pub likely: Message,
    /// The value it is about, where it is about one.
    pub key: Option<FieldKey>,
    /// The unit the figure was probably read in, where that would put it right.
    pub unit: Option<PressureUnit>,
}

impl Slip {
    fn new(message: Message, likely: Message) -> Self {
        Self {
            message,
            likely,
            key: None,
            unit: None,
        }
    }

    fn about(mut self, key: &FieldKey) -> Self {
        self.key = Some(key.clone());
        self
    }
}

/// Whether a reading should be asked about. A reading already confirmed never is.
pub fn question(
    circuit: &Circuit,
    situation: &Situation,
    earlier: &[Reading],
    reading: &Reading,
) -> Option<Slip> {
    if reading.confirmed {
        return None;
    }
    let odd = match &reading.answer {
        Answer::Hold(answer) => scale::odd_hold(situation, answer),
        Answer::Values(values) => scale::odd_gauge(circuit, situation, reading)
            .or_else(|| ohms_and_volts::odd(circuit, situation, reading, values)),
        Answer::Look(_) | Answer::NotDone { .. } | Answer::NotAvailable => return None,
    };
    odd.or_else(|| contradiction::with_others(circuit, situation, earlier, reading))
}

#[cfg(test)]
mod tests;
