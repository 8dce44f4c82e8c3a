//! What a value should be under a supposed cause, and how likely what was read is then.

use holdfast_measure::normal_cdf;

use crate::faults::Slips;

/// Volts that a meter can show in this job.
const VOLTS_RANGE: f64 = 16.0;
/// Width of the range of ohms on the scale of ln(1 + Ω): 0 to 10 MΩ.
const OHMS_RANGE: f64 = 16.0;
/// Share of slipped resistance readings that show "over range".
const SLIPPED_OPEN: f64 = 0.3;
/// Width of the range of seconds on the scale of ln s: 0.1 s to 2 min.
const SECONDS_RANGE: f64 = 7.0;

/// Numbers that differ by less than this share count as the same when outcomes are imagined.
const ALIKE: f64 = 0.15;

/// Marks of the scale for what is felt: 0 to 3.
const MARKS: usize = 4;

/// Volts that a meter shows of nothing differ by so much.
const UNSEEN_SD: f64 = 0.03;

/// What a value should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Expect {
    /// Volts around a mean; a share `broad` of cars shows anything.
    Volts { mean: f64, sd: f64, broad: f64 },
    /// Ohms; infinite for "over range".
    Ohms { ohm: f64, relative: f64, leads: f64 },
    /// A vacuum in kPa within 0 to `range`.
    Vacuum { mean: f64, sd: f64, range: f64 },
    /// Seconds, log-normal.
    Seconds { median: f64, log10_sd: f64 },
    /// Some other figure, within `range`.
    Figure { mean: f64, sd: f64, range: f64 },
    /// A mark on the scale for what is felt, with the probability of each.
    Mark([f64; MARKS]),
    /// Yes with this probability, before mistakes.
    Yes(f64),
}

/// A value that was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Value {
    /// A number, in the unit of its [`Expect`].
    Number(f64),
    /// Over range.
    Open,
    /// Yes or no.
    Yes(bool),
}

impl Value {
    /// Whether two values would be read as the same thing.
    pub fn is_like(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Number(a), Self::Number(b)) => (a - b).abs() <= ALIKE * (1.0 + a.abs().max(b.abs())),
            _ => self == other,
        }
    }
}

/// Density of a normal distribution.
pub(super) fn normal(x: f64, mean: f64, sd: f64) -> f64 {
    let z = (x - mean) / sd;
    (-0.5 * z * z).exp() / (sd * (2.0 * std::f64::consts::PI).sqrt())
}

/// Marks that are likelier than this stand for what somebody could give.
const LIKELY_MARK: f64 = 0.2;

impl Expect {
    /// A mark given to something felt this strongly, with the scatter of people; the scale's ends take what is beyond them.
    pub fn mark(felt: f64, sd: f64) -> Self {
        let edges = [0, 1, 2].map(|mark| normal_cdf((f64::from(mark) + 0.5 - felt) / sd));
        Self::Mark([edges[0], edges[1] - edges[0], edges[2] - edges[1], 1.0 - edges[2]])
    }

    /// Probability (density) of what was read. Never 0: every reading can be a slip.
    pub fn likelihood(&self, seen: Value, slips: &Slips) -> f64 {
        let slip = slips.reading.value;
        match (self, seen) {
            (Self::Volts { mean, sd, broad }, Value::Number(x)) => {
                let anything = slip + (1.0 - slip) * broad;
                (1.0 - anything) * normal(x, *mean, *sd) + anything / VOLTS_RANGE
            }
            (Self::Ohms { ohm, .. }, Value::Open) => {
                if ohm.is_infinite() {
                    1.0 - slip
                } else {
                    slip * SLIPPED_OPEN
                }
            }
            (Self::Ohms { ohm, relative, leads }, Value::Number(x)) => {
                let wrong = slip * (1.0 - SLIPPED_OPEN) / OHMS_RANGE;
                if ohm.is_infinite() {
                    return wrong;
                }
                let scale = 1.0 + x.max(0.0);
                let sd = (relative * relative + (leads / scale).powi(2)).sqrt();
                (1.0 - slip) * normal(scale.ln(), (1.0 + ohm).ln(), sd) + wrong
            }
            (Self::Vacuum { mean, sd, range } | Self::Figure { mean, sd, range }, Value::Number(x)) => {
                (1.0 - slip) * normal(x, *mean, *sd) + slip / range
            }
            (Self::Seconds { median, log10_sd }, Value::Number(x)) => {
                let sd = log10_sd * std::f64::consts::LN_10;
                (1.0 - slip) * normal(x.max(0.1).ln(), median.ln(), sd) + slip / SECONDS_RANGE
            }
            (Self::Mark(shares), Value::Number(x)) => {
                let mark = (x.round().max(0.0) as usize).min(MARKS - 1);
                (1.0 - slip) * shares[mark] + slip / MARKS as f64
            }
            (Self::Yes(p), Value::Yes(yes)) => {
                let wrong = slips.answer.value;
                let p_yes = p * (1.0 - wrong) + (1.0 - p) * wrong;
                if yes { p_yes } else { 1.0 - p_yes }
            }
            // A value of another kind than the test asks for says nothing.
            _ => 1.0,
        }
    }

    /// What a meter shows of it that shows nothing.
    pub fn unseen(&self) -> Self {
        match self {
            Self::Volts { .. } => Self::Volts {
                mean: 0.0,
                sd: UNSEEN_SD,
                broad: 0.0,
            },
            Self::Ohms { relative, leads, .. } => Self::Ohms {
                ohm: f64::INFINITY,
                relative: *relative,
                leads: *leads,
            },
            Self::Yes(_) => Self::Yes(1.0),
            other => *other,
        }
    }

    /// What should be seen where one figure stands for all that are like it.
    pub fn coarse(&self) -> Self {
        let like = 0.5 * ALIKE;
        match *self {
            Self::Volts { mean, sd, broad } => Self::Volts {
                mean,
                sd: sd.hypot(like * (1.0 + mean.abs())),
                broad,
            },
            Self::Vacuum { mean, sd, range } => Self::Vacuum {
                mean,
                sd: sd.hypot(like * (1.0 + mean.abs())),
                range,
            },
            Self::Figure { mean, sd, range } => Self::Figure {
                mean,
                sd: sd.hypot(like * (1.0 + mean.abs())),
                range,
            },
            Self::Ohms { ohm, relative, leads } => Self::Ohms {
                ohm,
                relative: relative.hypot(like),
                leads,
            },
            other => other,
        }
    }

    /// The values that stand for what could be read under this cause.
    pub fn typical(&self) -> Vec<Value> {
        match self {
            Self::Volts { mean, .. } | Self::Vacuum { mean, .. } | Self::Figure { mean, .. } => {
                vec![Value::Number(*mean)]
            }
            Self::Seconds { median, .. } => vec![Value::Number(*median)],
            Self::Ohms { ohm, .. } if ohm.is_infinite() => vec![Value::Open],
            Self::Ohms { ohm, .. } => vec![Value::Number(*ohm)],
            Self::Mark(shares) => (0..MARKS)
                .filter(|mark| shares[*mark] >= LIKELY_MARK)
                .map(|mark| Value::Number(mark as f64))
                .collect(),
            Self::Yes(p) if *p >= 0.98 => vec![Value::Yes(true)],
            Self::Yes(p) if *p <= 0.02 => vec![Value::Yes(false)],
            Self::Yes(_) => vec![Value::Yes(true), Value::Yes(false)],
        }
    }
}
