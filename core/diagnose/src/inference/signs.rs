//! What can be seen or felt by hand: signs, each with the share of cars that show it.

use super::complaint::Told;
use super::expect::Expect;
use super::model::{Model, World};
use super::observation::Observation;
use super::vacuum::Behaviour;
use crate::{LookState, TestKind};

/// Share of sound parts with a sign that the data does not list. Source: from memory.
const UNLISTED_SIGN: f64 = 0.005;
/// Share of cars with an electric fault that have stored a code. Source: from memory.
const CODE_STORED: f64 = 0.7;
/// A slipped figure lies anywhere within so many standard deviations.
const FIGURE_RANGE: f64 = 20.0;

impl Model<'_> {
    /// Probability of a look-over, over that of a sound circuit with nothing to see.
    pub(super) fn look(&self, seen: &Observation, world: &World, parts: &[(usize, LookState)]) -> f64 {
        let keep = 1.0 - self.slips(seen).answer.value;
        let shows = |at: usize, faults: &[usize]| {
            let hidden: f64 = faults.iter().map(|f| 1.0 - self.faults[*f].look[at]).product();
            keep * (1.0 - (1.0 - self.sound_look[at]) * hidden)
        };
        let nothing = |faults: &[usize]| -> f64 {
            (1..LookState::ALL.len())
                .map(|at| 1.0 - shows(at, faults))
                .product()
        };
        let sound = nothing(&[]);
        let mut likelihood = 1.0;
        let faulty = world.faults.iter().filter_map(|f| self.faults[*f].part);
        let mut looked: Vec<usize> = faulty.chain(parts.iter().map(|(n, _)| *n)).collect();
        looked.sort_unstable();
        looked.dedup();
        for number in looked {
            let faults: Vec<usize> = world
                .faults
                .iter()
                .copied()
                .filter(|f| self.faults[*f].part == Some(number))
                .collect();
            let seen = parts.iter().find(|(n, _)| *n == number);
            let at = seen.and_then(|(_, state)| LookState::ALL.iter().position(|s| s == state));
            likelihood *= at.map_or_else(|| nothing(&faults), |at| shows(at, &faults)) / sound;
        }
        likelihood
    }

    /// Which codes are stored: of misfires, and others.
    pub(super) fn codes(&self, behaviour: &Behaviour, told: &Told) -> Vec<(&'static str, Expect)> {
        let seen = if behaviour.in_gear.fault_seen {
            1.0 - CODE_STORED
        } else {
            1.0
        };
        vec![
            ("list", Expect::Yes(1.0 - told.no_code * seen)),
            ("misfire", Expect::Yes(1.0 - told.no_misfire)),
        ]
    }

    /// Share of cars that show no such sign with these faults.
    pub(super) fn no_sign(&self, key: &str, faults: &[usize]) -> f64 {
        1.0 - self.sign(key, faults.iter().copied())
    }

    /// Share of cars that show a sign with these faults.
    fn sign(&self, key: &str, faults: impl Iterator<Item = usize>) -> f64 {
        let base = self
            .data
            .signs_when_sound
            .get(key)
            .copied()
            .unwrap_or(UNLISTED_SIGN);
        let hidden: f64 = faults
            .filter_map(|f| self.faults[f].signs.get(key))
            .map(|p| 1.0 - p)
            .product();
        1.0 - (1.0 - base) * hidden
    }

    pub(super) fn sign_fields(&self, seen: &Observation, faults: &[usize]) -> Vec<(&'static str, Expect)> {
        let part = seen.test.part.as_ref().and_then(|id| self.layout.number(id));
        let here =
            |f: &usize| self.faults[*f].part.is_none() || part.is_none() || self.faults[*f].part == part;
        let faults: Vec<usize> = faults.iter().copied().filter(here).collect();
        let keys: &[&'static str] = match seen.test.kind {
            TestKind::IdleQuality => &["rough", "steady", "rpm"],
            TestKind::MountLook => &["torn", "wet", "sag_mm"],
            TestKind::MountMove => &["clunk", "gap_opens"],
            _ => &["steady"],
        };
        let field = |key: &&'static str| {
            let name = format!("{}.{key}", seen.test.kind);
            if let Some(sound) = self.data.figures_when_sound.get(&name) {
                let mean = faults
                    .iter()
                    .find_map(|f| self.faults[*f].figures.get(&name))
                    .copied();
                let expect = Expect::Figure {
                    mean: mean.unwrap_or(sound.mean),
                    sd: sound.sd,
                    range: FIGURE_RANGE * sound.sd,
                };
                return (*key, expect);
            }
            let p = self.sign(&name, faults.iter().copied());
            (
                *key,
                Expect::Yes(if self.data.good_when_yes.contains(&name) {
                    1.0 - p
                } else {
                    p
                }),
            )
        };
        keys.iter().map(field).collect()
    }
}
