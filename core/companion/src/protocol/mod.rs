//! What passes between the core and a phone shell: [`Screen`] and [`Live`] out, [`Action`] in, [`Request`] to
//! the phone. Everything arrives decided and as text: a shell formats no quantity, compares no number, reads
//! no clock, joins no sentence. Buttons carry the [`Action`] they send.

mod action;
mod facts;
mod form;
mod live;
mod request;
mod screen;

pub use action::*;
pub use facts::*;
pub use form::*;
pub use live::*;
pub use request::*;
pub use screen::*;
