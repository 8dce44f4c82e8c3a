//! Readings that may be slips.

use serde_json::json;

use super::tests::Known;
use crate::{Next, Policy};

/// Vacuum comes to the valve's outlet.
fn fed() -> Known {
    let mut known = Known::sound();
    known.read(
        "delivered",
        &json!({"gauge": 18.5, "unit": "inHg", "seconds": 1.5}),
    );
    known
}

/// It comes through the hose that is then said to be blocked.
fn odd() -> Known {
    let mut known = fed();
    known.read("shake", &json!({"on_0_3": 1, "off_0_3": 3}));
    known.read("flow:outlet_hose", &json!({"free": false}));
    known
}

#[test]
fn a_reading_that_goes_badly_with_the_others_is_looked_at_again_at_once() {
    let known = odd();
    let Next::LookAgain { id, minutes, .. } = known.next(Policy::Guided) else {
        panic!("vacuum came through the hose that is now said to be blocked");
    };
    assert_eq!(id.to_string(), "flow:outlet_hose");
    assert!(minutes <= 1.0, "nothing is taken down yet");
    assert!(!known.finding().decided, "nothing is built on it before");
}

#[test]
fn what_was_looked_at_again_is_not_doubted_any_more() {
    let mut known = odd();
    let before = known.finding().causes;
    known.confirm_last();
    let next = known.next(Policy::Guided);
    assert!(
        !matches!(&next, Next::LookAgain { id, .. } if id.to_string() == "flow:outlet_hose"),
        "{next:?}"
    );
    let blocked = |causes: &[crate::Cause]| -> f64 {
        let names = |c: &&crate::Cause| c.faults.iter().any(|f| f.to_string() == "outlet_hose/blocked");
        causes.iter().filter(names).map(|c| c.p).sum()
    };
    assert!(
        blocked(&known.finding().causes) > blocked(&before),
        "a reading that was kept counts more"
    );
}

#[test]
fn readings_of_one_mind_are_not_doubted() {
    let known = fed();
    let next = known.next(Policy::Guided);
    assert!(matches!(next, Next::Test { .. }), "{next:?}");
}
