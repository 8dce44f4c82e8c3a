//! Works that were asked for: waiting to be fetched, and under way.

use std::collections::{BTreeMap, BTreeSet};

use crate::work::{PendingWork, Product, Task, Work};

/// Works that were asked for.
#[derive(Default)]
pub(crate) struct Works {
    last: u64,
    waiting: BTreeMap<u64, Work>,
    under_way: BTreeMap<u64, PendingWork>,
    reasoning: Option<u64>,
    /// Works that nobody waits for.
    quiet: BTreeSet<u64>,
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

    /// Puts a work in line that nobody waits for.
    pub(crate) fn offer_quietly(&mut self, task: Task) -> u64 {
        let id = self.offer(task);
        self.quiet.insert(id);
        id
    }

    /// Puts reasoning in line: nobody waits for it, and there is one at a time.
    pub(crate) fn offer_reasoning(&mut self, task: Task) -> u64 {
        let id = self.offer_quietly(task);
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
        self.quiet.remove(&id);
        if self.reasoning == Some(id) {
            self.reasoning = None;
        }
        self.under_way.remove(&id).and_then(|pending| pending.take())
    }

    /// Whether any work is under way that a person waits for.
    pub(crate) fn any(&self) -> bool {
        self.under_way.keys().any(|id| !self.quiet.contains(id))
    }

    /// Asks all works that a person waits for to stop.
    pub(crate) fn stop(&mut self) {
        let quiet = &self.quiet;
        self.waiting.retain(|id, _| quiet.contains(id));
        self.under_way.retain(|id, pending| {
            let stays = quiet.contains(id);
            if !stays {
                pending.cancel();
            }
            stays
        });
    }
}
