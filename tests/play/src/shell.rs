//! The hands of a shell: it presses what is on the screen and types into what is on the screen, nothing else.

use std::path::{Path, PathBuf};

use holdfast_companion::{
    Acknowledgement, Action, Button, ChoiceOption, Companion, Field, FieldId, PhoneFacts, PhonePart, Pick,
    Picked, Request, Screen, Update,
};

use crate::clock::PhoneClock;
use crate::error::PlayError;
use crate::on_screen::{buttons, cautions, choices, fields};

/// A phone shell without a face: the companion, its screen as last seen, and the phone's clocks.
pub struct Shell {
    /// The companion.
    pub core: Companion,
    /// The phone's clocks.
    pub clock: PhoneClock,
    screen: Screen,
    dir: PathBuf,
    stopwatch: Option<Box<dyn Stopwatch>>,
}

/// Is told when the core takes up an action and when it is through with it.
pub trait Stopwatch {
    /// An action is about to be taken up.
    fn begins(&mut self);
    /// It is through.
    fn ends(&mut self, action: &Action);
}

/// A phone that has, beside its screen, what brings the readings of a file: a gauge reader and an accelerometer.
fn facts() -> PhoneFacts {
    PhoneFacts {
        locale: "en".into(),
        parts: vec![PhonePart::GaugeReader, PhonePart::Accelerometer],
        fonts: Vec::new(),
    }
}

impl Shell {
    /// Opens the app on a data folder.
    ///
    /// # Errors
    /// [`PlayError::Open`].
    pub fn open(dir: &Path, clock: PhoneClock) -> Result<Self, PlayError> {
        let core = Companion::open(dir, facts(), clock.now())?;
        let screen = core.screen();
        Ok(Self {
            core,
            clock,
            screen,
            dir: dir.to_owned(),
            stopwatch: None,
        })
    }

    /// Tells of each action from now on.
    pub fn time(&mut self, stopwatch: Box<dyn Stopwatch>) {
        self.stopwatch = Some(stopwatch);
    }

    /// The process is killed and the app opened again, so many ms later.
    ///
    /// # Errors
    /// [`PlayError::Open`].
    pub fn killed(self, after_ms: i64) -> Result<Self, PlayError> {
        let Self {
            core, mut clock, dir, ..
        } = self;
        drop(core);
        clock.wait_ms(after_ms);
        Self::open(&dir, clock)
    }

    /// What is to be seen now.
    pub fn screen(&self) -> &Screen {
        &self.screen
    }

    /// Sends an action, whether or not a button offers it, and does the work that it asks for.
    ///
    /// # Errors
    /// [`PlayError::Act`].
    pub fn send(&mut self, action: Action) -> Result<Update, PlayError> {
        let update = self.send_only(action)?;
        self.do_works(&update)?;
        Ok(update)
    }

    fn do_works(&mut self, update: &Update) -> Result<(), PlayError> {
        let mut waiting = works(update);
        while let Some(id) = waiting.pop() {
            if let Some(work) = self.core.work(id) {
                // How it ended is on the screen after `WorkDone`.
                let _outcome = work.run(&mut |_| {});
                waiting.extend(works(&self.send_only(Action::WorkDone { id })?));
            }
        }
        Ok(())
    }

    /// Sends an action and leaves undone what work it asks for.
    ///
    /// # Errors
    /// [`PlayError::Act`].
    pub fn send_only(&mut self, action: Action) -> Result<Update, PlayError> {
        let timed = self.stopwatch.is_some().then(|| action.clone());
        if let Some(stopwatch) = &mut self.stopwatch {
            stopwatch.begins();
        }
        let mut update = self.core.act(action, self.clock.now())?;
        if let (Some(stopwatch), Some(action)) = (&mut self.stopwatch, timed) {
            stopwatch.ends(&action);
        }
        if let Some(screen) = update.screen.take() {
            self.screen = screen;
        }
        Ok(update)
    }

    /// Looks at the screen again, after something was done past it.
    pub fn look_again(&mut self) {
        self.screen = self.core.screen();
    }

    /// Presses the button that sends an action.
    ///
    /// # Errors
    /// [`PlayError::Missing`] if no such button is on the screen, or it can't be pressed now.
    pub fn press(&mut self, action: &Action) -> Result<Update, PlayError> {
        match self.button(action) {
            Some(Button { why_not: None, .. }) => self.send(action.clone()),
            Some(Button {
                why_not: Some(why), ..
            }) => Err(self.missing(format!("button for {action:?} that can be pressed: {why}"))),
            None => Err(self.missing(format!("button for {action:?}"))),
        }
    }

