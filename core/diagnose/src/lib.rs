#![doc = include_str!("../README.md")]

mod answer_json;
mod catalogue;
mod circuit;
mod codes;
mod faults;
mod finding;
mod ids;
mod inference;
mod judge;
mod message;
mod message_list;
mod plan;
mod question;
mod reading;
mod situation;

pub use answer_json::{AnswerError, parse_answer};
pub use catalogue::{
    Advice, Catalogue, CautionRef, CautionSummary, EngineNeed, FieldSpec, Form, Needs, NotOffered, Quantity,
    Signal, TestSpec,
};
pub use circuit::{
    Access, Circuit, CircuitChoice, CircuitError, Component, ComponentKind, CustomCircuit, Drive, Edit, Feed,
    LayoutSummary, Link, Properties, Scope, Side, SourceKind, Switched, TemplateSummary, VacuumMeans,
    ValveRest, Window, layouts, templates,
};
pub use faults::{Care, Fix, care_for, care_texts};
pub use finding::{Cause, Finding, Reasoner, finding, fix_for, retest_for};
pub use ids::{ComponentId, FaultId, FieldKey, IdError, TestId, TestKind};
pub use judge::{
    Band, Effect, FinerGauge, FitPoint, HoldResult, LeakRange, Outcome, Target, TestResult, effect,
    expected_band, hold_target, judge,
};
pub use message::{Arg, Message, MessageId};
pub use message_list::{ArgKind, ListedMessage, listed_messages};
pub use plan::{
    Branch, Choice, Network, NetworkTest, Next, Policy, Problem, Ready, State, Trial, discretised, plan_small,
};
pub use question::{Slip, question};
pub use reading::{Answer, CarState, EngineState, HoldAnswer, HoldCourse, LookState, Reading, Value};
pub use situation::{
    AmbientFrom, Complaint, Engine, Instruments, Learned, Limit, Place, Profile, Situation, Tool,
};

#[cfg(test)]
mod schema_tests;
