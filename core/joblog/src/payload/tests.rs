use super::*;
use serde::Deserialize;

#[derive(Deserialize)]
struct Recorded {
    kind: String,
    v: u32,
    body: Value,
}

/// Bodies as they were written by released versions. They have to read for ever: never change one, add new ones.
fn recorded() -> Vec<Recorded> {
    serde_json::from_str(include_str!("../../testdata/payloads/recorded.json")).unwrap()
}

#[test]
fn recorded_bodies_of_every_version_read() {
    for Recorded { kind, v, body } in recorded() {
        let read = Payload::read(&kind, v, &body.to_string());
        assert!(
            matches!(&read, Content::Known(payload) if payload.kind() == kind),
            "{kind} v{v}: {read:?}"
        );
    }
}

#[test]
fn recorded_bodies_of_the_newest_version_are_written_again_as_they_were() {
    for Recorded { kind, v, body } in recorded() {
        let Content::Known(payload) = Payload::read(&kind, v, &body.to_string()) else {
            panic!("{kind}")
        };
        if payload.version() == v {
            assert_eq!(payload.to_value().unwrap(), body, "{kind}");
        }
    }
}

#[test]
fn every_kind_has_a_recorded_body_of_every_version() {
    for (kind, newest) in Payload::KINDS {
        for v in 1..=*newest {
            assert!(
                recorded().iter().any(|one| one.kind == *kind && one.v == v),
                "{kind} v{v}"
            );
        }
    }
}

#[test]
fn unknown_kinds_and_newer_versions_are_newer_and_broken_bodies_unreadable() {
    assert_eq!(Payload::read("hologram", 1, "{}"), Content::Newer);
    assert_eq!(Payload::read("note", 2, "{}"), Content::Newer);
    assert!(matches!(
        Payload::read("note", 1, "{}"),
        Content::Unreadable { .. }
    ));
    assert!(matches!(
        Payload::read("note", 1, "not json"),
        Content::Unreadable { .. }
    ));
}

#[test]
fn a_field_that_a_later_version_added_without_a_new_number_is_passed_over() {
    let body = r#"{"text": "x", "about": "job", "colour": "red"}"#;
    assert!(matches!(
        Payload::read("note", 1, body),
        Content::Known(Payload::Note(_))
    ));
}

#[test]
fn numbers_come_back_to_the_last_bit() {
    for start in [0.1 + 0.2, 20.0, 67.727_78, f64::MIN_POSITIVE, 1.0 / 3.0] {
        let point = HoldPoint {
            at_s: start,
            vacuum: start,
        };
        let text = serde_json::to_string(&point).unwrap();
        assert_eq!(serde_json::from_str::<HoldPoint>(&text).unwrap(), point);
    }
}
