//! A small discrete network: one cause, and tests whose outcomes depend on nothing else. What the reasoning and a
//! general-purpose library are both asked about.

use serde_json::{Value, json};

/// A network in numbers.
#[derive(Debug, Clone, PartialEq)]
pub struct Network {
    pub causes: Vec<Cause>,
    pub tests: Vec<Test>,
}

/// A cause with its probability before anything was seen.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause {
    pub name: String,
    pub p: f64,
}

/// A test; `p[cause][outcome]` sums to 1 over the outcomes.
#[derive(Debug, Clone, PartialEq)]
pub struct Test {
    pub id: String,
    pub outcomes: Vec<String>,
    pub p: Vec<Vec<f64>>,
}

/// What was seen: tests and outcomes by their numbers.
pub type Seen = Vec<(usize, usize)>;

/// Something that works out how likely each cause is.
pub trait Enumerates {
    fn posterior(&self, network: &Network, seen: &[(usize, usize)]) -> Vec<f64>;
}

/// Bayes's rule in logarithms, cause by cause. It stands in until the core's own enumeration takes a network.
pub struct Plain;

impl Enumerates for Plain {
    fn posterior(&self, network: &Network, seen: &[(usize, usize)]) -> Vec<f64> {
        let weigh = |(number, cause): (usize, &Cause)| {
            let tests = seen
                .iter()
                .map(|(test, outcome)| network.tests[*test].p[number][*outcome].ln());
            cause.p.ln() + tests.sum::<f64>()
        };
        let weights: Vec<f64> = network.causes.iter().enumerate().map(weigh).collect();
        let most = weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let total: f64 = weights.iter().map(|w| (w - most).exp()).sum();
        weights.into_iter().map(|w| (w - most).exp() / total).collect()
    }
}

impl Network {
    /// The causes' names and probabilities, by which worked examples are written down.
    pub fn of(causes: &[(&str, f64)]) -> Self {
        let named = |(name, p): &(&str, f64)| Cause {
            name: (*name).to_owned(),
            p: *p,
        };
        Self {
            causes: causes.iter().map(named).collect(),
            tests: Vec::new(),
        }
    }

    /// With a yes-or-no test more; its probability of yes with each cause.
    pub fn asking(mut self, id: &str, yes: &[f64]) -> Self {
        self.tests.push(Test {
            id: id.to_owned(),
            outcomes: vec!["no".into(), "yes".into()],
            p: yes.iter().map(|p| vec![1.0 - p, *p]).collect(),
        });
        self
    }

    pub fn json(&self) -> Value {
        let cause = |c: &Cause| json!({"name": c.name, "p": c.p});
        let test = |t: &Test| json!({"id": t.id, "outcomes": t.outcomes, "p": t.p});
        json!({
            "causes": self.causes.iter().map(cause).collect::<Vec<_>>(),
            "tests": self.tests.iter().map(test).collect::<Vec<_>>(),
        })
    }
}
