//! Older bodies are read as if they had been written today: one step a version, rows are never rewritten.

use serde_json::{Value, json};

/// One step: the body of `kind` in version `from` becomes that of version `from + 1`.
pub(super) struct Step {
    pub(super) kind: &'static str,
    pub(super) from: u32,
    pub(super) change: fn(Value) -> Value,
}

/// All steps there are. A change of a body's form adds its step here and a recorded body to `testdata/payloads`.
pub(super) const STEPS: &[Step] = &[
    // The choice alone, until what was typed for its figures was kept beside it.
    Step {
        kind: "circuit",
        from: 1,
        change: |choice| json!({ "choice": choice }),
    },
];

/// Takes a body of version `v` through all steps of its kind.
pub(super) fn to_newest(steps: &[Step], kind: &str, v: u32, body: Value) -> Value {
    let mut at = v;
    let mut body = body;
    while let Some(step) = steps.iter().find(|step| step.kind == kind && step.from == at) {
        body = (step.change)(body);
        at += 1;
    }
    body
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rename(mut body: Value, old: &str, new: &str) -> Value {
        if let Some(fields) = body.as_object_mut()
            && let Some(value) = fields.remove(old)
        {
            fields.insert(new.to_owned(), value);
        }
        body
    }

    const EXAMPLE: &[Step] = &[
        Step {
            kind: "note",
            from: 2,
            change: |body| rename(body, "b", "c"),
        },
        Step {
            kind: "note",
            from: 1,
            change: |body| rename(body, "a", "b"),
        },
        Step {
            kind: "other",
            from: 1,
            change: |_| json!("wrong kind"),
        },
    ];

    #[test]
    fn steps_run_from_the_bodys_version_to_the_newest_in_turn() {
        assert_eq!(to_newest(EXAMPLE, "note", 1, json!({"a": 1})), json!({"c": 1}));
        assert_eq!(to_newest(EXAMPLE, "note", 2, json!({"b": 1})), json!({"c": 1}));
        assert_eq!(to_newest(EXAMPLE, "note", 3, json!({"c": 1})), json!({"c": 1}));
    }

    #[test]
    fn each_step_leads_to_a_version_that_is_written_or_stepped_from() {
        for step in STEPS {
            let newest = super::super::Payload::KINDS
                .iter()
                .find(|(kind, _)| *kind == step.kind);
            assert!(
                newest.is_some_and(|(_, v)| step.from < *v),
                "{} {}",
                step.kind,
                step.from
            );
        }
        for (kind, newest) in super::super::Payload::KINDS {
            for from in 1..*newest {
                assert!(
                    STEPS.iter().any(|step| step.kind == *kind && step.from == from),
                    "{kind} {from}"
                );
            }
        }
    }
}
