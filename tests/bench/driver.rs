//! A job driven by actions, each handed to a stopwatch.

use holdfast_companion::{
    Acknowledgement, Action, Body, Clock, Companion, FieldId, FormItem, PhoneFacts, Pick, Request, Section,
    TestStage,
};

/// A companion with its clocks; `timed` is told of every action.
pub struct Driver<'a> {
    core: Companion,
    clock: Clock,
    timed: &'a mut dyn FnMut(&mut dyn FnMut(), bool),
}

impl<'a> Driver<'a> {
    /// On a data folder. `timed` runs the action it is given, and is told whether it is a tick.
    pub fn new(dir: &std::path::Path, timed: &'a mut dyn FnMut(&mut dyn FnMut(), bool)) -> Self {
        let clock = Clock {
            wall_ms: 1_790_000_000_000,
            offset_min: 0,
            mono_ms: 1_000,
            boot_id: "one".into(),
        };
        let facts = PhoneFacts {
            locale: "en-US".into(),
            parts: Vec::new(),
        };
        let core = Companion::open(dir, facts, &clock).expect("an empty log opens");
        Self { core, clock, timed }
    }

    fn send(&mut self, action: Action) {
        self.clock.mono_ms += 20;
        self.clock.wall_ms += 20;
        let tick = action == Action::Tick;
        let (core, clock) = (&mut self.core, &self.clock);
        let mut requests = Vec::new();
        (self.timed)(
            &mut || {
                requests = core
                    .act(action.clone(), clock)
                    .expect("the action is taken")
                    .requests
            },
            tick,
        );
        for request in requests {
            if let Request::Work { id } = request {
                self.work(id);
            }
        }
    }

    /// Runs work as a shell does, on a thread of its own: no tap waits for it. Its end is taken in like a tick.
    fn work(&mut self, id: u64) {
        if let Some(work) = self.core.work(id) {
            work.run(&mut |_| {});
        }
        let (core, clock) = (&mut self.core, &self.clock);
        (self.timed)(
            &mut || {
                drop(
                    core.act(Action::WorkDone { id }, clock)
                        .expect("the end is taken"),
                )
            },
            true,
        );
    }

    fn type_in(&mut self, field: FieldId, text: &str) {
        self.send(Action::Type {
            field,
            text: text.into(),
        });
    }

    fn acknowledge(&mut self) {
        while let Some(action) = open_caution(&self.core.screen().body) {
            self.send(action);
        }
    }

    /// A job from its complaint to where we stand.
    pub fn begin_job(&mut self) {
        self.send(Action::NewJob);
        self.send(Action::Pick {
            pick: Pick::Complaint {
                id: "shake_idle".into(),
            },
        });
        self.type_in(FieldId::Label, "Demo estate");
        self.send(Action::Confirm);
        for tool in [
            "hand-pump",
            "cap",
            "multimeter",
            "fused-jumper",
            "lamp",
            "spare-hose",
        ] {
            self.send(Action::Pick {
                pick: Pick::Tool { id: tool.into() },
            });
        }
        self.acknowledge();
        self.send(Action::Confirm);
    }

    /// A vacuum hold test from briefing to result.
    pub fn hold(&mut self, test: &str, strokes: usize, start: &str, end: &str) {
        self.send(Action::ShowTest { test: test.into() });
        self.acknowledge();
        self.send(Action::BeginTest);
        for _ in 0..strokes {
            self.send(Action::Stroke);
        }
        self.send(Action::LetGo);
        self.type_in(FieldId::GaugeReading, start);
        self.send(Action::Confirm);
        for _ in 0..210 {
            self.clock.mono_ms += 80;
            self.send(Action::Tick);
        }
        self.type_in(FieldId::GaugeReading, end);
        self.send(Action::Confirm);
    }

    /// How many tests the job has results of.
    pub fn results(&self) -> usize {
        self.core.results().len()
    }
}

fn open_caution(body: &Body) -> Option<Action> {
    let sections: &[Section] = match body {
        Body::Prepare { form } => &form.sections,
        _ => &[],
    };
    let steps = match body {
        Body::Test { test } => match &test.stage {
            TestStage::Brief { steps, .. } => steps.as_slice(),
            _ => &[],
        },
        _ => &[],
    };
    let in_form = sections
        .iter()
        .flat_map(|s| &s.items)
        .filter_map(|item| match item {
            FormItem::Care { caution } => Some(&caution.ack),
            _ => None,
        });
    let in_steps = steps.iter().flat_map(|s| &s.cautions).map(|caution| &caution.ack);
    in_form.chain(in_steps).find_map(|ack| match ack {
        Acknowledgement::Open { action } => Some(action.clone()),
        _ => None,
    })
}
