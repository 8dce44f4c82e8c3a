//! What is derived from the entries: the list of jobs, its search, which photos are named. It carries the number
//! of the rules it was made by, and is made anew from the entries when they change.

use std::collections::BTreeSet;

use rusqlite::{Connection, OptionalExtension, params};

use super::rows;
use crate::entry::{Entry, JobId};
use crate::fold::{JobState, fold};
use crate::plate;

/// The number of the rules below. To be raised with every change of them or of the fold.
pub(super) const FOLD_VERSION: u32 = 2;

const SCHEMA: &str = include_str!("derived.sql");

/// Makes the derived tables anew if they are missing or of other rules. Returns whether it did.
pub(super) fn ensure(connection: &mut Connection) -> Result<bool, rusqlite::Error> {
    let transaction = connection.transaction()?;
    let made = transaction
        .prepare("SELECT 1 FROM sqlite_schema WHERE name = 'derived'")?
        .exists([])?;
    let by: Option<u32> = if made {
        transaction
            .query_row("SELECT fold_version FROM derived", [], |row| row.get(0))
            .optional()?
    } else {
        None
    };
    if by == Some(FOLD_VERSION) {
        return Ok(false);
    }
    rebuild(&transaction)?;
    transaction.commit()?;
    Ok(true)
}

/// Makes the derived tables anew from the entries.
pub(super) fn rebuild(connection: &Connection) -> Result<(), rusqlite::Error> {
    connection.execute_batch(SCHEMA)?;
    connection.execute(
        "INSERT INTO derived (one, fold_version) VALUES (1, ?1)",
        [FOLD_VERSION],
    )?;
    let jobs: Vec<[u8; 16]> = connection
        .prepare("SELECT DISTINCT job FROM entries ORDER BY job")?
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    for job in jobs {
        rebuild_job(connection, JobId(job))?;
    }
    Ok(())
}

/// Kinds that change nothing in the list but the job's time and counts.
fn is_light(kind: &str) -> bool {
    matches!(
        kind,
        "reading" | "trace" | "acknowledged" | "skipped" | "interrupted"
    )
}

/// Brings the derived rows up to date after these entries were appended.
pub(super) fn refresh(connection: &Connection, written: &[Entry]) -> Result<(), rusqlite::Error> {
    let jobs: BTreeSet<JobId> = written.iter().map(|entry| entry.job).collect();
    for job in jobs {
        let mine = || written.iter().filter(|entry| entry.job == job);
        let mut done = false;
        if let (true, Some(last)) = (mine().all(|entry| is_light(&entry.kind)), mine().next_back()) {
            let readings = mine().filter(|entry| entry.kind == "reading").count();
            let changed = connection
                .prepare_cached(
                    "UPDATE job_list SET last_ms = ?2, last_hlc = ?3, entries = entries + ?4, readings = readings + ?5
                     WHERE job = ?1",
                )?
                .execute(params![job.0, last.at_ms, last.hlc, count(mine().count()), count(readings)])?;
            done = changed == 1;
        }
        if !done {
            rebuild_job(connection, job)?;
        }
    }
    Ok(())
}

fn count(of: usize) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}

/// Makes a job's derived rows anew.
pub(super) fn rebuild_job(connection: &Connection, job: JobId) -> Result<(), rusqlite::Error> {
    let entries = rows::of_job(connection, job)?;
    remove_job(connection, job)?;
    if entries.is_empty() {
        return Ok(());
    }
    let state = fold(job, &entries);
    if state.kind.is_none() {
        let row = insert_row(connection, &state)?;
        insert_text(connection, row, &state)?;
    }
    let photos: BTreeSet<String> = entries.iter().flat_map(|entry| digests_in(&entry.body)).collect();
    for photo in photos {
        connection
            .prepare_cached("INSERT INTO job_photo (sha256, job) VALUES (?1, ?2)")?
            .execute(params![photo, job.0])?;
    }
    Ok(())
}

