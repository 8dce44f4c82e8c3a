//! Writing: new entries, the session, entries that come from elsewhere.

use std::collections::BTreeSet;

use rusqlite::{Connection, Transaction, TransactionBehavior, params};

use super::{Condition, MOST_BODY_BYTES, MOST_HLC, Store, derived, rows};
use crate::entry::{DeviceId, Entry, EntryKey, JobId, Stamp};
use crate::error::UseError;
use crate::payload::Payload;

const DAY_MS: i64 = 86_400_000;

/// A write: all of it is kept, or nothing.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Write {
    /// New entries, in order.
    pub entries: Vec<(JobId, Payload)>,
    /// The session that replaces the one there, JSON.
    pub session: Option<String>,
}

/// What came of a merge.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Merged {
    /// Entries that were new.
    pub added: usize,
    /// Entries that were there already.
    pub known: usize,
    /// Jobs that were purged here: their entries are left out.
    pub purged: BTreeSet<JobId>,
    /// Entries under whose key something else stands here: left out. It takes a data folder that was copied and
    /// used on two phones.
    pub clashing: Vec<EntryKey>,
    /// Entries out of bounds (a clock past the year 9999, an oversized body): left out.
    pub refused: Vec<EntryKey>,
    /// The jobs that have new entries.
    pub jobs: BTreeSet<JobId>,
}

impl Merged {
    /// Adds what came of the next entries of the same source.
    pub(crate) fn add(&mut self, more: Merged) {
        self.added += more.added;
        self.known += more.known;
        self.purged.extend(more.purged);
        self.clashing.extend(more.clashing);
        self.refused.extend(more.refused);
        self.jobs.extend(more.jobs);
    }
}

impl Store {
    /// Appends one entry.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn append(&mut self, job: JobId, payload: &Payload, stamp: Stamp) -> Result<Entry, UseError> {
        let write = Write {
            entries: vec![(job, payload.clone())],
            session: None,
        };
        let mut written = self.write(&write, stamp)?;
        written
            .pop()
            .ok_or(UseError::Database(rusqlite::Error::QueryReturnedNoRows))
    }

    /// Replaces the session. It is kept beside the log, not in it.
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn set_session(&mut self, json: &str) -> Result<(), UseError> {
        let write = Write {
            entries: Vec::new(),
            session: Some(json.to_owned()),
        };
        self.write(
            &write,
            Stamp {
                wall_ms: 0,
                offset_min: 0,
            },
        )
        .map(|_| ())
    }

    /// Takes back the entry `target` of `job`; see [`crate::Undo`].
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn undo(&mut self, job: JobId, target: EntryKey, stamp: Stamp) -> Result<Entry, UseError> {
        self.append(job, &Payload::Undo(crate::payload::Undo { target }), stamp)
    }

    /// Puts `instead` in the place of the entry `target` of `job`; see [`crate::Correction`].
    ///
    /// # Errors
    /// As [`Store::write`].
    pub fn correct(
        &mut self,
        job: JobId,
        target: EntryKey,
        instead: &Payload,
        stamp: Stamp,
    ) -> Result<Entry, UseError> {
        let correction = crate::payload::Correction::of(target, instead).map_err(UseError::Body)?;
        self.append(job, &Payload::Correction(correction), stamp)
    }

    /// Appends entries and replaces the session, together. On disk when it returns.
    ///
    /// # Errors
    /// [`UseError::NoSpace`], [`UseError::ReadOnly`], [`UseError::InUse`], [`UseError::Damaged`] by the state of
    /// the file; [`UseError::Purged`], [`UseError::NoTarget`], [`UseError::TooLarge`], [`UseError::Body`] by what
    /// was to be written. Nothing is kept then.
    pub fn write(&mut self, write: &Write, stamp: Stamp) -> Result<Vec<Entry>, UseError> {
        let device = self.device;
        let transaction = self.begin()?;
        let mut written = Vec::with_capacity(write.entries.len());
        for (job, payload) in &write.entries {
            written.push(append_in(&transaction, device, *job, payload, stamp)?);
        }
        derived::refresh(&transaction, &written)?;
        if let Some(session) = &write.session {
            bounded(session)?;
            transaction
                .prepare_cached(
                    "INSERT INTO session (one, body) VALUES (1, ?1) ON CONFLICT DO UPDATE SET body = ?1",
                )?
                .execute([session])?;
        }
        transaction.commit()?;
        Ok(written)
    }

    /// Takes in entries from elsewhere: the log is then the union of both. Those already here are left as they
    /// are, whatever order they come in and however often.
    ///
    /// # Errors
    /// [`UseError::NoSpace`], [`UseError::ReadOnly`], [`UseError::InUse`], [`UseError::Damaged`]. Nothing is taken
    /// in then.
    pub fn merge(&mut self, entries: &[Entry]) -> Result<Merged, UseError> {
        let transaction = self.begin()?;
        let merged = merge_in(&transaction, entries)?;
        for job in &merged.jobs {
            derived::rebuild_job(&transaction, *job)?;
        }
        transaction.commit()?;
        Ok(merged)
    }

    /// Begins a write, unless the log can only be read.
    pub(super) fn begin(&mut self) -> Result<Transaction<'_>, UseError> {
        if self.condition == Condition::ReadOnly {
            return Err(UseError::ReadOnly);
        }
        Ok(self
            .connection
            .transaction_with_behavior(TransactionBehavior::Immediate)?)
    }
}

