//! What a test would change, asked for before it is done; and readings that contradict each other.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{Action, FormItem, TestStage};
use phone::Phone;

fn words(items: &[FormItem]) -> Vec<String> {
    let text = |item: &FormItem| match item {
        FormItem::Words { text } => Some(text.clone()),
        _ => None,
    };
    items.iter().filter_map(text).collect()
}

fn extras(phone: &Phone) -> Vec<FormItem> {
    let TestStage::Brief { extras, .. } = phone.stage() else {
        panic!("no briefing: {:?}", phone.stage())
    };
    extras
}

#[test]
fn a_briefing_says_what_each_outcome_would_change() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13.5");
    phone.send(Action::Confirm);
    phone.send(Action::ShowTest {
        test: "hold:front_mount".into(),
    });
    let before = words(&extras(&phone));
    phone.send(Action::WhatIf);
    let shown: Vec<String> = words(&extras(&phone))
        .into_iter()
        .filter(|line| !before.contains(line))
        .collect();
    assert!(
        shown.len() >= 3,
        "a heading and two outcomes at least: {shown:#?}"
    );
    let leads_to = |cause: &str| shown.iter().any(|line| line.contains(cause));
    assert!(leads_to("the front mount leaks vacuum ("), "{shown:#?}");
    assert!(leads_to("the rear mount leaks vacuum ("), "{shown:#?}");
    assert!(shown.iter().skip(1).all(|line| line.contains('%')), "{shown:#?}");
}

#[test]
fn a_mount_that_leaks_on_a_branch_that_holds_is_said_to_contradict_it() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "20");
    phone.send(Action::Confirm);
    phone.hold("hold:front_mount", 9, "20", "9");
    let TestStage::Result { meaning, details, .. } = phone.stage() else {
        panic!("no result: {:?}", phone.stage())
    };
    let said = format!("{meaning} {details:?}");
    assert!(said.contains("contradicts the hold of the whole"), "{said}");
    assert!(said.contains("adapter"), "the likely slip is named: {said}");
}
