//! The companion: one synchronous state machine between a person, a phone and the four core crates.

use std::path::{Path, PathBuf};

use holdfast_diagnose::Policy;
use holdfast_joblog::{Condition, JobState, Store, UseError, Write};

use crate::drawn::Drawn;
use crate::error::{ActError, OpenError, key_in_use};
use crate::experience::Experience;
use crate::flow;
use crate::job::{Conclusion, JobView, Reasoned};
use crate::moving::Moving;
use crate::protocol::{Action, Body, Clock, FigureSize, Frame, PhoneFacts, Request, Screen, Update};
use crate::session::{NoticeAt, Session};
use crate::text::Texts;
use crate::turn::{Kept, Seen, Turn};
use crate::work::{Go, Product, Work};
use crate::works::Works;

/// The app without a face.
///
/// Synchronous and single-threaded: a shell calls it from one serial background thread. When [`Companion::act`]
/// returns, everything that was entered is on disk.
pub struct Companion {
    pub(crate) store: Store,
    pub(crate) data_dir: PathBuf,
    pub(crate) facts: PhoneFacts,
    pub(crate) texts: Texts,
    pub(crate) session: Session,
    pub(crate) job: Option<JobView>,
    /// What the person's own jobs taught.
    pub(crate) experience: Experience,
    /// What is known of the open job's vehicle kind.
    pub(crate) kind: Option<JobState>,
    pub(crate) moving: Moving,
    pub(crate) works: Works,
    pub(crate) policy: Policy,
    pub(crate) drawn: Drawn,
    /// What was reasoned out ahead of being logged.
    pub(crate) foreseen: Option<Conclusion>,
    saved: String,
    rev: u64,
    shown: Option<(Frame, Body)>,
}

impl Companion {
    /// Opens the data folder, or makes it, and stands where the person left off: on the same screen, a hold that was
    /// running marked interrupted with what it had.
    ///
    /// # Errors
    /// [`OpenError::Folder`] when the folder can't be made; [`OpenError::Log`] when the log in it can't be opened.
    pub fn open(data_dir: &Path, facts: PhoneFacts, clock: &Clock) -> Result<Self, OpenError> {
        std::fs::create_dir_all(data_dir).map_err(|source| OpenError::Folder {
            path: data_dir.to_owned(),
            source,
        })?;
        match Self::open_on(Store::open(data_dir)?, data_dir, facts.clone(), clock) {
            // Damage that only shows in use: looked for in every page, set aside and salvaged.
            Err(OpenError::Read(UseError::Damaged(_))) => {
                Self::open_on(Store::open_checked(data_dir)?, data_dir, facts, clock)
            }
            opened => opened,
        }
    }

    fn open_on(store: Store, data_dir: &Path, facts: PhoneFacts, clock: &Clock) -> Result<Self, OpenError> {
        let saved = store.session()?.unwrap_or_default();
        let mut session = Session::read(&saved, &facts.locale).reopened(clock);
        let said = match store.condition() {
            Condition::Good => None,
            Condition::ReadOnly => Some("problem-read-only"),
            Condition::Salvaged { .. } => Some("notice-salvaged"),
        };
        if let Some(key) = said {
            session.notice = Some(NoticeAt::Words { key: key.to_owned() });
        }
        let texts = session.settings.texts(&facts.locale);
        let mut companion = Self {
            store,
            data_dir: data_dir.to_owned(),
            facts,
            texts,
            session,
            job: None,
            experience: Experience::default(),
            kind: None,
            moving: Moving::default(),
            works: Works::default(),
            policy: Policy::Guided,
            drawn: Drawn::default(),
            foreseen: None,
            saved,
            rev: 1,
            shown: None,
        };
        companion.take_up_job()?;
        companion.moving.clock = Some(clock.clone());
        if let Some(job) = &mut companion.job {
            job.reason(companion.policy);
        }
        companion.shown = Some(flow::screen(&companion));
        Ok(companion)
    }

    /// What is to be seen now.
    pub fn screen(&self) -> Screen {
        let (frame, body) = self.shown.clone().unwrap_or_else(|| flow::screen(self));
        Screen {
            rev: self.rev,
            language: self.texts.language().tag().to_owned(),
            direction: self.texts.language().direction(),
            figures: if self.session.settings.large_figures.is_on() {
                FigureSize::Large
            } else {
                FigureSize::Usual
            },
            frame,
            body,
        }
    }

