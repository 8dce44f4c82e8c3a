//! Air through leaks, in closed form.

/// Critical pressure ratio of a sharp hole in air. Source: (2/(k+1))^(k/(k−1)), k = 1.4.
const CRITICAL: f64 = 0.528;

/// Flow of an ideal hole of 1 mm diameter at 101.325 kPa and 20 °C, std cm³/min (20 °C).
///
/// Source: isentropic nozzle, Cd = 1 (references: 9,360.2 cm³/min for a 1.0 mm hole).
const IDEAL_HOLE_1MM: f64 = 9_360.2;

/// Pressure of the reference conditions, kPa.
const REFERENCE_KPA: f64 = 101.325;

/// Flow over choked flow at a pressure ratio. Source: ISO 6358-1, ellipse with m = 0.5.
fn subsonic(ratio: f64) -> f64 {
    if ratio <= CRITICAL {
        1.0
    } else {
        let x = (ratio - CRITICAL) / (1.0 - CRITICAL);
        (1.0 - x * x).max(0.0).sqrt()
    }
}

/// The leak of an ideal hole, std cm³/min at reference conditions.
pub(super) fn hole(diameter_mm: f64) -> f64 {
    IDEAL_HOLE_1MM * diameter_mm * diameter_mm
}

/// Vacuum lost by a closed volume in a time, kPa.
///
/// `leak` std cm³/min, `volume` cm³ > 0, `ambient` and `start` (vacuum) kPa, `seconds` ≥ 0, isothermal, one leak of
/// the hole kind. Source: dp/dt = q·p_a/V with ISO 6358-1: a straight line while choked, then a sine.
pub(super) fn drop(leak: f64, volume: f64, ambient: f64, start: f64, seconds: f64) -> f64 {
    let rate = leak / 60.0 / volume;
    let first = (1.0 - start / ambient).max(0.0);
    let choked_s = if first < CRITICAL {
        (CRITICAL - first) / rate
    } else {
        0.0
    };
    let end = if seconds <= choked_s {
        first + rate * seconds
    } else {
        let x0 = if first < CRITICAL {
            0.0
        } else {
            (first - CRITICAL) / (1.0 - CRITICAL)
        };
        let angle = x0.min(1.0).asin() + rate / (1.0 - CRITICAL) * (seconds - choked_s);
        CRITICAL + (1.0 - CRITICAL) * angle.min(std::f64::consts::FRAC_PI_2).sin()
    };
    (end - first) * ambient
}

/// Leak against which a hand pump works a mount in half the cases, std cm³/min. Source: worked out from 50 strokes of
/// 15 cm³ a minute.
const PUMPED_AGAINST: f64 = 300.0;

/// Share of what a mount does that a hand pump on it keeps up against a leak.
pub(super) fn pumped_against(leak: f64) -> f64 {
    PUMPED_AGAINST / (PUMPED_AGAINST + leak)
}

/// Halvings of an interval of pressures: to within 0.02 kPa.
const HALVINGS: usize = 13;

/// Vacuum behind a passage of `passage_mm` with `leak` behind it, fed from `source` kPa of vacuum, kPa.
pub(super) fn steady(source: f64, ambient: f64, passage_mm: f64, leak: f64) -> f64 {
    if leak <= 0.0 || source <= 0.0 {
        return source.max(0.0);
    }
    let (feed, source_abs) = (hole(passage_mm) / REFERENCE_KPA, ambient - source);
    let (mut low, mut high) = (source_abs, ambient);
    for _ in 0..HALVINGS {
        let p = 0.5 * (low + high);
        let enters = leak * ambient / REFERENCE_KPA * subsonic(p / ambient);
        let leaves = feed * p * subsonic(source_abs / p);
        if enters > leaves {
            low = p;
        } else {
            high = p;
        }
    }
    ambient - 0.5 * (low + high)
}

/// The deepest vacuum a hand pump reaches against a leak, kPa. `displaced` cm³/min.
pub(super) fn pumped(leak: f64, displaced: f64, ambient: f64) -> f64 {
    // Equilibrium: what each stroke takes at p equals what the leak lets in.
    ambient * (1.0 - (leak / displaced).min(1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    const INHG: f64 = 3.386_389;

    /// Source: references c.4, exact rise by an integrator (scipy LSODA): 100 cm³, ideal hole 0.100 mm, from 20 inHg.
    #[test]
    fn a_fall_agrees_with_the_exact_integration() {
        for (seconds, inhg) in [
            (2.0, 19.0664),
            (10.0, 15.3322),
            (20.0, 10.6980),
            (30.0, 6.4323),
            (40.0, 2.9979),
        ] {
            let left = 20.0 * INHG - drop(hole(0.1), 100.0, 101.325, 20.0 * INHG, seconds);
            assert!(
                (left / INHG - inhg).abs() < 0.05,
                "{seconds} s: {} for {inhg}",
                left / INHG
            );
        }
    }

    /// Source: trade notes, worked out for equal discharge coefficients: 20 inHg, 1.5 mm and 0.8 mm passages.
    #[test]
    fn a_small_hole_leaves_the_mount_its_vacuum() {
        for (passage, mm, inhg) in [
            (1.5, 0.1, 20.0),
            (1.5, 0.3, 19.97),
            (1.5, 0.5, 19.7),
            (1.5, 1.0, 15.7),
            (1.5, 1.5, 5.8),
            (0.8, 0.5, 16.7),
            (0.8, 1.0, 2.6),
        ] {
            let there = steady(20.0 * INHG, 101.325, passage, hole(mm)) / INHG;
            assert!(
                (there - inhg).abs() < 0.15,
                "{passage} mm, {mm} mm: {there} for {inhg}"
            );
        }
    }
}
