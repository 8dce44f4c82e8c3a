//! Text that was set before: most words of a report stand in it many times, and each is measured before it is drawn.

use std::collections::HashMap;
use std::sync::Arc;

use super::fonts::Face;
use crate::scene::Weight;

/// How many texts are kept at most, so that endless notes do not fill the memory.
const MOST: usize = 8_192;

/// How a text is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct Setting {
    face: Face,
    /// The size's bits: only the very same size is the same.
    size: u32,
    /// The bits of the width that lines are broken to.
    width: u32,
}

impl Setting {
    /// As one line.
    pub(super) fn line(weight: Weight, size: f32) -> Self {
        Self::broken(weight, size, f32::INFINITY)
    }

    /// In lines no wider than this.
    pub(super) fn broken(weight: Weight, size: f32, width: f32) -> Self {
        Self {
            face: Face::of(weight),
            size: size.to_bits(),
            width: width.to_bits(),
        }
    }
}

/// What texts led to.
pub(super) struct Kept<T> {
    texts: HashMap<Setting, HashMap<String, Arc<T>>>,
    count: usize,
}

impl<T> Kept<T> {
    pub(super) fn new() -> Self {
        Self {
            texts: HashMap::new(),
            count: 0,
        }
    }

    pub(super) fn find(&self, setting: Setting, text: &str) -> Option<Arc<T>> {
        self.texts.get(&setting)?.get(text).cloned()
    }

    /// Keeps what a text led to.
    pub(super) fn keep(&mut self, setting: Setting, text: &str, made: T) -> Arc<T> {
        if self.count == MOST {
            *self = Self::new();
        }
        self.count += 1;
        let made = Arc::new(made);
        let texts = self.texts.entry(setting).or_default();
        texts.insert(text.to_owned(), Arc::clone(&made));
        made
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_same_setting_is_the_same_and_the_memory_is_bounded() {
        let mut kept = Kept::new();
        let line = Setting::line(Weight::Regular, 9.0);
        for at in 0..=MOST {
            kept.keep(line, &at.to_string(), at);
        }
        assert_eq!(kept.count, 1);
        let last = MOST.to_string();
        assert_eq!(kept.find(line, &last).as_deref(), Some(&MOST));
        assert_eq!(kept.find(line, "0"), None);
        for other in [
            Setting::line(Weight::Bold, 9.0),
            Setting::line(Weight::Regular, 9.5),
            Setting::broken(Weight::Regular, 9.0, 100.0),
        ] {
            assert_eq!(kept.find(other, &last), None);
        }
    }
}
