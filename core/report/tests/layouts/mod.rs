//! The twelve vacuum layouts with an electric layout each, as maps. Layouts: common practice, no source.
#![allow(dead_code, reason = "each test and example uses a part of the samples")]

pub mod sample_report;
pub mod samples;

use holdfast_report::{CircuitMap, MapLink, MapPart, PartKind};

/// Chains of parts; a part named again joins the chains.
pub const LAYOUTS: [(&str, &[&str]); 12] = [
    (
        "1 one mount",
        &["source inlet_hose valve outlet_hose mount", CHAIN_A],
    ),
    (
        "2 two mounts, check valve",
        &[
            "source check_valve inlet_hose valve outlet_hose tee front_hose front_mount",
            "tee rear_hose rear_mount",
            CHAIN_A,
        ],
    ),
    (
        "3 reservoir on a tee",
        &[
            "source check_valve supply_hose supply_tee inlet_hose valve outlet_hose tee front_hose front_mount",
            "tee rear_hose rear_mount",
            "supply_tee reservoir_hose reservoir",
            CHAIN_B,
        ],
    ),
    (
        "4 two valves, shared feed",
        &[
            "source check_valve reservoir supply_tee valve_1 outlet_hose_1 mount_1",
            "supply_tee valve_2 outlet_hose_2 mount_2",
            "battery fuse splice power_wire_1 connector_1 coil_1 control_wire_1 module",
            "splice power_wire_2 connector_2 coil_2 control_wire_2 module",
        ],
    ),
    (
        "5 four mounts",
        &[
            "source check_valve reservoir inlet_hose valve outlet_hose tee left_hose left_tee left_front_hose left_front_mount",
            "left_tee left_rear_hose left_rear_mount",
            "tee right_hose right_tee right_front_hose right_front_mount",
            "right_tee right_rear_hose right_rear_mount",
            CHAIN_A,
        ],
    ),
    (
        "6 pump, brake booster",
        &[
            "pump_source pump_tee check_valve reservoir inlet_hose valve outlet_hose tee front_hose front_mount",
            "tee rear_hose rear_mount",
            "pump_tee booster_check_valve brake_booster_users",
            CHAIN_C,
        ],
    ),
    (
        "7 normally open valve",
        &[
            "source check_valve inlet_hose valve outlet_hose tee front_hose front_mount",
            "tee rear_hose rear_mount",
            CHAIN_C,
        ],
    ),
    (
        "8 two-stage mount",
        &[
            "source check_valve reservoir valve_a hose_a chamber_a_mount",
            "reservoir valve_b hose_b chamber_b_mount",
            "battery fuse splice connector_a coil_a control_wire_a module",
            "splice connector_b coil_b control_wire_b module",
        ],
    ),
    (
        "9 fixed bleed",
        &[
            "source check_valve inlet_hose valve outlet_hose tee mount_hose mount",
            "tee bleed",
            CHAIN_A,
        ],
    ),
    (
        "10 delay valve",
        &[
            "source check_valve inlet_hose valve outlet_hose restrictor tee front_hose front_mount",
            "tee rear_hose rear_mount",
            CHAIN_A,
        ],
    ),
    (
        "11 pulsed",
        &["source check_valve reservoir valve short_hose mount", CHAIN_A],
    ),
    (
        "12 shared valve block",
        &[
            "source check_valve reservoir block_tee valve outlet_hose tee front_hose front_mount",
            "tee rear_hose rear_mount",
            "block_tee other_users",
            CHAIN_D,
        ],
    ),
];

const CHAIN_A: &str = "battery fuse power_wire connector coil control_wire module";
const CHAIN_B: &str = "battery fuse relay power_wire connector coil control_wire module";
const CHAIN_C: &str = "battery fuse module control_wire connector coil ground_point";
const CHAIN_D: &str = "battery fuse splice power_wire connector coil control_wire module";

/// The map of a layout, nothing known yet.
pub fn map(chains: &[&str]) -> CircuitMap {
    let mut map = CircuitMap {
        language: "en".into(),
        alt: "Vacuum side and electric side of the circuit".into(),
        ..Default::default()
    };
    for chain in chains {
        let ids: Vec<&str> = chain.split(' ').collect();
        for id in &ids {
            if !map.parts.iter().any(|p| p.id == **id) {
                map.parts.push(MapPart::new(*id, kind(id), label(id)));
            }
        }
        map.links.extend(ids.windows(2).map(|w| MapLink::new(w[0], w[1])));
    }
    // The coil sits in its valve.
    for (valve, coil) in [
        ("valve", "coil"),
        ("valve_1", "coil_1"),
        ("valve_2", "coil_2"),
        ("valve_a", "coil_a"),
    ] {
        if map.parts.iter().any(|p| p.id == valve) && map.parts.iter().any(|p| p.id == coil) {
            map.links.push(MapLink::new(coil, valve));
        }
    }
    map
}

fn label(id: &str) -> String {
    let mut words = id.replace('_', " ");
    words.get_mut(..1).map(str::make_ascii_uppercase);
    words
}

fn kind(id: &str) -> PartKind {
    let ends = [
        ("users", PartKind::OtherUser),
        ("check_valve", PartKind::CheckValve),
        ("control_wire", PartKind::Wire),
        ("power_wire", PartKind::Wire),
        ("source", PartKind::Source),
        ("reservoir", PartKind::Reservoir),
        ("hose", PartKind::Hose),
        ("tee", PartKind::Tee),
        ("valve", PartKind::Valve),
        ("mount", PartKind::Mount),
        ("restrictor", PartKind::Restrictor),
        ("bleed", PartKind::Bleed),
        ("battery", PartKind::Battery),
        ("fuse", PartKind::Fuse),
        ("relay", PartKind::Relay),
        ("connector", PartKind::Connector),
        ("coil", PartKind::Coil),
        ("module", PartKind::Module),
        ("ground_point", PartKind::GroundPoint),
        ("splice", PartKind::Splice),
    ];
    let stem = id.trim_end_matches(|c: char| c.is_ascii_digit() || c == '_');
    let stem = stem
        .strip_suffix("_a")
        .or(stem.strip_suffix("_b"))
        .unwrap_or(stem);
    ends.iter()
        .find(|(end, _)| stem.ends_with(end))
        .map_or(PartKind::Hose, |(_, kind)| *kind)
}
