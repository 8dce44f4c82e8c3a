//! What the figures must keep to in the short seeded run. The promises themselves stand in the table; here each is widened
//! by what 300 jobs leave open (two standard errors of a share over the jobs that it counts), and where the core doesn't
//! keep a promise yet, the bound is what it keeps today, and says so: it may only be tightened.

/// One fault, decided: the faulty part named. Promised 0.97; about 120 such jobs leave ±0.03. Not kept yet.
pub const SINGLE_RIGHT: f64 = 0.85;
/// Sound circuit blamed. Promised 0.01; about 90 such jobs: two of them may be. Not kept yet.
pub const SOUND_BLAMED: f64 = 0.08;
/// Decided or rightly declared inseparable. Promised 0.97. Not kept yet.
pub const ENDED: f64 = 0.80;
/// Calibration error of the first cause. Promised 0.03; chance alone gives about 0.04 with 180 jobs. Not kept yet.
pub const CALIBRATION: f64 = 0.14;
/// One slip: first part right. Promised 0.90; 40 such jobs leave ±0.09. Not kept yet.
pub const SLIP_RIGHT: f64 = 0.35;
/// First part right, below the oracle's by at most. Promised 0.02; 40 jobs leave ±0.06.
pub const BELOW_ORACLE: f64 = 0.08;
/// Minutes saved against the textbook's order. Promised 0.50; 30 jobs leave ±0.13.
pub const SAVED: f64 = 0.37;
/// The same without idle tests. Promised 0.25; 30 jobs leave ±0.15.
pub const SAVED_SKIPPING: f64 = 0.10;
/// Jobs with a leaking hand pump that end with a part of the car named, of about 17. Promised none. Not kept yet.
pub const TESTER_BLAMES: usize = 3;
