//! The settings as they stand in a job's log.

use holdfast_joblog::{
    GaugeRecord, Instruments, Limit, MeterRecord, Payload, Profile as ProfileRecord, Workshop,
};

use crate::flow::numbers;
use crate::settings::Settings;

/// The settings as the log states them for a job.
pub(crate) fn payloads(settings: &Settings) -> Vec<Payload> {
    let figure = |text: &str| numbers::figure(text);
    let gauge = GaugeRecord {
        unit: settings.gauge.unit.clone(),
        span: figure(&settings.gauge.span).unwrap_or(30.0),
        division: figure(&settings.gauge.division).unwrap_or(1.0),
        grade: settings.gauge.grade.clone(),
        read_to: figure(&settings.gauge.read_to).unwrap_or(0.5),
        identity: settings.gauge_identity.trim().to_owned(),
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 6 by its bound"
    )]
    let digits = figure(&settings.meter_digits).unwrap_or(2.0).clamp(0.0, 6.0) as u8;
    let meter = MeterRecord {
        percent: figure(&settings.meter_percent).unwrap_or(0.5),
        counts: figure(&settings.meter_counts).unwrap_or(2.0),
        digits,
        identity: settings.meter_identity.trim().to_owned(),
    };
    vec![
        Payload::Profile(ProfileRecord {
            id: settings.profile.id().to_owned(),
        }),
        Payload::Instruments(Instruments {
            gauge: Some(gauge),
            pump_cm3: figure(&settings.pump_cm3),
            stroke_cm3: figure(&settings.stroke_cm3),
            meter: Some(meter),
        }),
        Payload::Limit(Limit {
            drop: figure(&settings.limit_drop),
            unit: Some(settings.gauge.unit.clone()),
            seconds: figure(&settings.limit_s),
            confidence: figure(&settings.confidence).map(|percent| percent / 100.0),
        }),
        Payload::Workshop(Workshop {
            business: settings.business.trim().to_owned(),
            technician: settings.technician.trim().to_owned(),
        }),
    ]
}
