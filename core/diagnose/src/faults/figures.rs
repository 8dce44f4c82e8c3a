//! Figures of the physics and rates of mistakes, each with its source in the data file.

use serde::Deserialize;

use super::{Hides, Spread};

/// A figure with its source.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(from = "Sourced")]
pub(crate) struct Figure {
    /// The value.
    pub value: f64,
    /// Its standard deviation; 0 where none is given.
    pub sd: f64,
    /// The standard deviation of its decimal logarithm; 0 where none is given.
    pub log10_sd: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Sourced {
    value: f64,
    #[serde(default)]
    sd: f64,
    #[serde(default)]
    log10_sd: f64,
    #[serde(rename = "source")]
    _source: String,
}

impl From<Sourced> for Figure {
    fn from(s: Sourced) -> Self {
        Self {
            value: s.value,
            sd: s.sd,
            log10_sd: s.log10_sd,
        }
    }
}

/// A spread with its source.
#[derive(Debug, Clone, Copy, Default, Deserialize)]
#[serde(from = "SourcedSpread")]
pub(crate) struct FigureSpread(pub Spread);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SourcedSpread {
    median: f64,
    log10_sd: f64,
    #[serde(rename = "source")]
    _source: String,
}

impl From<SourcedSpread> for FigureSpread {
    fn from(s: SourcedSpread) -> Self {
        Self(Spread {
            median: s.median,
            log10_sd: s.log10_sd,
        })
    }
}

/// How often readings and answers are wrong.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Slips {
    /// A measured figure that has nothing to do with what should be there (wrong pin, slipped probe).
    pub reading: Figure,
    /// A hold in which the adapter or a cap leaks: any drop can be read.
    pub bad_seal: Figure,
    /// A hold in which a pinched test hose or a sticking needle hides what is there.
    pub sealed: Figure,
    /// A yes or no that is the wrong way round.
    pub answer: Figure,
    /// A gauge figure in another unit than said.
    pub unit: Figure,
    /// A test with the engine running, while the module does not work the valve.
    pub state: Figure,
    /// A jumper that made no contact, or sat on the wrong pins: the valve stays at rest.
    pub contact: Figure,
    /// Volts read on the AC range: nothing is seen of a steady voltage.
    pub ac: Figure,
    /// Share of slips that are still there after the person was asked to look again.
    pub kept: Figure,
}

impl Slips {
    /// The same for a reading that was looked at again.
    pub fn looked_again(&self) -> Self {
        let kept = |of: Figure| Figure {
            value: of.value * self.kept.value,
            ..of
        };
        Self {
            reading: kept(self.reading),
            bad_seal: kept(self.bad_seal),
            sealed: kept(self.sealed),
            answer: kept(self.answer),
            unit: kept(self.unit),
            state: kept(self.state),
            contact: kept(self.contact),
            ac: kept(self.ac),
            kept: self.kept,
        }
    }
}

/// What circuits and people are like, as far as it isn't known: shares of them.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Rates {
    /// A pin that hangs free shows some volts.
    pub floating_pin: Figure,
    /// A module that shows no command with the connector off.
    pub open_load_off: Figure,
    /// A second fault of the car for each car with a first.
    pub second_fault: Figure,
    /// The module commands at plain idle, where nobody knows the window.
    pub window_idle: Figure,
    /// The ground side is switched, where nobody knows.
    pub switched_ground: Figure,
    /// The feed comes with the ignition, where nobody knows.
    pub feed_ignition: Figure,
    /// Vacuum makes the mounts soft, where nobody knows.
    pub vacuum_softens: Figure,
    /// Mounts that change with vacuum change what is felt.
    pub shake_felt: Figure,
    /// A sound engine's shake on soft mounts, on the scale from 0 to 3, and how cars and people differ.
    pub shake_calm: Figure,
    /// What hard mounts add to it, and how well people rate a shake.
    pub shake_hard: Figure,
    /// What an engine, or something else that shakes by itself, adds.
    pub shake_otherwise: Figure,
    /// Of what is felt beside the first complaint, so much is told.
    pub complaint_told: Figure,
    /// A complaint that has a cause is there when one tries it.
    pub complaint_reproduced: Figure,
    /// The same for one whose cause is none of those known.
    pub complaint_reproduced_otherwise: Figure,
    /// A bad connector is bad where its halves meet, not where a wire ends in its terminal.
    pub connector_at_contact: Figure,
    /// A coil that touches its case does so near the end of the power wire.
    pub coil_case_at_power: Figure,
    /// The end of a hose that is off, beside a valve, is the one at the valve.
    pub end_off_at_valve: Figure,
    /// A loose end leaks in one test.
    pub loose_end_leaks: Figure,
    /// An end that came off leaks on the tester's adapter, too.
    pub end_off_leaks_alone: Figure,
}

