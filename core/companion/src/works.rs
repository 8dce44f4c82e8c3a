//! Works that were asked for: waiting to be fetched, and under way.

use std::collections::BTreeMap;

use crate::work::{PendingWork, Product, Task, Work};

/// Works that were asked for.
#[derive(Default)]
pub(crate) struct Works {
    last: u64,
    waiting: BTreeMap<u64, Work>,
    under_way: BTreeMap<u64, PendingWork>,
}

impl Works {
    /// Puts a work in line and gives its id.
    pub(crate) fn offer(&mut self, task: Task) -> u64 {
        self.last += 1;
        let (work, pending) = Work::new(task);
        self.waiting.insert(self.last, work);
        self.under_way.insert(self.last, pending);
        self.last
    }

    /// The work to run, once.
    pub(crate) fn fetch(&mut self, id: u64) -> Option<Work> {
        self.waiting.remove(&id)
    }

    /// What an ended work made.
    pub(crate) fn finish(&mut self, id: u64) -> Option<Product> {
        self.waiting.remove(&id);
        self.under_way.remove(&id).and_then(|pending| pending.take())
    }

    /// Whether any work is under way.
    pub(crate) fn any(&self) -> bool {
        !self.under_way.is_empty()
    }

    /// Asks all works to stop.
    pub(crate) fn stop(&mut self) {
        self.waiting.clear();
        for pending in self.under_way.values() {
            pending.cancel();
        }
        self.under_way.clear();
    }
}
