//! Readings that can hardly be right: asked about once, with the likely slip named.

use crate::Message;

/// A reading that can hardly be right.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// What is odd.
    pub message: Message,
    /// What has probably happened.
    pub likely: Message,
}
