//! Air through leaks, by the textbook: ISO 6358 for holes (choked, then an ellipse), Poiseuille for thin paths.
//! Written for the evaluation alone; pressures are absolute, Pa; flows are std cm³/min (20 °C, 101.325 kPa).

pub const SEA_LEVEL: f64 = 101_325.0;
pub const INHG: f64 = 3_386.389;
const ROOM: f64 = 293.15;
/// Critical ratio of a sharp hole in a hose, between the nozzle's 0.528 and the usual component's 0.3.
const CRITICAL: f64 = 0.5;
/// An ideal hole of 1 mm passes 9,360 std cm³/min when choked at sea level (nozzle, isentropic); a real one about 0.8 of it.
const PER_MM2: f64 = 9_360.0 * 0.8;

/// Pressure of the standard atmosphere at a height in m (barometric formula of the troposphere, ISO 2533).
pub fn standard_atmosphere(height: f64) -> f64 {
    SEA_LEVEL * (1.0 - 2.255_77e-5 * height).powf(5.255_88)
}

/// A leak as std cm³/min at reference conditions: 101.325 kPa and 20 °C outside, 20 inHg inside.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Leak {
    /// Through holes.
    pub hole: f64,
    /// Through thin paths.
    pub thin: f64,
}

impl Leak {
    pub fn total(self) -> f64 {
        self.hole + self.thin
    }
}

impl std::ops::AddAssign for Leak {
    fn add_assign(&mut self, other: Self) {
        self.hole += other.hole;
        self.thin += other.thin;
    }
}

/// Share of the choked flow at a ratio of pressures.
fn ellipse(ratio: f64) -> f64 {
    if ratio <= CRITICAL {
        1.0
    } else {
        let x = ((ratio - CRITICAL) / (1.0 - CRITICAL)).min(1.0);
        (1.0 - x * x).sqrt()
    }
}

/// Flow from pressure `from` to `to` through a leak, std cm³/min.
pub fn flow(leak: Leak, from: f64, to: f64, kelvin: f64) -> f64 {
    if to >= from {
        return 0.0;
    }
    let hole = leak.hole * from / SEA_LEVEL * ellipse(to / from) * (ROOM / kelvin).sqrt();
    let inside = SEA_LEVEL - 20.0 * INHG;
    let thin = leak.thin * (from * from - to * to) / (SEA_LEVEL * SEA_LEVEL - inside * inside);
    hole + thin
}

/// A passage of this diameter, as a leak.
pub fn passage(mm: f64) -> Leak {
    Leak {
        hole: PER_MM2 * mm * mm,
        thin: 0.0,
    }
}

/// Pressure in a closed volume after some seconds, by Runge and Kutta.
pub fn after(leak: Leak, volume_cm3: f64, ambient: f64, kelvin: f64, start: f64, seconds: f64) -> f64 {
    let rate = |p: f64| flow(leak, ambient, p, kelvin) / 60.0 * SEA_LEVEL * kelvin / ROOM / volume_cm3;
    let steps = 24;
    let h = seconds / f64::from(steps);
    let mut p = start;
    for _ in 0..steps {
        let k1 = rate(p);
        let k2 = rate((p + h / 2.0 * k1).min(ambient));
        let k3 = rate((p + h / 2.0 * k2).min(ambient));
        let k4 = rate((p + h * k3).min(ambient));
        p = (p + h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4)).min(ambient);
    }
    p
}

/// The lowest pressure a hand pump reaches against a leak.
pub fn pumped(leak: Leak, ambient: f64, kelvin: f64, std_cm3_min_at_sea_level: f64) -> f64 {
    let (mut low, mut high) = (0.08 * ambient, ambient);
    for _ in 0..40 {
        let p = (low + high) / 2.0;
        if flow(leak, ambient, p, kelvin) > std_cm3_min_at_sea_level * p / SEA_LEVEL {
            low = p;
        } else {
            high = p;
        }
    }
    high
}