fn bounded(body: &str) -> Result<(), UseError> {
    if body.len() > MOST_BODY_BYTES {
        return Err(UseError::TooLarge {
            bytes: body.len(),
            most: MOST_BODY_BYTES,
        });
    }
    Ok(())
}

fn append_in(
    transaction: &Transaction<'_>,
    device: DeviceId,
    job: JobId,
    payload: &Payload,
    stamp: Stamp,
) -> Result<Entry, UseError> {
    if rows::is_purged(transaction, job)? {
        return Err(UseError::Purged { job });
    }
    let target = match payload {
        Payload::Correction(correction) => Some(correction.target),
        Payload::Undo(undo) => Some(undo.target),
        Payload::PhotoMarked(marked) => Some(marked.photo),
        _ => None,
    };
    if let Some(target) = target
        && rows::find(transaction, target)?.is_none_or(|entry| entry.job != job)
    {
        return Err(UseError::NoTarget { job, target });
    }
    let body = payload.to_value().map_err(UseError::Body)?.to_string();
    bounded(&body)?;

    let (last_counter, last_hlc): (i64, Option<i64>) = transaction
        .prepare_cached("SELECT last_counter, last_hlc FROM log")?
        .query_row([], |row| Ok((row.get(0)?, row.get(1)?)))?;
    let counter = last_counter + 1;
    let hlc = next_hlc(last_hlc, stamp.wall_ms);
    transaction
        .prepare_cached("UPDATE log SET last_counter = ?1, last_hlc = ?2")?
        .execute(params![counter, hlc])?;
    let entry = Entry {
        key: EntryKey {
            device,
            counter: counter.unsigned_abs(),
        },
        job,
        hlc,
        at_ms: stamp.wall_ms,
        offset_min: stamp.offset_min,
        kind: payload.kind().to_owned(),
        v: payload.version(),
        body,
    };
    rows::insert(transaction, &entry)?;
    Ok(entry)
}

/// The clock of the next entry: more than any seen, at least the wall clock, which is believed up to a day past
/// the last entry. A wall clock set to another century moves the log's clock on by a day at most.
fn next_hlc(last: Option<i64>, wall_ms: i64) -> i64 {
    let Some(last) = last else {
        return wall_ms.clamp(0, MOST_HLC);
    };
    wall_ms
        .min(last.saturating_add(DAY_MS))
        .max(last.saturating_add(1))
}

pub(super) fn merge_in(connection: &Connection, entries: &[Entry]) -> Result<Merged, UseError> {
    let mut merged = Merged::default();
    for entry in entries {
        let in_bounds = (0..=MOST_HLC).contains(&entry.hlc)
            && entry.key.counter >= 1
            && i64::try_from(entry.key.counter).is_ok()
            && entry.body.len() <= MOST_BODY_BYTES;
        if !in_bounds {
            merged.refused.push(entry.key);
        } else if rows::is_purged(connection, entry.job)? {
            merged.purged.insert(entry.job);
        } else {
            match rows::find(connection, entry.key)? {
                Some(here) if here == *entry => merged.known += 1,
                Some(_) => merged.clashing.push(entry.key),
                None => {
                    rows::insert(connection, entry)?;
                    see_clock(connection, entry)?;
                    merged.added += 1;
                    merged.jobs.insert(entry.job);
                }
            }
        }
    }
    Ok(merged)
}

/// Notes the greatest clock seen, and the greatest counter under the log's own device.
fn see_clock(connection: &Connection, entry: &Entry) -> Result<(), rusqlite::Error> {
    connection
        .prepare_cached(
            "UPDATE log SET last_hlc = max(coalesce(last_hlc, ?1), ?1),
                last_counter = CASE WHEN device = ?2 THEN max(last_counter, ?3) ELSE last_counter END",
        )?
        .execute(params![
            entry.hlc,
            entry.key.device.0,
            rows::stored_counter(entry.key)?
        ])?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn clock_never_stands_still_or_goes_back() {
        assert_eq!(next_hlc(None, 1_000), 1_000);
        assert_eq!(next_hlc(Some(1_000), 1_000), 1_001);
        assert_eq!(next_hlc(Some(1_000), 5), 1_001);
        assert_eq!(next_hlc(Some(1_000), 2_000), 2_000);
    }

    #[test]
    fn a_wall_clock_in_the_far_future_moves_the_log_by_a_day_only() {
        assert_eq!(next_hlc(Some(1_000), i64::MAX), 1_000 + DAY_MS);
        assert_eq!(next_hlc(None, i64::MAX), MOST_HLC);
        assert_eq!(next_hlc(None, -5), 0);
    }
}
