//! A phone without a face: sends actions, keeps requests, moves its own clocks.

use std::path::PathBuf;

use holdfast_companion::{
    Acknowledgement, Action, Body, Button, Clock, Companion, FieldId, FormItem, HoldPhase, PhoneFacts,
    PhonePart, Pick, Request, Screen, Section, TestStage, Update,
};
use tempfile::TempDir;

/// A phone with a data folder of its own.
pub struct Phone {
    pub core: Companion,
    pub clock: Clock,
    /// What was asked of the phone, but for works.
    pub asked: Vec<Request>,
    works: Vec<u64>,
    dir: TempDir,
    facts: PhoneFacts,
}

fn facts() -> PhoneFacts {
    PhoneFacts {
        locale: "en-US".into(),
        parts: vec![
            PhonePart::Camera,
            PhonePart::Gallery,
            PhonePart::Barometer,
            PhonePart::Speech,
            PhonePart::Buzzer,
            PhonePart::Share,
        ],
        fonts: Vec::new(),
    }
}

#[allow(dead_code, reason = "each test file uses its own part of the phone")]
impl Phone {
    pub fn new() -> Self {
        Self::of(facts())
    }

    /// A phone with one part more.
    pub fn with(part: PhonePart) -> Self {
        let mut facts = facts();
        facts.parts.push(part);
        Self::of(facts)
    }

    /// A phone of another language and region.
    pub fn in_locale(locale: &str) -> Self {
        Self::of(PhoneFacts {
            locale: locale.into(),
            ..facts()
        })
    }

    fn of(facts: PhoneFacts) -> Self {
        let dir = tempfile::tempdir().expect("a folder");
        let clock = Clock {
            wall_ms: 1_790_000_000_000,
            offset_min: 60,
            mono_ms: 5_000_000,
            boot_id: "first boot".into(),
        };
        let core = Companion::open(dir.path(), facts.clone(), &clock).expect("a log");
        Self {
            core,
            clock,
            asked: Vec::new(),
            works: Vec::new(),
            dir,
            facts,
        }
    }

    pub fn dir(&self) -> PathBuf {
        self.dir.path().to_owned()
    }

    /// Ends the process and opens it again, `away_ms` later.
    pub fn kill_and_reopen(self, away_ms: i64) -> Self {
        let Self {
            core,
            mut clock,
            asked,
            works: _,
            dir,
            facts,
        } = self;
        drop(core);
        clock.mono_ms += away_ms;
        clock.wall_ms += away_ms;
        let core = Companion::open(dir.path(), facts.clone(), &clock).expect("the log again");
        Self {
            core,
            clock,
            asked,
            works: Vec::new(),
            dir,
            facts,
        }
    }

    /// Does what a person does, and the work that it asks for, as a shell would on another thread.
    pub fn send(&mut self, action: Action) -> Update {
        let update = self.send_only(action);
        self.work();
        update
    }

    /// Does what a person does; its work waits for [`Phone::work`].
    pub fn send_only(&mut self, action: Action) -> Update {
        self.clock.mono_ms += 20;
        self.clock.wall_ms += 20;
        let update = self
            .core
            .act(action.clone(), &self.clock)
            .unwrap_or_else(|e| panic!("{action:?}: {e}"));
        for request in update.requests.clone() {
            match request {
                Request::Work { id } => self.works.push(id),
                other => self.asked.push(other),
            }
        }
        update
    }

    pub fn type_in(&mut self, field: FieldId, text: &str) -> Update {
        self.send(Action::Type {
            field,
            text: text.into(),
        })
    }

    /// A finger on the photo: down at the first place, along the others, up.
    pub fn stroke(&mut self, places: &[(f32, f32)]) {
        for (at, &(x, y)) in places.iter().enumerate() {
            self.send(if at == 0 {
                Action::Grab { x, y, reach: 20.0 }
            } else {
                Action::Drag { x, y }
            });
        }
        self.send(Action::Release);
    }

    pub fn pick(&mut self, pick: Pick) -> Update {
        self.send(Action::Pick { pick })
    }

    /// Lets seconds pass with ticks each 100 ms, as the shell does while it is asked to.
    pub fn wait(&mut self, seconds: f64) {
        let steps = (seconds * 10.0).round() as i64;
        for _ in 0..steps {
            self.clock.mono_ms += 80;
            self.clock.wall_ms += 80;
            self.send(Action::Tick);
        }
    }

