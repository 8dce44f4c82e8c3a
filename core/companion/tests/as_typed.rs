//! Figures of a circuit: stored in SI, and given back as they were typed.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, Body, Field, FieldId, FormItem, FormScreen, Pick, Place};
use phone::Phone;

fn hose() -> FieldId {
    FieldId::HoseLength {
        component: "front_hose".into(),
    }
}

fn typed(phone: &Phone, id: &FieldId) -> Field {
    let Body::Vehicle {
        form: FormScreen { sections, .. },
    } = phone.screen().body
    else {
        panic!("{:?}", phone.screen().body)
    };
    let items = sections.into_iter().flat_map(|section| section.items);
    items
        .filter_map(|item| match item {
            FormItem::Entry { field } if field.id == *id => Some(field),
            _ => None,
        })
        .next()
        .expect("the field")
}

fn measured_in(phone: &mut Phone, set: &str) {
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::UnitSet { id: set.into() });
    phone.send(Action::Back);
}

fn log(phone: &mut Phone) -> Vec<String> {
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("{:?}", phone.screen().body)
    };
    log.rows.into_iter().map(|row| row.text).collect()
}

/// A foot is 0.3048 m and an inch 25.4 mm exactly (international yard and pound agreement of 1959).
#[test]
fn lengths_and_bores_are_kept_in_si_and_as_they_were_typed() {
    let mut phone = Phone::new();
    phone.begin_job();
    measured_in(&mut phone, "us");
    phone.send(Action::Go { to: Place::Circuit });
    phone.type_in(hose(), "1.750");
    phone.type_in(FieldId::HoseBore, ".14");
    phone.send(Action::Confirm);
    let circuit = phone.core.circuit().expect("a circuit").clone();
    let front = circuit.component(&"front_hose".into()).expect("the hose");
    assert!((front.length_m.unwrap() - 1.75 * 0.3048).abs() < 1e-12);
    assert!((front.bore_mm.unwrap() - 0.14 * 25.4).abs() < 1e-12);

    phone.send(Action::Go { to: Place::Circuit });
    assert_eq!(typed(&phone, &hose()).value, "1.750");
    assert_eq!(typed(&phone, &FieldId::HoseBore).value, ".14");
    let told = log(&mut phone).join("\n");
    assert!(
        told.contains("1.750\u{a0}ft") && told.contains(".14\u{a0}in"),
        "{told}"
    );
}

#[test]
fn who_measures_in_other_units_now_sees_the_same_length_in_them() {
    let mut phone = Phone::new();
    phone.begin_job();
    measured_in(&mut phone, "us");
    phone.send(Action::Go { to: Place::Circuit });
    phone.type_in(hose(), "1.750");
    phone.send(Action::Confirm);
    measured_in(&mut phone, "metric");
    phone.send(Action::Go { to: Place::Circuit });
    assert_eq!(typed(&phone, &hose()).value, "0.533");
}

#[test]
fn what_was_typed_goes_with_the_part_it_was_typed_for_and_outlives_other_changes() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Circuit });
    phone.type_in(hose(), "0.50");
    phone.pick(Pick::Property {
        property: "switched".into(),
        value: "supply".into(),
    });
    assert_eq!(typed(&phone, &hose()).value, "0.50");
    phone.type_in(FieldId::CoilHigh, "40.0");
    phone.type_in(FieldId::CoilLow, "45.0");
    phone.send(Action::Confirm);
    phone.send(Action::Go { to: Place::Circuit });
    assert_eq!(
        typed(&phone, &FieldId::CoilLow).value,
        "40",
        "no more than the highest, and not as typed"
    );
}
