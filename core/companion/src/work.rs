//! Long work on a snapshot of its own, run on another thread than the one that calls the core.

use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};

use holdfast_joblog::{Imported, Received};

use holdfast_report::Scene;

use crate::drawn::PagesOf;
use crate::job::Conclusion;

/// How a work ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum WorkOutcome {
    /// It is done.
    Done,
    /// It was stopped on request.
    Stopped,
    /// It failed; the core says why on the next screen.
    Failed,
}

/// What a work does: it gets a way to tell how far it is (0–1,000) and whether it should go on, and gives what the
/// core takes up at `WorkDone`.
pub(crate) type Task = Box<dyn FnOnce(&mut dyn FnMut(u16) -> Go) -> Product + Send>;

/// Whether a work should go on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Go {
    /// Go on.
    On,
    /// Stop soon.
    Stop,
}

/// What a work made.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Product {
    /// A report file.
    Report(PathBuf),
    /// The pages of a report as they will print.
    Pages(Box<PagesOf>, Vec<Scene>),
    /// Finding and next test.
    Conclusion(Box<Conclusion>),
    /// A picture that was taken in.
    Photo(Box<Imported>),
    /// Nothing: a picture, by its path, that only the phone may know how to decode.
    Heif(String),
    /// A file for other programs.
    ToShare(ToShare),
    /// A bundle, by its path, and what came of taking it in.
    Received(Box<(String, Received)>),
    /// Nothing: it was stopped.
    Stopped,
    /// Nothing: why, as a text key, and for a log.
    Failed(&'static str, String),
}

/// A file to be handed to another program.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct ToShare {
    /// The file.
    pub path: PathBuf,
    /// Its media type.
    pub mime: &'static str,
    /// The text key of what it is called.
    pub title: &'static str,
}

/// Writes a file whole or not at all, making its folder.
pub(crate) fn write_whole(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder)?;
    }
    let half = path.with_extension("half");
    std::fs::write(&half, bytes)?;
    std::fs::rename(&half, path)
}

/// Long work: [`Work::run`] it once on any thread, then send `Action::WorkDone`.
pub struct Work {
    task: Mutex<Option<Task>>,
    cancelled: Arc<AtomicBool>,
    product: Arc<Mutex<Option<Product>>>,
}

impl Work {
    pub(crate) fn new(task: Task) -> (Self, PendingWork) {
        let cancelled = Arc::new(AtomicBool::new(false));
        let product = Arc::new(Mutex::new(None));
        let pending = PendingWork {
            cancelled: Arc::clone(&cancelled),
            product: Arc::clone(&product),
        };
        (
            Self {
                task: Mutex::new(Some(task)),
                cancelled,
                product,
            },
            pending,
        )
    }

    /// Does the work, telling how far it is in thousandths. A second call does nothing and says `Stopped`.
    pub fn run(&self, progress: &mut dyn FnMut(u16)) -> WorkOutcome {
        let task = self.task.lock().unwrap_or_else(PoisonError::into_inner).take();
        let Some(task) = task else {
            return WorkOutcome::Stopped;
        };
        let product = task(&mut |permille| {
            progress(permille);
            if self.cancelled.load(Ordering::Relaxed) {
                Go::Stop
            } else {
                Go::On
            }
        });
        let outcome = match product {
            Product::Report(_)
            | Product::Pages(..)
            | Product::Photo(_)
            | Product::Heif(_)
            | Product::ToShare(_)
            | Product::Received(_)
            | Product::Conclusion(_) => WorkOutcome::Done,
            Product::Stopped => WorkOutcome::Stopped,
            Product::Failed(..) => WorkOutcome::Failed,
        };
        *self.product.lock().unwrap_or_else(PoisonError::into_inner) = Some(product);
        outcome
    }

    /// Asks the work to stop soon; may be called from any thread.
    pub fn cancel(&self) {
        self.cancelled.store(true, Ordering::Relaxed);
    }
}

/// The core's end of a work under way.
pub(crate) struct PendingWork {
    cancelled: Arc<AtomicBool>,
    product: Arc<Mutex<Option<Product>>>,
}

impl PendingWork {
    /// Asks the work to stop soon.
    pub(crate) fn cancel(&self) {
        self.cancelled.store(true, Ordering::Relaxed);
    }

    /// What the work made, once it has ended.
    pub(crate) fn take(&self) -> Option<Product> {
        self.product.lock().unwrap_or_else(PoisonError::into_inner).take()
    }
}
