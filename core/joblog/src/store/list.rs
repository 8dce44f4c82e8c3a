//! The list of jobs and its search.

use rusqlite::{Row, ToSql};

use super::Store;
use crate::entry::JobId;
use crate::error::UseError;
use crate::plate;

/// Which jobs to list.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash)]
pub enum Shelf {
    /// All that are not in the bin.
    #[default]
    All,
    /// Neither closed nor in the bin.
    Open,
    /// Closed, and not in the bin.
    Closed,
    /// In the bin.
    Bin,
}

/// What to look for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Query {
    /// Words as typed: each has to begin a word of the job (plate, VIN, name, model, complaint, part, finding,
    /// note); or all together are a piece of the plate.
    pub text: String,
    /// Which jobs.
    pub shelf: Shelf,
    /// Only with a last entry at or after this, ms since 1970-01-01T00:00Z.
    pub from_ms: Option<i64>,
    /// Only with a last entry before this, ms since 1970-01-01T00:00Z.
    pub before_ms: Option<i64>,
    /// How many to skip.
    pub skip: u32,
    /// How many to give at most.
    pub most: u32,
}

impl Default for Query {
    /// All jobs out of the bin, the first 200.
    fn default() -> Self {
        Self {
            text: String::new(),
            shelf: Shelf::All,
            from_ms: None,
            before_ms: None,
            skip: 0,
            most: 200,
        }
    }
}

impl Query {
    /// A search in all jobs out of the bin.
    pub fn search(text: &str) -> Self {
        Self {
            text: text.to_owned(),
            ..Self::default()
        }
    }
}

/// A job as the list shows it.
#[derive(Debug, Clone, PartialEq)]
pub struct JobRow {
    /// Which.
    pub job: JobId,
    /// When it was begun, ms since 1970-01-01T00:00Z.
    pub opened_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub opened_offset_min: i32,
    /// When its last entry was written, ms since 1970-01-01T00:00Z.
    pub last_ms: i64,
    /// Number plate as typed.
    pub plate: Option<String>,
    /// VIN as typed.
    pub vin: Option<String>,
    /// What the vehicle is called.
    pub label: Option<String>,
    /// The customer's name.
    pub customer: Option<String>,
    /// Complaint phrases, by id.
    pub complaint: Vec<String>,
    /// The finding it was closed with; none if it is open.
    pub closed: Option<ClosedRow>,
    /// It is in the bin.
    pub binned: bool,
    /// How many entries it has.
    pub entries: u32,
    /// How many readings, those corrected and undone too.
    pub readings: u32,
    /// How many photos.
    pub photos: u32,
    /// How many entries a newer version wrote.
    pub newer: u32,
}

/// A closed job's finding in the list.
#[derive(Debug, Clone, PartialEq)]
pub struct ClosedRow {
    /// The parts named, by component id.
    pub parts: Vec<String>,
    /// Its probability.
    pub p: f64,
    /// Its sentence.
    pub headline: String,
    /// A repair was tested and found good.
    pub repaired: bool,
}