    pub fn screen(&self) -> Screen {
        self.core.screen()
    }

    /// Ticks every caution that the screen asks to tick.
    pub fn tick_cautions(&mut self) {
        while let Some(action) = open_caution(&self.screen()) {
            self.send(action);
        }
    }

    /// A new job with a complaint, up to where we stand.
    pub fn begin_job(&mut self) {
        self.send(Action::NewJob);
        self.pick(Pick::Complaint {
            id: "shake_idle".into(),
        });
        self.type_in(FieldId::Plate, "TEST 123");
        self.type_in(FieldId::Label, "Demo estate");
        self.pick(Pick::Profile {
            id: "mechanic".into(),
        });
        self.send(Action::Confirm);
        for tool in [
            "hand-pump",
            "cap",
            "multimeter",
            "fused-jumper",
            "lamp",
            "spare-hose",
            "wooden-lever",
        ] {
            self.pick(Pick::Tool { id: tool.into() });
        }
        self.tick_cautions();
        self.send(Action::Confirm);
        assert!(
            matches!(self.screen().body, Body::Overview { .. }),
            "{:?}",
            self.screen().frame
        );
    }

    /// A test from its briefing to its measurement.
    pub fn begin_test(&mut self, test: &str) {
        self.send(Action::ShowTest { test: test.into() });
        self.tick_cautions();
        self.send(Action::BeginTest);
    }

    /// A hold up to letting go and its first reading.
    pub fn pump_and_let_go(&mut self, test: &str, strokes: usize, start: &str) {
        self.begin_test(test);
        assert!(matches!(self.phase(), HoldPhase::Pump { .. }));
        for _ in 0..strokes {
            self.send(Action::Stroke);
        }
        self.send(Action::LetGo);
        self.type_in(FieldId::GaugeReading, start);
        self.send(Action::Confirm);
    }

    /// A whole hold with one reading after the set time.
    pub fn hold(&mut self, test: &str, strokes: usize, start: &str, end: &str) {
        self.pump_and_let_go(test, strokes, start);
        self.wait(21.0);
        assert!(
            matches!(self.phase(), HoldPhase::Read { .. }),
            "{:?}",
            self.phase()
        );
        self.type_in(FieldId::GaugeReading, end);
        self.send(Action::Confirm);
    }

    pub fn phase(&self) -> HoldPhase {
        match self.screen().body {
            Body::Hold { hold } => hold.phase,
            other => panic!("no hold on the screen: {other:?}"),
        }
    }

    pub fn stage(&self) -> TestStage {
        match self.screen().body {
            Body::Test { test } => test.stage,
            other => panic!("no test on the screen: {other:?}"),
        }
    }

    /// Runs the works that were asked for and not done yet, and those that they ask for.
    pub fn work(&mut self) {
        while let Some(id) = self.works.pop() {
            if let Some(work) = self.core.work(id) {
                work.run(&mut |_| {});
            }
            self.send_only(Action::WorkDone { id });
        }
    }
}

fn open_caution(screen: &Screen) -> Option<Action> {
    let sections: &[Section] = match &screen.body {
        Body::Prepare { form } => &form.sections,
        _ => &[],
    };
    let in_form = sections
        .iter()
        .flat_map(|s| &s.items)
        .filter_map(|item| match item {
            FormItem::Care { caution } => Some(&caution.ack),
            _ => None,
        });
    let steps = match &screen.body {
        Body::Test { test } => match &test.stage {
            TestStage::Brief { steps, .. } => steps.as_slice(),
            _ => &[],
        },
        _ => &[],
    };
    let in_steps = steps
        .iter()
        .flat_map(|step| &step.cautions)
        .map(|caution| &caution.ack);
    in_form.chain(in_steps).find_map(|ack| match ack {
        Acknowledgement::Open { action } => Some(action.clone()),
        _ => None,
    })
}

/// The button that sends an action.
#[allow(dead_code, reason = "each test file uses its own part of the phone")]
pub fn button(buttons: &[Button], action: &Action) -> Option<Button> {
    buttons.iter().find(|button| button.action == *action).cloned()
}
