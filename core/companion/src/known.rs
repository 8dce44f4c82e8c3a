//! What every screen asks of the companion: words, the open job, instruments, marks.

use holdfast_diagnose::{Catalogue, Learned, Next, TestId, TestSpec};
use holdfast_joblog::{Content, EntryKey, JobId, JobRow, Payload, RecordLine, Workshop, kind};
use holdfast_measure::{Pressure, PressureUnit};
use holdfast_report::State;

use crate::companion::Companion;
use crate::compose;
use crate::experience::Experience;
use crate::flow;
use crate::job::{Because, JobView};
use crate::protocol::{Body, FormScreen, Mark, PhonePart, Request, Signal};
use crate::session::{At, NoticeAt};
use crate::settings::Settings;
use crate::text::Args;
use crate::turn::Turn;
use crate::work::Task;

impl Companion {
    /// The words of a key.
    pub(crate) fn say(&self, key: &str) -> String {
        self.texts.say(key)
    }

    /// The words of a key with values in them.
    pub(crate) fn say_with(&self, key: &str, args: &Args) -> String {
        self.texts.say_with(key, args)
    }

    /// Whether this phone has a part.
    pub(crate) fn has(&self, part: PhonePart) -> bool {
        self.facts.parts.contains(&part)
    }

    /// Says something aloud, if that is switched on and the phone can.
    pub(crate) fn speak(&self, text: String, turn: &mut Turn<'_>) {
        if self.session.settings.speech.is_on() && self.has(PhonePart::Speech) {
            turn.ask(Request::Speak {
                text,
                language: self.texts.language().tag().to_owned(),
            });
        }
    }

    /// Puts an entry of the open job in line to be logged when the action is through.
    pub(crate) fn append(&self, payload: Payload, turn: &mut Turn<'_>) {
        if let Some(job) = self
            .session
            .job
            .as_deref()
            .and_then(|job| job.parse::<JobId>().ok())
        {
            turn.entries.push((job, payload));
        }
    }

    /// Logs settings that the open job does not state already.
    pub(crate) fn state_settings(&self, turn: &mut Turn<'_>) {
        for payload in flow::settings_payloads(&self.session.settings) {
            let stated = self.job.as_ref().is_some_and(|job| match &payload {
                Payload::Profile(it) => job.log.profile.as_ref() == Some(it),
                Payload::Instruments(it) => job.log.instruments.as_ref() == Some(it),
                Payload::Limit(it) => job.log.limit == *it,
                // Nobody named is stated by saying nothing; one that another phone named stays.
                Payload::Workshop(it) => {
                    job.log.workshop.clone().unwrap_or_default() == *it
                        || (*it == Workshop::default() && !self.named_the_workshop(job))
                }
                _ => false,
            });
            if !stated {
                self.append(payload, turn);
            }
        }
    }

    /// Whether it was this phone that named the job's workshop last.
    fn named_the_workshop(&self, job: &JobView) -> bool {
        let names = |line: &&RecordLine| matches!(line.content, Content::Known(Payload::Workshop(_)));
        let last = job.log.record.iter().rfind(names);
        last.is_some_and(|line| line.entry.key.device == self.store.device())
    }

    /// Reads the open job from the log, as far as it changed.
    pub(crate) fn take_up_job(&mut self) -> Result<(), holdfast_joblog::UseError> {
        let id = self
            .session
            .job
            .as_deref()
            .and_then(|job| job.parse::<JobId>().ok());
        self.job = match id {
            None => {
                // The settings show it, whether a job is open or not.
                if matches!(self.session.at, At::Settings { .. }) {
                    self.learn()?;
                }
                None
            }
            Some(id) => {
                let log = self.store.fold(id)?;
                let before = self.job.take();
                if before.as_ref().is_none_or(|b| b.id != id) {
                    self.learn()?;
                }
                if log.record.is_empty() {
                    None
                } else {
                    JobView::judged(log, before, &self.experience)
                }
            }
        };
        if self.job.is_none() {
            self.session.job = None;
        }
        self.kind = match self.job.as_ref().and_then(|job| job.log.vehicle.label.as_deref()) {
            Some(label) => kind::stream(label)
                .map(|kind| self.store.fold(kind))
                .transpose()?,
            None => None,
        };
        Ok(())
    }

    /// Asks the phone to do a work that the person waits for, and says what it is.
    pub(crate) fn begin_work(&mut self, task: Task, key: &str, turn: &mut Turn<'_>) {
        let id = self.works.offer(task);
        self.session.notice = Some(NoticeAt::Working {
            key: key.to_owned(),
            work: id,
        });
        turn.ask(Request::Work { id });
    }

    /// Reads what the person's own jobs taught.
    pub(crate) fn learn(&mut self) -> Result<(), holdfast_joblog::UseError> {
        self.experience = Experience::read(&self.store, self.session.settings.learned_since_ms)?;
        Ok(())
    }

    /// What the person's own jobs taught, on all circuits; and from how many jobs.
    pub(crate) fn taught(&self) -> (Learned, usize) {
        self.experience.all()
    }

    /// Whether a caution was ticked in this job.
    pub(crate) fn acknowledged(&self, caution: &str) -> bool {
        self.job.as_ref().is_some_and(|job| {
            job.log
                .acknowledged
                .iter()
                .any(|ticked| ticked.value.caution == caution)
        })
    }