    /// Whether a button that can be pressed sends this action.
    pub fn offers(&self, action: &Action) -> bool {
        self.button(action).is_some_and(|button| button.why_not.is_none())
    }

    fn button(&self, action: &Action) -> Option<Button> {
        buttons(&self.screen)
            .into_iter()
            .find(|button| button.action == *action)
            .cloned()
    }

    /// Taps an option until it is picked or not, as wanted.
    ///
    /// # Errors
    /// [`PlayError::Missing`] if no such option is on the screen.
    pub fn pick(&mut self, pick: &Pick, wanted: Picked) -> Result<(), PlayError> {
        let there = self
            .option(pick)
            .ok_or_else(|| self.missing(format!("option {pick:?}")))?;
        if there.picked != wanted {
            self.send(there.action)?;
        }
        Ok(())
    }

    /// The option that sends a pick.
    pub fn option(&self, pick: &Pick) -> Option<ChoiceOption> {
        let action = Action::Pick { pick: pick.clone() };
        choices(&self.screen)
            .into_iter()
            .flat_map(|choice| &choice.options)
            .find(|o| o.action == action)
            .cloned()
    }

    /// Whether an option on the screen sends this action.
    pub fn shows(&self, action: &Action) -> bool {
        choices(&self.screen)
            .into_iter()
            .flat_map(|choice| &choice.options)
            .any(|o| o.action == *action)
    }

    /// The options on the screen whose pick is one of a kind.
    pub fn options(&self, of: impl Fn(&Pick) -> bool) -> Vec<ChoiceOption> {
        let is = |option: &&ChoiceOption| matches!(&option.action, Action::Pick { pick } if of(pick));
        choices(&self.screen)
            .into_iter()
            .flat_map(|choice| &choice.options)
            .filter(is)
            .cloned()
            .collect()
    }

    /// Types into a field. What the field says against it, if anything, is given back.
    ///
    /// # Errors
    /// [`PlayError::Missing`] if no such field is on the screen.
    pub fn type_in(&mut self, id: &FieldId, text: &str) -> Result<Option<String>, PlayError> {
        if self.field(id).is_none() {
            return Err(self.missing(format!("field {id:?}")));
        }
        self.send(Action::Type {
            field: id.clone(),
            text: text.to_owned(),
        })?;
        let field = self
            .field(id)
            .ok_or_else(|| self.missing(format!("field {id:?}")))?;
        Ok(field.problem)
    }

    /// Types into a field that has to take it.
    ///
    /// # Errors
    /// [`PlayError::Refused`] if the field has something against it.
    pub fn fill(&mut self, id: &FieldId, text: &str) -> Result<(), PlayError> {
        match self.type_in(id, text)? {
            None => Ok(()),
            Some(problem) => Err(PlayError::Refused {
                field: id.clone(),
                text: text.to_owned(),
                problem,
            }),
        }
    }

    /// A field on the screen.
    pub fn field(&self, id: &FieldId) -> Option<Field> {
        fields(&self.screen)
            .into_iter()
            .find(|field| field.id == *id)
            .cloned()
    }

    /// Ticks every caution on the screen that is to be ticked.
    ///
    /// # Errors
    /// [`PlayError::Act`].
    pub fn tick_cautions(&mut self) -> Result<(), PlayError> {
        // Ticking one may bring up another, and the bound keeps a broken screen from holding the player.
        for _ in 0..200 {
            let open = cautions(&self.screen)
                .into_iter()
                .find_map(|caution| match &caution.ack {
                    Acknowledgement::Open { action } => Some(action.clone()),
                    _ => None,
                });
            match open {
                Some(action) => self.send(action)?,
                None => return Ok(()),
            };
        }
        Err(self.missing("end of its cautions".into()))
    }

    /// The screen lacks something.
    pub fn missing(&self, missing: String) -> PlayError {
        PlayError::Missing {
            screen: self.screen.frame.title.clone(),
            missing,
        }
    }
}

/// The works that an update asks for.
fn works(update: &Update) -> Vec<u64> {
    let id = |request: &Request| {
        if let Request::Work { id } = request {
            Some(*id)
        } else {
            None
        }
    };
    update.requests.iter().filter_map(id).collect()
}