impl Rates {
    /// How often a hold sees a leak that it may not see.
    pub fn leaks_although(&self, hides: Option<Hides>) -> f64 {
        match hides {
            Some(Hides::LooseEnd) => self.loose_end_leaks.value,
            Some(Hides::EndOff) => self.end_off_leaks_alone.value,
            None => 1.0,
        }
    }
}

/// Figures of the physics. Pressures in kPa, lengths in mm, times in s, leaks in std cm³/min.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Figures {
    /// How many times more a leak passes at work than in a test at rest.
    pub leak_at_work_times: FigureSpread,
    /// What a sound part lets in.
    pub sound_leak_std_cm3_min: Figure,
    /// What the drop in a hold does beside leak and gauge.
    pub drop_unmodelled_kpa: Figure,
    /// The same as a share of the drop.
    pub drop_relative: Figure,
    /// Strokes a minute.
    pub pump_strokes_per_min: Figure,
    /// Standard deviation of the natural logarithm of a count of strokes.
    pub strokes_log_sd: Figure,
    /// Strokes of a usual pump over those of an ideal one.
    pub strokes_worn: Figure,
    /// Vacuum of an intake at idle over the air pressure.
    pub source_vacuum_share: Figure,
    /// Vacuum of a weak source over that of a sound one.
    pub weak_source_share: Figure,
    /// Vacuum of a pump over the air pressure.
    pub pump_vacuum_share: Figure,
    /// Narrowest passage of the valve where the circuit does not say.
    pub valve_passage_mm: Figure,
    /// Bore of a hose where the circuit does not say.
    pub hose_bore_mm: Figure,
    /// Differences between vacuum at the source and behind an open valve.
    pub delivered_sd_kpa: Figure,
    /// Until vacuum has arrived.
    pub arrive_s: Figure,
    /// Until vacuum has left.
    pub vent_s: Figure,
    /// Until vacuum has left past a blocked vent.
    pub vent_blocked_s: Figure,
    /// Share of the source's vacuum below which a mount does not switch.
    pub starved_below: Figure,
    /// Share of the source's vacuum below which a mount switches badly.
    pub weak_below: Figure,
    /// Share of the source's vacuum that keeps a mount switched when it should not be.
    pub kept_above: Figure,
    /// Leak through a closed seat that keeps half the vacuum at the mounts.
    pub seat_keeps_half_std_cm3_min: Figure,
    /// Share of the vacuum that a blocked vent keeps, as it is read.
    pub vent_blocked_keeps: Figure,
    /// Battery, key on, engine off.
    pub battery_rest_v: Figure,
    /// Battery, engine running.
    pub charging_v: Figure,
    /// What volts differ by beside the meter.
    pub volts_sd: Figure,
    /// What ohms differ by beside the meter, as a share.
    pub ohms_relative: Figure,
    /// Leads and contacts.
    pub leads_ohm: Figure,
    /// A sound wire with its joints.
    pub wire_ohm: Figure,
    /// How many times its 20 °C resistance a hot coil has.
    pub coil_hot_times: Figure,
    /// Share of the time that a pulsed output is on.
    pub pulsed_on_share: Figure,
    /// What stays at the module's switch when on.
    pub switch_on_v: Figure,
    /// Volts across the coil at which the valve moves.
    pub pull_in_v: Figure,
    /// The lamp as a load.
    pub lamp_ohm: Figure,
    /// How many times its rating opens a fuse within minutes.
    pub fuse_blow_times: Figure,
}
