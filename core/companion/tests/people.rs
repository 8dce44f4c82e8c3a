//! What fits the app to a person: units by region and instrument, the report's language, a hold by ear and by feel.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test ends loudly"
)]

mod phone;

use holdfast_companion::{
    Action, Body, Buzz, Field, FieldId, FigureSize, FormItem, Pick, Place, ReportState, Request, Said,
    TestStage,
};
use phone::Phone;

fn fields(phone: &Phone) -> Vec<Field> {
    let (Body::Vehicle { form } | Body::Prepare { form } | Body::Settings { form }) = phone.screen().body
    else {
        panic!("no form")
    };
    let items = form.sections.into_iter().flat_map(|section| section.items);
    items
        .filter_map(|item| match item {
            FormItem::Entry { field } => Some(field),
            _ => None,
        })
        .collect()
}

fn field(phone: &Phone, id: &FieldId) -> Field {
    fields(phone)
        .into_iter()
        .find(|field| field.id == *id)
        .expect("the field")
}

fn spoken(phone: &Phone) -> Vec<String> {
    phone
        .asked
        .iter()
        .filter_map(|request| match request {
            Request::Speak { text, .. } => Some(text.clone()),
            _ => None,
        })
        .collect()
}

fn buzzed(phone: &Phone) -> Vec<Buzz> {
    phone
        .asked
        .iter()
        .filter_map(|request| match request {
            Request::Buzz { pattern } => Some(*pattern),
            _ => None,
        })
        .collect()
}

/// All that the log says.
fn log(phone: &mut Phone) -> String {
    phone.send(Action::Go { to: Place::Log });
    let Body::Log { log } = phone.screen().body else {
        panic!("no log")
    };
    log.rows.into_iter().map(|row| row.text + "\n").collect()
}

#[test]
fn a_phone_of_the_united_states_asks_in_feet_and_fahrenheit_and_stores_si() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.send(Action::Go { to: Place::Prepare });
    let altitude = field(&phone, &FieldId::Altitude);
    assert_eq!(altitude.unit, "ft");
    phone.type_in(FieldId::Altitude, "5,280");
    phone.type_in(FieldId::AirTemperature, "68");
    phone.send(Action::Confirm);
    let place = phone.core.situation().expect("a situation").place;
    assert!((place.altitude_m.expect("an altitude") - 1_609.344).abs() < 1e-9);
    assert!((place.air_c - 20.0).abs() < 1e-9);
    // What was typed stays in the log, with its unit.
    let said = log(&mut phone);
    assert!(
        said.contains("5,280\u{a0}ft") && said.contains("68\u{a0}°F"),
        "{said}"
    );
    // The same place on a phone that was told to be metric.
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::UnitSet { id: "metric".into() });
    phone.send(Action::Back);
    phone.send(Action::Go { to: Place::Prepare });
    assert_eq!(field(&phone, &FieldId::Altitude).unit, "m");
    assert_eq!(field(&phone, &FieldId::Altitude).value, "1609.344");
    assert_eq!(field(&phone, &FieldId::AirTemperature).value, "20");
}

#[test]
fn a_region_chooses_once_and_each_instrument_can_be_changed() {
    let mut phone = Phone::in_locale("de-DE");
    phone.begin_job();
    phone.send(Action::Go { to: Place::Settings });
    assert_eq!(field(&phone, &FieldId::GaugeSpan).unit, "mbar");
    phone.pick(Pick::UnitOf {
        instrument: "rule".into(),
        symbol: "in".into(),
    });
    phone.send(Action::Back);
    phone.begin_test("mount-look:front_mount");
    phone.send(Action::Say { said: Said::No });
    phone.send(Action::Say { said: Said::No });
    phone.type_in(FieldId::Answer { key: "sag_mm".into() }, "0,5");
    phone.send(Action::Confirm);
    assert!(log(&mut phone).contains("0,50\u{a0}in"), "{}", log(&mut phone));
    // Read on a phone with another rule it is the same length.
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::UnitSet { id: "metric".into() });
    phone.send(Action::Back);
    assert!(log(&mut phone).contains("13\u{a0}mm"), "{}", log(&mut phone));
}

#[test]
fn an_odometer_keeps_what_was_typed_and_the_unit_of_its_car() {
    let mut phone = Phone::new();
    phone.send(Action::NewJob);
    assert_eq!(field(&phone, &FieldId::Odometer).unit, "mi");
    phone.type_in(FieldId::Odometer, "84200 km");
    assert_eq!(field(&phone, &FieldId::Odometer).unit, "");
    phone.send(Action::Go { to: Place::Jobs });
    let Body::Jobs { jobs } = phone.screen().body else {
        panic!("no list")
    };
    phone.send(jobs.rows.first().expect("the job").open.action.clone());
    let odometer = field(&phone, &FieldId::Odometer);
    assert_eq!((odometer.value.as_str(), odometer.unit.as_str()), ("84200", "km"));
}

