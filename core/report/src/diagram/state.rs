//! The seven states of a part or a test: each has a shape, so that colour is never alone.

use crate::scene::Role;

/// What is known of a part or a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    /// Vacuum holds, or the reading is as expected: a filled disc.
    Holds,
    /// A slow leak within the limit: a half disc.
    SlowLeak,
    /// Leaks, or the reading is not as expected: a wedge pointing down.
    Leaks,
    /// Can't be told yet: an open ring.
    Undecided,
    /// The target was not reached: a bar across a ring.
    WontBuild,
    /// Not tested yet: a dotted ring.
    NotDone,
    /// Can't be tested: a ring with a gap.
    CantDo,
}

impl State {
    /// All states, in the order a key lists them.
    pub const ALL: [Self; 7] = [
        Self::Holds,
        Self::SlowLeak,
        Self::Leaks,
        Self::WontBuild,
        Self::Undecided,
        Self::NotDone,
        Self::CantDo,
    ];

    /// The colour role that goes with the shape.
    #[must_use]
    pub fn role(self) -> Role {
        match self {
            Self::Holds => Role::Holds,
            Self::SlowLeak => Role::SlowLeak,
            Self::Leaks => Role::Leaks,
            Self::Undecided => Role::Undecided,
            Self::WontBuild => Role::WontBuild,
            Self::NotDone => Role::NotDone,
            Self::CantDo => Role::CantDo,
        }
    }
}

/// Which lead of the meter belongs at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Lead {
    /// The red lead (positive input).
    Red,
    /// The black lead (common input).
    Black,
}

impl Lead {
    /// The colour role of the lead.
    #[must_use]
    pub fn role(self) -> Role {
        match self {
            Self::Red => Role::LeadRed,
            Self::Black => Role::LeadBlack,
        }
    }
}
