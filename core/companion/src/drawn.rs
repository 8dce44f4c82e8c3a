//! Drawings that take longer than a tap may: made once and kept until what they show changes.

use std::cell::RefCell;
use std::collections::BTreeMap;

use holdfast_report::Scene;

use crate::compose;
use crate::text::Texts;

/// Drawings kept.
#[derive(Default)]
pub(crate) struct Drawn {
    templates: RefCell<BTreeMap<String, Option<Scene>>>,
    pages: RefCell<Option<(PagesOf, Vec<Scene>)>>,
}

/// What the pages of a report depend on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct PagesOf {
    /// The job.
    pub job: String,
    /// How many entries it has.
    pub entries: usize,
    /// The paper.
    pub paper: String,
    /// Whose report it is.
    pub business: String,
    /// The unit vacuum is shown in.
    pub unit: String,
}

impl Drawn {
    /// The card of a circuit template.
    pub(crate) fn template(&self, texts: &Texts, id: &str) -> Option<Scene> {
        self.templates
            .borrow_mut()
            .entry(id.to_owned())
            .or_insert_with(|| compose::template_card(texts, id))
            .clone()
    }

    /// The pages of a report.
    pub(crate) fn pages(&self, of: PagesOf, make: impl FnOnce() -> Vec<Scene>) -> Vec<Scene> {
        if let Some((made_of, pages)) = &*self.pages.borrow()
            && *made_of == of
        {
            return pages.clone();
        }
        let pages = make();
        *self.pages.borrow_mut() = Some((of, pages.clone()));
        pages
    }
}
