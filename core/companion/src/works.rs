//! Works that were asked for: waiting to be fetched, and under way.

use std::collections::BTreeMap;

use crate::work::{PendingWork, Product, Task, Work};

/// Works that were asked for.
#[derive(Default)]
pub(crate) struct Works {
    last: u64,
    waiting: BTreeMap<u64, Work>,
    under_way: BTreeMap<u64, PendingWork>,
    reasoning: Option<u64>,
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

    /// Puts reasoning in line: nobody waits for it, and there is one at a time.
    pub(crate) fn offer_reasoning(&mut self, task: Task) -> u64 {
        let id = self.offer(task);
        self.reasoning = Some(id);
        id
    }

    /// Whether reasoning is under way.
    pub(crate) fn is_reasoning(&self) -> bool {
        self.reasoning.is_some()
    }

    /// The work to run, once.
    pub(crate) fn fetch(&mut self, id: u64) -> Option<Work> {
        self.waiting.remove(&id)
    }

    /// What an ended work made.
    pub(crate) fn finish(&mut self, id: u64) -> Option<Product> {
        self.waiting.remove(&id);
        if self.reasoning == Some(id) {
            self.reasoning = None;
        }
        self.under_way.remove(&id).and_then(|pending| pending.take())
    }

    /// Whether any work is under way that a person waits for.
    pub(crate) fn any(&self) -> bool {
        self.under_way.keys().any(|id| Some(*id) != self.reasoning)
    }

    /// Asks all works to stop.
    pub(crate) fn stop(&mut self) {
        self.waiting.clear();
        for pending in self.under_way.values() {
            pending.cancel();
        }
        self.under_way.clear();
        self.reasoning = None;
    }
}
