//! What passes between the core and a phone shell: [`Screen`] and [`Live`] out, [`Action`] in, [`Request`] to
//! the phone. Everything arrives decided and as text: a shell formats no quantity, compares no number, reads
//! no clock, joins no sentence. Buttons carry the [`Action`] they send.

mod action;
mod facts;
mod finding_screens;
mod form;
mod job_screens;
mod live;
mod meant;
mod pick;
mod request;
mod screen;
mod test_screens;

pub use action::*;
pub use facts::*;
pub use finding_screens::*;
pub use form::*;
pub use job_screens::*;
pub use live::*;
pub use meant::*;
pub use pick::*;
pub use request::*;
pub use screen::*;
pub use test_screens::*;
