//! What the person's own jobs taught: faults that were repaired and tested good, by kind of circuit.

use holdfast_diagnose::{CircuitChoice, FaultId, Learned};
use holdfast_joblog::{JobId, JobState, Query, Shelf, Store, UseError};

use crate::situation;

/// So many of the last closed jobs are looked at.
const MOST: u32 = 200;

/// A closed job whose repair was tested and found good.
#[derive(Debug)]
struct Confirmed {
    job: JobId,
    circuit: String,
    faults: Vec<FaultId>,
}

/// What the person's own jobs taught.
#[derive(Debug, Default)]
pub(crate) struct Experience(Vec<Confirmed>);

impl Experience {
    /// From the log: jobs that were closed after a moment, in ms since 1970-01-01T00:00Z.
    pub fn read(store: &Store, since_ms: i64) -> Result<Self, UseError> {
        let query = Query {
            shelf: Shelf::Closed,
            from_ms: Some(since_ms),
            most: MOST,
            ..Query::default()
        };
        let mut confirmed = Vec::new();
        for row in store.list(&query)? {
            if row.closed.is_some_and(|closed| closed.repaired) {
                confirmed.extend(Confirmed::of(&store.fold(row.job)?));
            }
        }
        Ok(Self(confirmed))
    }

    /// What the other jobs on a kind of circuit taught.
    pub fn on(&self, circuit: &CircuitChoice, but: JobId) -> Learned {
        let kind = kind(circuit);
        let mut learned = Learned::default();
        for confirmed in self.0.iter().filter(|c| c.circuit == kind && c.job != but) {
            learned.confirm(confirmed.faults.iter().cloned());
        }
        learned
    }

    /// Every fault that was confirmed on any circuit, with how often, the commonest first; and how many jobs that were.
    pub fn all(&self) -> (Learned, usize) {
        let mut learned = Learned::default();
        for confirmed in &self.0 {
            learned.confirm(confirmed.faults.iter().cloned());
        }
        (learned, self.0.len())
    }
}

impl Confirmed {
    /// From a folded log; nothing where no fault of a part was named.
    fn of(log: &JobState) -> Option<Self> {
        let (choice, _) = situation::circuit(log)?;
        let closed = &log.closed.as_ref()?.value;
        let of_a_part = |fault: &FaultId| closed.parts.iter().any(|part| part == fault.component.as_str());
        let faults: Vec<FaultId> = closed
            .causes
            .first()?
            .faults
            .iter()
            .filter_map(|fault| fault.parse().ok())
            .filter(of_a_part)
            .collect();
        (!faults.is_empty()).then(|| Self {
            job: log.job,
            circuit: kind(&choice).to_owned(),
            faults,
        })
    }
}

/// The kind of circuit: the template it was chosen from.
fn kind(choice: &CircuitChoice) -> &str {
    match choice {
        CircuitChoice::Template(template) => template,
        CircuitChoice::Custom(custom) => &custom.template,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use holdfast_joblog::{CauseRecord, CircuitStated, Closed, Payload, Stamp};

    const TEMPLATE: &str = "two-mounts-one-valve";

    fn closed(store: &mut Store, wall_ms: i64, repaired: bool) -> JobId {
        let job = store.new_job();
        let stamp = Stamp {
            wall_ms,
            offset_min: 0,
        };
        let finding = Closed {
            parts: vec!["front_hose".into()],
            p: 0.97,
            causes: vec![CauseRecord {
                faults: vec!["front_hose/leaks".into(), "engine/rough".into()],
                p: 0.97,
            }],
            repaired,
            headline: String::new(),
            software: String::new(),
        };
        let entries = [
            Payload::Circuit(CircuitStated::of(TEMPLATE.into())),
            Payload::Closed(finding),
        ];
        for payload in entries {
            store.append(job, &payload, stamp).unwrap();
        }
        job
    }

    #[test]
    fn only_repairs_that_were_tested_teach_and_only_what_they_named() {
        let folder = tempfile::tempdir().unwrap();
        let mut store = Store::open(folder.path()).unwrap();
        let first = closed(&mut store, 1_000, true);
        closed(&mut store, 2_000, true);
        closed(&mut store, 3_000, false);
        let template = CircuitChoice::Template(TEMPLATE.into());
        let nobody = store.new_job();
        let fault = |text: &str| text.parse::<FaultId>().unwrap();

        let all = Experience::read(&store, 0).unwrap();
        assert_eq!(all.on(&template, nobody).of(&fault("front_hose/leaks")), 2);
        assert_eq!(all.on(&template, nobody).of(&fault("engine/rough")), 0);
        assert_eq!(
            all.on(&template, first).of(&fault("front_hose/leaks")),
            1,
            "a job does not teach itself"
        );
        let other = CircuitChoice::Template("four-mounts".into());
        assert!(
            all.on(&other, nobody).faults().is_empty(),
            "each kind of circuit by itself"
        );
        let later = Experience::read(&store, 1_500).unwrap();
        assert_eq!(later.all().1, 1, "what was forgotten stays forgotten");
    }
}