    /// Takes in what a person did or what the phone has to tell. An action that the screen does not offer (a late tap)
    /// changes nothing and is no error.
    ///
    /// # Errors
    /// [`ActError`] when it could not be written down; then everything is as before the action.
    pub fn act(&mut self, action: Action, clock: &Clock) -> Result<Update, ActError> {
        let before = (self.session.clone(), self.moving.clone());
        self.moving.clock = Some(clock.clone());
        let mut turn = Turn::new(clock);
        let written = flow::act(self, action, &mut turn).and_then(|()| self.save(&mut turn));
        if let Err(error) = written {
            (self.session, self.moving) = before;
            self.take_up_job()?;
            return Err(error);
        }
        flow::leave_and_enter(&before.0.at, self, &mut turn);
        let update = self.finish(turn)?;
        Ok(self.work_elsewhere(update))
    }

    /// Writes what an action led to, if that was not done yet, and composes what it changed on the screen.
    pub(crate) fn finish(&mut self, mut turn: Turn<'_>) -> Result<Update, ActError> {
        self.save(&mut turn)?;
        let screen = match turn.seen {
            Seen::Same => None,
            Seen::Anew => self.compose_anew(),
        };
        Ok(Update {
            requests: turn.requests,
            screen,
            live: turn.live,
        })
    }

    /// The work asked for by `Request::Work`, once; none if it is unknown or was fetched before.
    pub fn work(&mut self, id: u64) -> Option<Work> {
        self.works.fetch(id)
    }

    /// Writes what is to be logged and the session, together, if there is anything.
    fn save(&mut self, turn: &mut Turn<'_>) -> Result<(), ActError> {
        if turn.kept == Kept::WithTheNext && turn.entries.is_empty() {
            return Ok(());
        }
        let now = serde_json::to_string(&self.session)?;
        let session = (now != self.saved).then(|| now.clone());
        if session.is_none() && turn.entries.is_empty() {
            return Ok(());
        }
        let logged = !turn.entries.is_empty();
        let write = Write {
            entries: std::mem::take(&mut turn.entries),
            session,
        };
        match self.store.write(&write, turn.stamp()) {
            Ok(_) => self.saved = now,
            // Only where the person stands could not be kept: what there is can still be looked at, and this is said.
            Err(error @ (UseError::NoSpace | UseError::ReadOnly)) if !logged => {
                let key = key_in_use(&error).to_owned();
                self.session.notice = Some(NoticeAt::Words { key });
                return Ok(());
            }
            Err(error) => return Err(error.into()),
        }
        if logged {
            self.take_up_job()?;
        }
        Ok(())
    }

    /// What no tap waits for is done on another thread: the report's pages are laid out, the reasoning is done.
    pub(crate) fn work_elsewhere(&mut self, mut update: Update) -> Update {
        if let Some(task) = flow::pages_to_lay(self) {
            let id = self.works.offer_quietly(task);
            update.requests.push(Request::Work { id });
        }
        if self.works.is_reasoning() {
            return update;
        }
        let Some(job) = &self.job else { return update };
        let ahead = flow::situation_ahead(self);
        let situation = ahead.as_ref().unwrap_or(&job.situation);
        if let Some(reason) = job.to_reason(situation, self.foreseen.as_ref(), self.policy) {
            let task = Box::new(|_: &mut dyn FnMut(u16) -> Go| Product::Conclusion(Box::new(reason())));
            let id = self.works.offer_reasoning(task);
            update.requests.push(Request::Work { id });
        }
        update
    }

    /// Composes the screen anew; none if it is as before, or if it is to show reasoning that is still being done
    /// elsewhere: until then the screen before it stays, and its buttons do nothing any more.
    fn compose_anew(&mut self) -> Option<Screen> {
        if let Some(job) = &mut self.job {
            self.foreseen = self.foreseen.take().and_then(|drawn| job.conclude(drawn));
            if flow::shows_reasoning(&self.session.at) && job.reasoned == Reasoned::Before {
                return None;
            }
        }
        let now = Some(flow::screen(self));
        if now == self.shown {
            return None;
        }
        self.shown = now;
        self.rev += 1;
        Some(self.screen())
    }
}
