//! The one object a phone holds: the companion behind a lock. A shell calls it from one serial background
//! thread; the lock is there so that a mistake in a shell waits instead of breaking anything.

use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use crate::{Action, Clock, Companion, PhoneFacts, Screen, Update, WorkOutcome};

use super::error::HoldfastError;

/// The companion, for a phone.
#[derive(uniffi::Object)]
pub struct Holdfast {
    companion: Mutex<Companion>,
    locale: String,
}

impl Holdfast {
    fn locked(&self) -> MutexGuard<'_, Companion> {
        self.companion.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

#[uniffi::export]
impl Holdfast {
    /// Opens the data folder, or makes it, and stands where the person left off.
    #[uniffi::constructor]
    pub fn open(data_dir: String, facts: PhoneFacts, clock: Clock) -> Result<Arc<Self>, HoldfastError> {
        let locale = facts.locale.clone();
        Companion::open(Path::new(&data_dir), facts, &clock)
            .map(|companion| {
                Arc::new(Self {
                    companion: Mutex::new(companion),
                    locale: locale.clone(),
                })
            })
            .map_err(|error| HoldfastError::opening(&error, &locale))
    }

    /// What is to be seen now.
    pub fn screen(&self) -> Screen {
        self.locked().screen()
    }

    /// Takes in what a person did or what the phone has to tell.
    pub fn act(&self, action: Action, clock: Clock) -> Result<Update, HoldfastError> {
        self.locked()
            .act(action, &clock)
            .map_err(|error| HoldfastError::acting(&error, &self.locale))
    }

    /// The work asked for by `Request::Work`, once; none if it is unknown or was fetched before.
    pub fn work(&self, id: u64) -> Option<Arc<Work>> {
        self.locked().work(id).map(|work| Arc::new(Work { work }))
    }
}

/// Long work on a snapshot of its own: run it on another thread, then send `Action::WorkDone`.
#[derive(uniffi::Object)]
pub struct Work {
    work: crate::Work,
}

#[uniffi::export]
impl Work {
    /// Does the work, telling how far it is; returns when it has ended, well or not.
    pub fn run(&self, progress: Arc<dyn Progress>) -> WorkOutcome {
        self.work.run(&mut |permille| progress.at(permille))
    }

    /// Asks the work to stop soon; may be called from any thread.
    pub fn cancel(&self) {
        self.work.cancel();
    }
}

/// Told how far a work is.
#[uniffi::export(with_foreign)]
pub trait Progress: Send + Sync {
    /// Thousandths done, 0–1,000.
    fn at(&self, permille: u16);
}
