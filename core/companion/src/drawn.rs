//! Drawings that take longer than a tap may: made once and kept until what they show changes.

use std::cell::RefCell;
use std::collections::BTreeMap;

use holdfast_report::Scene;
use serde::{Deserialize, Serialize};

use crate::compose;
use crate::text::Texts;
use crate::units::Units;

/// Drawings kept.
#[derive(Default)]
pub(crate) struct Drawn {
    templates: RefCell<BTreeMap<String, Option<Scene>>>,
    pages: Option<(PagesOf, Vec<Scene>)>,
    /// The pages that are being laid out.
    laying: Option<PagesOf>,
}

/// What the pages of a report depend on.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct PagesOf {
    /// The job.
    pub job: String,
    /// How many entries it has.
    pub entries: usize,
    /// The paper.
    pub paper: String,
    /// The unit vacuum is shown in.
    pub unit: String,
    /// The units of everything else.
    pub units: Units,
    /// The language of its words.
    pub language: String,
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

    /// The pages of a report, if they were laid out.
    pub(crate) fn pages(&self, of: &PagesOf) -> Option<&[Scene]> {
        let (made_of, pages) = self.pages.as_ref()?;
        (made_of == of).then_some(pages)
    }

    /// Whether pages have to be laid out and nobody does it yet; from now on somebody does.
    pub(crate) fn begin_pages(&mut self, of: &PagesOf) -> bool {
        let wanted = self.pages(of).is_none() && self.laying.as_ref() != Some(of);
        if wanted {
            self.laying = Some(of.clone());
        }
        wanted
    }

    /// Pages were laid out.
    pub(crate) fn keep_pages(&mut self, of: PagesOf, pages: Vec<Scene>) {
        self.laying = None;
        self.pages = Some((of, pages));
    }
}
