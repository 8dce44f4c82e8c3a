//! The simulator's own physics: textbook equations, integrated in small steps.

pub const R: f64 = 287.05;
pub const P_STD: f64 = 101_325.0;
pub const T_STD: f64 = 293.15;
pub const INHG: f64 = 3386.389;
const K: f64 = 1.4;

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    Hole,
    Capillary,
}

/// Isentropic mass flow through 1 m², kg/s.
fn nozzle(p1: f64, p2: f64, t: f64) -> f64 {
    let critical = (2.0 / (K + 1.0)).powf(K / (K - 1.0));
    let r = (p2 / p1).clamp(critical, 1.0);
    p1 * (2.0 * K / ((K - 1.0) * R * t) * (r.powf(2.0 / K) - r.powf((K + 1.0) / K)))
        .max(0.0)
        .sqrt()
}

fn sutherland(t: f64) -> f64 {
    1.716e-5 * (t / 273.15).powf(1.5) * (273.15 + 110.4) / (t + 110.4)
}

/// Mass flow of a leak of `std cm³/min`, stated at 101.325 kPa, 20 °C and 20 inHg.
pub fn leak_flow(shape: Shape, std_cm3_min: f64, pa: f64, p: f64, t: f64) -> f64 {
    let stated = std_cm3_min * 1e-6 / 60.0 * P_STD / (R * T_STD);
    let inside = P_STD - 20.0 * INHG;
    match shape {
        Shape::Hole => stated * nozzle(pa, p, t) / nozzle(P_STD, inside, T_STD),
        Shape::Capillary => {
            let drive = |pa: f64, p: f64, t: f64| (pa * pa - p * p) / (sutherland(t) * t);
            stated * drive(pa, p, t) / drive(P_STD, inside, T_STD)
        }
    }
}

/// One closed volume: rubber that gives way, gas that warms, a leak. All SI.
#[derive(Debug, Clone, Copy)]
pub struct Car {
    pub shape: Shape,
    pub std_cm3_min: f64,
    pub volume: f64,
    pub pa: f64,
    pub air: f64,
    /// Warming over `span` seconds, K, even in time.
    pub warming: f64,
    pub span: f64,
    /// What creep alone would take off the vacuum in the end, Pa, and its time constant, s.
    pub creep: f64,
    pub creep_time: f64,
}

impl Car {
    fn temperature(&self, t: f64) -> f64 {
        self.air + self.warming * t / self.span
    }

    fn volume_at(&self, t: f64, p0: f64) -> f64 {
        let given = self.creep * (1.0 - (-t / self.creep_time).exp());
        self.volume * p0 / (p0 + given)
    }

    /// True vacuum (Pa) at each of the rising `times`, from a true vacuum at time 0, by fourth-order steps of 0.05 s or less.
    pub fn vacuum(&self, start: f64, times: &[f64]) -> Vec<f64> {
        let p0 = self.pa - start;
        let mut mass = p0 * self.volume / (R * self.air);
        let pressure = |mass: f64, t: f64| mass * R * self.temperature(t) / self.volume_at(t, p0);
        let flow = |mass: f64, t: f64| {
            leak_flow(
                self.shape,
                self.std_cm3_min,
                self.pa,
                pressure(mass, t).min(self.pa),
                self.air,
            )
        };
        let mut now = 0.0;
        times
            .iter()
            .map(|&time| {
                let steps = ((time - now) / 0.05).ceil().max(1.0);
                let h = (time - now) / steps;
                for _ in 0..steps as usize {
                    let k1 = flow(mass, now);
                    let k2 = flow(mass + h / 2.0 * k1, now + h / 2.0);
                    let k3 = flow(mass + h / 2.0 * k2, now + h / 2.0);
                    let k4 = flow(mass + h * k3, now + h);
                    mass += h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
                    now += h;
                }
                self.pa - pressure(mass, now).min(self.pa * 1.02)
            })
            .collect()
    }
}