/// Takes a job's derived rows out.
pub(super) fn remove_job(connection: &Connection, job: JobId) -> Result<(), rusqlite::Error> {
    let row: Option<i64> = connection
        .prepare_cached("DELETE FROM job_list WHERE job = ?1 RETURNING row")?
        .query_row([job.0], |row| row.get(0))
        .optional()?;
    if let Some(row) = row {
        connection
            .prepare_cached("DELETE FROM job_text WHERE rowid = ?1")?
            .execute([row])?;
    }
    connection
        .prepare_cached("DELETE FROM job_photo WHERE job = ?1")?
        .execute([job.0])?;
    Ok(())
}

fn insert_row(connection: &Connection, state: &JobState) -> Result<i64, rusqlite::Error> {
    let first = state.record.first().map(|line| &line.entry);
    let last = state.record.last().map(|line| &line.entry);
    let closed = state.closed.as_ref().map(|dated| &dated.value);
    let list = |words: &[String]| serde_json::Value::from(words.to_vec()).to_string();
    connection
        .prepare_cached(
            "INSERT INTO job_list (job, opened_ms, opened_offset_min, last_ms, last_hlc, plate, plate_search, vin,
                label, customer, complaint, closed_parts, closed_p, closed_headline, repaired, binned, entries,
                readings, photos, newer)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19, ?20)",
        )?
        .execute(params![
            state.job.0,
            first.map(|entry| entry.at_ms),
            first.map(|entry| entry.offset_min),
            last.map(|entry| entry.at_ms),
            last.map(|entry| entry.hlc),
            state.vehicle.plate,
            state.vehicle.plate.as_deref().map(plate::normal),
            state.vehicle.vin,
            state.vehicle.label,
            state.vehicle.customer,
            list(&state.complaint.phrases),
            closed.map(|closed| list(&closed.parts)),
            closed.map(|closed| closed.p),
            closed.map(|closed| closed.headline.clone()),
            closed.is_some_and(|closed| closed.repaired),
            state.binned.is_some(),
            count(state.record.len()),
            count(state.record.iter().filter(|line| line.entry.kind == "reading").count()),
            count(state.photos.len()),
            count(state.newer()),
        ])?;
    Ok(connection.last_insert_rowid())
}

fn insert_text(connection: &Connection, row: i64, state: &JobState) -> Result<(), rusqlite::Error> {
    let spoken = |id: &str| id.replace(['_', '/', ':'], " ");
    let words = |words: &[String]| words.iter().map(|id| spoken(id)).collect::<Vec<_>>().join(" ");
    let mut finding = String::new();
    if let Some(closed) = &state.closed {
        finding = format!("{} {}", words(&closed.value.parts), closed.value.headline);
    }
    for repair in &state.repairs {
        finding = format!(
            "{finding} {} {}",
            spoken(&repair.value.component),
            repair.value.part
        );
    }
    let mut notes: Vec<&str> = state.notes.iter().map(|note| note.value.text.as_str()).collect();
    notes.extend(state.photos.iter().map(|photo| photo.value.caption.as_str()));
    notes.extend(state.repairs.iter().map(|repair| repair.value.note.as_str()));
    let complaint = format!("{} {}", words(&state.complaint.phrases), state.complaint.note);
    connection
        .prepare_cached(
            "INSERT INTO job_text (rowid, plate, vin, label, customer, complaint, finding, notes)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
        )?
        .execute(params![
            row,
            state.vehicle.plate,
            state.vehicle.vin,
            state.vehicle.label,
            state.vehicle.customer,
            complaint,
            finding,
            notes.join("\n"),
        ])?;
    Ok(())
}

/// The runs of exactly 64 hex digits in a body: photos are named so, in entries of any version.
pub(super) fn digests_in(body: &str) -> Vec<String> {
    body.split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| word.len() == 64 && word.bytes().all(|b| b.is_ascii_hexdigit()))
        .map(str::to_ascii_lowercase)
        .collect()
}
