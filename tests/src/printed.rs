//! Reports of a data folder, for each paper, made as the app makes them.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use holdfast_companion::{Action, Body, Clock, Companion, PhoneFacts, Pick, Place, ReportState, Request};
use holdfast_report::{Item, Scene};

/// A paper reports are made for.
const PAPERS: [&str; 2] = ["a4", "letter"];
/// 2026-03-15T08:00Z: when they are made, in a place one hour ahead.
const NOW_MS: i64 = 1_773_561_600_000;

/// Makes the report of a job in `data`, once for each paper, and leaves them in `out` as `<stem>-<paper>.pdf`.
///
/// # Errors
/// What the log or the report say.
pub fn reports(data: &Path, job: &str, out: &Path, stem: &str) -> Result<Vec<PathBuf>> {
    std::fs::create_dir_all(out)?;
    let mut app = App::on_report(data, job)?;
    PAPERS
        .into_iter()
        .map(|paper| {
            app.pick(paper)?;
            app.act(Action::MakeReport)?;
            let file = out.join(format!("{stem}-{paper}.pdf"));
            std::fs::copy(app.report()?, &file)?;
            Ok(file)
        })
        .collect()
}

/// What is on a page.
pub struct Drawn {
    /// Its texts, in drawing order.
    pub texts: Vec<String>,
    /// How many pictures it has.
    pub images: usize,
}

/// The pages of a job's report on a paper, as the screen shows them.
///
/// # Errors
/// What the log says.
pub fn drawn(data: &Path, job: &str, paper: &str) -> Result<Vec<Drawn>> {
    let mut app = App::on_report(data, job)?;
    app.pick(paper)?;
    let Body::Report { report } = app.core.screen().body else {
        bail!("not on the report");
    };
    Ok(report.pages.iter().map(drawn_on).collect())
}

fn drawn_on(page: &Scene) -> Drawn {
    let text = |item: &Item| match item {
        Item::Text { text, .. } => Some(text.trim().to_owned()),
        _ => None,
    };
    Drawn {
        texts: page.items.iter().filter_map(text).collect(),
        images: page
            .items
            .iter()
            .filter(|item| matches!(item, Item::Image { .. }))
            .count(),
    }
}

/// Fonts for the names: cut down to their letters.
fn fonts() -> Result<Vec<String>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/report/testdata/fonts");
    let files = std::fs::read_dir(&folder).with_context(|| folder.display().to_string())?;
    files
        .map(|file| Ok(file?.path().to_string_lossy().into_owned()))
        .collect()
}

/// The app on a data folder, with a clock that stands still.
struct App {
    core: Companion,
    clock: Clock,
}

impl App {
    fn open(data: &Path) -> Result<Self> {
        let clock = Clock {
            wall_ms: NOW_MS,
            offset_min: 60,
            mono_ms: 1,
            boot_id: "print".into(),
        };
        let facts = PhoneFacts {
            locale: "en-GB".into(),
            parts: Vec::new(),
            fonts: fonts()?,
        };
        let core = Companion::open(data, facts, &clock)?;
        Ok(Self { core, clock })
    }

    /// With the report of a job on the screen.
    fn on_report(data: &Path, job: &str) -> Result<Self> {
        let mut app = Self::open(data)?;
        let job = job.to_owned();
        app.act(Action::OpenJob { job })?;
        app.act(Action::Go { to: Place::Report })?;
        Ok(app)
    }

    fn pick(&mut self, paper: &str) -> Result<()> {
        let id = paper.to_owned();
        self.act(Action::Pick {
            pick: Pick::Paper { id },
        })
    }

    /// Does an action and all the work that it asks for.
    fn act(&mut self, action: Action) -> Result<()> {
        let mut requests = self.core.act(action, &self.clock)?.requests;
        while let Some(request) = requests.pop() {
            if let Request::Work { id } = request
                && let Some(work) = self.core.work(id)
            {
                let _how_it_ended = work.run(&mut |_| {});
                let more = self.core.act(Action::WorkDone { id }, &self.clock)?;
                requests.extend(more.requests);
            }
        }
        Ok(())
    }

    fn report(&self) -> Result<PathBuf> {
        match self.core.screen().body {
            Body::Report { report } => match report.state {
                ReportState::Ready { path, .. } => Ok(path.into()),
                other => bail!("the report is not ready: {other:?}"),
            },
            _ => bail!("not on the report"),
        }
    }
}