#[test]
fn the_report_speaks_its_own_language() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.hold("hold:branch", 19, "20", "13.5");
    phone.send(Action::Go { to: Place::Report });
    for (tag, heading) in [("de", "/Lang(de)"), ("ar-XB", "/Lang(ar-XB)")] {
        phone.pick(Pick::ReportLanguage { tag: tag.into() });
        phone.asked.clear();
        phone.send(Action::MakeReport);
        let Body::Report { report } = phone.screen().body else {
            panic!("no report")
        };
        let ReportState::Ready { path, share, .. } = report.state else {
            panic!("{:?}", report.state)
        };
        assert_eq!(share.label, "Share", "the screen stays in its language");
        let bytes = std::fs::read(path).expect("the file");
        let raw = String::from_utf8_lossy(&bytes).replace("/Lang (", "/Lang(");
        assert!(raw.contains(heading), "{tag}");
    }
    // It goes with the job: another language of the screens leaves it alone, the log says it.
    let mut phone = phone.kill_and_reopen(1_000);
    assert!(log(&mut phone).contains("Reports in Deutsch"));
}

#[test]
fn a_hold_can_be_done_by_ear_and_by_feel() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.begin_test("hold:branch");
    phone.asked.clear();
    phone.send(Action::LetGo);
    assert_eq!(spoken(&phone), ["The clock runs. Read the gauge."]);
    assert_eq!(buzzed(&phone), [Buzz::Start]);
    phone.type_in(FieldId::GaugeReading, "20");
    phone.send(Action::Confirm);
    phone.asked.clear();
    phone.wait(25.0);
    assert_eq!(
        spoken(&phone),
        ["20 seconds", "10 seconds", "5", "3", "2", "1", "Read it now."]
    );
    assert_eq!(
        buzzed(&phone),
        [Buzz::Tick, Buzz::Tick, Buzz::Tick, Buzz::ReadNow]
    );
    phone.type_in(FieldId::GaugeReading, "13.5");
    phone.asked.clear();
    phone.send(Action::Confirm);
    assert!(matches!(phone.stage(), TestStage::Result { .. }));
    let said = spoken(&phone);
    assert!(
        said.len() == 1 && said[0].starts_with("Done. Leaks: lost"),
        "{said:?}"
    );
    assert_eq!(buzzed(&phone), [Buzz::End]);
}

#[test]
fn a_hold_cut_off_says_so() {
    let mut phone = Phone::new();
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.asked.clear();
    phone.clock.boot_id = "second boot".into();
    phone.send(Action::ReadNow);
    assert_eq!(spoken(&phone), ["Stopped. Look at the phone."]);
    assert_eq!(buzzed(&phone), [Buzz::Alarm]);
}

#[test]
fn the_script_is_written_anew_line_by_line_and_comes_back() {
    let script = |cue: &str| FieldId::Script { cue: cue.into() };
    let mut phone = Phone::new();
    phone.send(Action::Go { to: Place::Settings });
    assert_eq!(field(&phone, &script("left")).value, "{seconds} seconds");
    phone.type_in(script("left"), "{seconds} to go, Kim");
    phone.type_in(script("read-now"), "");
    phone.send(Action::Back);
    phone.begin_job();
    phone.pump_and_let_go("hold:branch", 19, "20");
    phone.asked.clear();
    phone.wait(25.0);
    assert_eq!(
        spoken(&phone),
        ["20 to go, Kim", "10 to go, Kim", "5", "3", "2", "1"]
    );
    assert!(
        buzzed(&phone).contains(&Buzz::ReadNow),
        "silence is not stillness"
    );
    // Another language has its own script.
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::Language { tag: "de".into() });
    assert_eq!(field(&phone, &script("left")).value, "Noch {seconds} Sekunden");
    phone.pick(Pick::Language { tag: String::new() });
    assert_eq!(field(&phone, &script("left")).value, "{seconds} to go, Kim");
    phone.pick(Pick::PlainScript);
    assert_eq!(field(&phone, &script("left")).value, "{seconds} seconds");
}

#[test]
fn figures_for_two_metres_have_their_unit_below() {
    let mut phone = Phone::new();
    phone.send(Action::Go { to: Place::Settings });
    phone.pick(Pick::LargeFigures);
    phone.send(Action::Back);
    phone.begin_job();
    phone.begin_test("hold:branch");
    assert_eq!(phone.screen().figures, FigureSize::Large);
    let Body::Hold { hold } = phone.screen().body else {
        panic!("no hold")
    };
    assert_eq!(hold.live.reading, "0\ninHg");
}