    /// A test of this circuit by its id, offered here or not.
    pub(crate) fn spec(&self, test: &str) -> Option<TestSpec> {
        let job = self.job.as_ref()?;
        let id: TestId = test.parse().ok()?;
        job.spec(&id)
            .cloned()
            .or_else(|| Catalogue::standard().spec(&job.circuit, &id))
    }

    /// Why a test is done now, as the log keeps it.
    pub(crate) fn because(&self, test: &str) -> Because {
        let mut because = Because {
            minutes: self.spec(test).map_or(0.0, |spec| spec.minutes),
            ..Because::default()
        };
        if let Some(Next::Test { id, why, minutes, .. } | Next::LookAgain { id, why, minutes }) =
            self.job.as_ref().map(|job| &job.next)
            && id.to_string() == test
        {
            because.why = self.texts.message(why);
            because.minutes = *minutes;
        }
        because
    }

    /// A test's name.
    pub(crate) fn test_name(&self, test: &str) -> String {
        test.parse::<TestId>()
            .map_or_else(|_| test.to_owned(), |id| self.texts.test_title(&id))
    }

    /// A text of a test, or nothing.
    pub(crate) fn test_words(&self, test: &str, what: &str) -> String {
        let args = self
            .job
            .as_ref()
            .map_or_else(Args::new, |job| compose::test_args(&self.texts, job));
        test.parse::<TestId>()
            .ok()
            .and_then(|id| self.texts.test_text(&id, what, &args))
            .unwrap_or_default()
    }

    /// The word of a signal.
    pub(crate) fn signal_word(&self, signal: Signal) -> String {
        self.say(match signal {
            Signal::Danger => "signal-danger",
            Signal::Warning => "signal-warning",
            Signal::Caution => "signal-caution",
            Signal::Notice => "signal-notice",
        })
    }

    /// The unit the person's gauge reads in.
    pub(crate) fn gauge_unit(&self) -> PressureUnit {
        self.job
            .as_ref()
            .map_or(PressureUnit::InHg, |job| job.situation.instruments.gauge.unit)
    }

    /// How finely the person's gauge is read, in its unit.
    pub(crate) fn read_to(&self) -> f64 {
        self.job
            .as_ref()
            .map(|job| job.situation.instruments.gauge.read_to)
            .filter(|x| *x > 0.0)
            .unwrap_or(0.5)
    }

    /// The most that can be typed for a vacuum in a unit: the end of the gauge's scale, where it is the gauge's unit.
    pub(crate) fn most_vacuum(&self, unit: PressureUnit) -> Pressure {
        let full = PressureUnit::KPa.to_pressure(110.0);
        match &self.job {
            Some(job) if job.situation.instruments.gauge.unit == unit => {
                job.situation.instruments.gauge.full_scale()
            }
            _ => full,
        }
    }

    /// How long a hold is watched at first, s.
    pub(crate) fn hold_seconds(&self) -> f64 {
        self.job.as_ref().map_or(20.0, |job| job.situation.limit.seconds)
    }

    /// The state of a job in a word.
    pub(crate) fn job_mark(&self, row: &JobRow) -> Mark {
        let (state, key) = match (&row.closed, row.readings) {
            (Some(closed), _) if closed.repaired => (State::Holds, "job-repaired"),
            (Some(_), _) => (State::Holds, "job-closed"),
            (None, 0) => (State::NotDone, "job-begun"),
            (None, _) => (State::Undecided, "job-open"),
        };
        compose::mark(state, self.say(key))
    }

    /// When something was, in words.
    pub(crate) fn when(&self, at_ms: i64, offset_min: i32) -> String {
        compose::date_and_time(&self.texts, at_ms, offset_min)
    }

    /// A screen with nothing on it, where what it would show is gone.
    pub(crate) fn nothing(&self) -> Body {
        let text = self.say("nothing-here");
        let section = crate::protocol::Section {
            heading: String::new(),
            items: vec![crate::protocol::FormItem::Words { text }],
        };
        Body::Settings {
            form: FormScreen {
                sections: vec![section],
                next: None,
            },
        }
    }
}

impl JobView {
    /// Why the reading of an entry was asked for.
    pub(crate) fn because(&self, entry: EntryKey) -> Option<&Because> {
        self.behind
            .iter()
            .find(|behind| behind.entry == entry)
            .map(|behind| &behind.because)
    }

    /// Whether the reading of an entry was taken after a repair.
    pub(crate) fn is_after_repair(&self, entry: EntryKey) -> bool {
        self.behind
            .iter()
            .zip(&self.done)
            .any(|(behind, (reading, _))| behind.entry == entry && reading.after_repair)
    }

    /// Whether the last retest after a repair came out good.
    pub(crate) fn retested_good(&self) -> bool {
        use holdfast_diagnose::Outcome;
        self.done
            .iter()
            .rev()
            .find(|(reading, _)| reading.after_repair)
            .is_some_and(|(_, result)| {
                matches!(
                    result.outcome,
                    Outcome::Holds | Outcome::SlowLeak | Outcome::AsExpected
                )
            })
    }
}

impl Settings {
    /// The unit vacuum is shown in.
    pub(crate) fn shown_unit(&self) -> PressureUnit {
        PressureUnit::from_symbol(&self.shown_unit).unwrap_or(PressureUnit::InHg)
    }
}
