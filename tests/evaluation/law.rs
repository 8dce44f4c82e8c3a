//! What a person may report, as explicit distributions: the same object draws a reading and says how likely one is.

use std::borrow::Cow;

use crate::draw::{Draw, below};

/// One reported value.
#[derive(Debug, Clone, PartialEq)]
pub enum Datum {
    Number(f64),
    Yes(bool),
    Open,
    Word(&'static str),
}

/// How one value is distributed.
#[derive(Debug, Clone)]
pub enum Law {
    /// Yes with this probability.
    Yes(f64),
    /// Normal, read to a step; nothing reads below zero.
    Number { mean: f64, sd: f64, step: f64 },
    /// Ohms over range.
    Open,
    /// Words with their probabilities.
    Choice(Vec<(&'static str, f64)>),
    /// Chosen by the person, whatever the car: it says nothing.
    Given(f64),
    /// One of several, with weights that sum to 1.
    Mix(Vec<(f64, Law)>),
}

pub type Key = Cow<'static, str>;

/// A way in which a reading goes wrong by a person's mistake.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Slip {
    WrongUnit,
    InnerScale,
    BadSeal,
    StoppedEarly,
    WrongPin,
    AcVolts,
    EngineState,
    Misjudged,
}

/// One way in which a reading comes about.
#[derive(Debug, Clone)]
pub struct Branch {
    pub weight: f64,
    pub slip: Option<Slip>,
    pub fields: Vec<(Key, Law)>,
}

/// A reading as it was reported.
pub type Report = Vec<(Key, Datum)>;

impl Law {
    pub fn number(mean: f64, sd: f64, step: f64) -> Self {
        Self::Number { mean, sd, step }
    }

    pub fn draw(&self, draw: &mut Draw) -> Datum {
        match self {
            Self::Yes(p) => Datum::Yes(draw.happens(*p)),
            Self::Number { mean, sd, step } => {
                let x = ((mean + sd * draw.normal()) / step).round() * step;
                Datum::Number(x.max(0.0))
            }
            Self::Open => Datum::Open,
            Self::Given(x) => Datum::Number(*x),
            Self::Choice(of) => Datum::Word(of[draw.by_weight(of.iter().map(|(_, p)| *p))].0),
            Self::Mix(of) => of[draw.by_weight(of.iter().map(|(p, _)| *p))].1.draw(draw),
        }
    }

    /// Probability of the value, within its rounding.
    pub fn mass(&self, datum: &Datum) -> f64 {
        match (self, datum) {
            (Self::Yes(p), Datum::Yes(yes)) => {
                if *yes {
                    *p
                } else {
                    1.0 - p
                }
            }
            (Self::Number { mean, sd, step }, Datum::Number(x)) => {
                let upper = below((x + step / 2.0 - mean) / sd);
                let lower = if *x <= step / 2.0 {
                    0.0
                } else {
                    below((x - step / 2.0 - mean) / sd)
                };
                (upper - lower).max(0.0)
            }
            (Self::Open, Datum::Open) | (Self::Given(_), Datum::Number(_)) => 1.0,
            (Self::Choice(of), Datum::Word(word)) => {
                of.iter().filter(|(w, _)| w == word).map(|(_, p)| *p).sum()
            }
            (Self::Mix(of), datum) => of.iter().map(|(p, law)| p * law.mass(datum)).sum(),
            _ => 0.0,
        }
    }

    /// The same figures read on another scale.
    pub fn scaled(&self, by: f64) -> Self {
        match self {
            Self::Number { mean, sd, step } => Self::number(mean * by, sd * by, step * by),
            Self::Given(x) => Self::Given(x * by),
            Self::Mix(of) => Self::Mix(of.iter().map(|(p, law)| (*p, law.scaled(by))).collect()),
            other => other.clone(),
        }
    }

    /// The opposite answer.
    pub fn flipped(&self) -> Self {
        match self {
            Self::Yes(p) => Self::Yes(1.0 - p),
            other => other.clone(),
        }
    }
}

impl Branch {
    pub fn right(fields: Vec<(Key, Law)>) -> Self {
        Self {
            weight: 1.0,
            slip: None,
            fields,
        }
    }

    fn mass(&self, report: &Report) -> f64 {
        report
            .iter()
            .map(|(key, datum)| {
                self.fields
                    .iter()
                    .find(|(k, _)| k == key)
                    .map_or(0.0, |(_, law)| law.mass(datum))
            })
            .product()
    }
}

/// A slip's rate, and what is reported then.
pub type Slipped = (f64, Slip, Vec<(Key, Law)>);

/// What slips, with their rates, besides the right reading.
pub fn with_slips(right: Branch, slips: Vec<Slipped>) -> Vec<Branch> {
    let rate: f64 = slips.iter().map(|(rate, ..)| *rate).sum();
    let mut branches = vec![Branch {
        weight: 1.0 - rate,
        ..right
    }];
    branches.extend(slips.into_iter().map(|(weight, slip, fields)| Branch {
        weight,
        slip: Some(slip),
        fields,
    }));
    branches
}

/// Natural logarithm of a report's probability.
pub fn ln_mass(branches: &[Branch], report: &Report) -> f64 {
    let mass: f64 = branches.iter().map(|b| b.weight * b.mass(report)).sum();
    mass.max(1e-12).ln()
}