impl Store {
    /// The jobs that answer to `query`, the one last worked on first.
    ///
    /// # Errors
    /// [`UseError::Damaged`] if the file can't be read.
    pub fn list(&self, query: &Query) -> Result<Vec<JobRow>, UseError> {
        let mut wheres = vec![match query.shelf {
            Shelf::All => "binned = 0",
            Shelf::Open => "binned = 0 AND closed_parts IS NULL",
            Shelf::Closed => "binned = 0 AND closed_parts IS NOT NULL",
            Shelf::Bin => "binned = 1",
        }];
        let words = match_words(&query.text);
        let piece = like_piece(&query.text);
        let mut values: Vec<(&str, &dyn ToSql)> = vec![(":most", &query.most), (":skip", &query.skip)];
        match (&words, &piece) {
            (Some(words), Some(piece)) => {
                wheres.push(
                    "(row IN (SELECT rowid FROM job_text WHERE job_text MATCH :words)
                      OR row IN (SELECT row FROM job_list WHERE plate_search LIKE :piece))",
                );
                values.push((":words", words));
                values.push((":piece", piece));
            }
            (Some(words), None) => {
                wheres.push("row IN (SELECT rowid FROM job_text WHERE job_text MATCH :words)");
                values.push((":words", words));
            }
            // Signs only, such as "?": nothing answers to that, but blanks ask for nothing.
            (None, _) if query.text.trim().is_empty() => {}
            (None, _) => wheres.push("0"),
        }
        if let Some(from) = &query.from_ms {
            wheres.push("last_ms >= :from");
            values.push((":from", from));
        }
        if let Some(before) = &query.before_ms {
            wheres.push("last_ms < :before");
            values.push((":before", before));
        }
        let sql = format!(
            "SELECT job, opened_ms, opened_offset_min, last_ms, plate, vin, label, customer, complaint, closed_parts,
                closed_p, closed_headline, repaired, binned, entries, readings, photos, newer
             FROM job_list WHERE {} ORDER BY last_hlc DESC, job LIMIT :most OFFSET :skip",
            wheres.join(" AND ")
        );
        let mut statement = self.connection.prepare_cached(&sql)?;
        let found = statement
            .query_map(values.as_slice(), job_row)?
            .collect::<Result<_, _>>()?;
        Ok(found)
    }
}

fn job_row(row: &Row<'_>) -> Result<JobRow, rusqlite::Error> {
    let ids = |text: String| serde_json::from_str::<Vec<String>>(&text).unwrap_or_default();
    let parts: Option<String> = row.get(9)?;
    let closed = match parts {
        None => None,
        Some(parts) => Some(ClosedRow {
            parts: ids(parts),
            p: row.get::<_, Option<f64>>(10)?.unwrap_or_default(),
            headline: row.get::<_, Option<String>>(11)?.unwrap_or_default(),
            repaired: row.get(12)?,
        }),
    };
    Ok(JobRow {
        job: JobId(row.get(0)?),
        opened_ms: row.get(1)?,
        opened_offset_min: row.get(2)?,
        last_ms: row.get(3)?,
        plate: row.get(4)?,
        vin: row.get(5)?,
        label: row.get(6)?,
        customer: row.get(7)?,
        complaint: ids(row.get(8)?),
        closed,
        binned: row.get(13)?,
        entries: row.get(14)?,
        readings: row.get(15)?,
        photos: row.get(16)?,
        newer: row.get(17)?,
    })
}

/// The typed words as a full-text query: every word is a beginning; none without a letter or digit.
///
/// Each word is cut as the tokenizer cuts it, so nothing typed is read as an operator.
fn match_words(text: &str) -> Option<String> {
    let words: Vec<String> = text
        .split(|c: char| !c.is_alphanumeric() && !is_combining(c))
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .take(12)
        .map(|word| format!("\"{word}\"*"))
        .collect();
    if words.is_empty() {
        None
    } else {
        Some(words.join(" "))
    }
}

/// Signs that join a letter before them: not a gap between words.
fn is_combining(c: char) -> bool {
    ('\u{300}'..='\u{36f}').contains(&c) || ('\u{900}'..='\u{97f}').contains(&c)
}

/// The typed text as a piece of a plate: at least two signs, else every plate answers.
fn like_piece(text: &str) -> Option<String> {
    let piece = plate::normal(text);
    (2..=20)
        .contains(&piece.chars().count())
        .then(|| format!("%{piece}%"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn operators_and_quotes_typed_are_words_or_nothing() {
        assert_eq!(
            match_words("front OR \"hose\""),
            Some("\"front\"* \"OR\"* \"hose\"*".into())
        );
        assert_eq!(
            match_words("a-b* ^c:d"),
            Some("\"a\"* \"b\"* \"c\"* \"d\"*".into())
        );
        assert_eq!(match_words(" \"'(*) "), None);
    }

    #[test]
    fn piece_of_a_plate_needs_two_signs() {
        assert_eq!(like_piece("-4 "), None);
        assert_eq!(like_piece("f-2"), Some("%F2%".into()));
    }
}
