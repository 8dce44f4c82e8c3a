//! Which tests there are, and everything about doing them but the words.

mod data;
mod spec;

pub use data::{Catalogue, CautionSummary};
pub use spec::{
    Advice, CautionRef, EngineNeed, FieldSpec, Form, Needs, NotOffered, Quantity, Signal, TestSpec,
};

#[cfg(test)]
mod tests;
