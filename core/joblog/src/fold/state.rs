//! The state of a job.

use std::collections::BTreeMap;

use super::Standing;
use crate::entry::{Entry, EntryKey, JobId};
use crate::kind;
use crate::payload::{
    Acknowledged, Approval, CircuitStated, Closed, Complaint, Content, Costs, Engine, Instruments,
    Interrupted, Limit, MarkRecord, Note, Opened, Payload, Photo, PhotoMarked, Place, Profile, Reading,
    Repair, ReportMade, ReportPart, SecondPerson, Skipped, Tools, TraceChunk, Vehicle, Workshop,
};

/// A payload with its entry and time.
#[derive(Debug, Clone, PartialEq)]
pub struct Dated<T> {
    /// The entry that first said it: corrections and undos name this one.
    pub key: EntryKey,
    /// When that entry was written, ms since 1970-01-01T00:00Z.
    pub at_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub offset_min: i32,
    /// It was corrected since; `value` is what holds now.
    pub corrected: bool,
    /// What holds.
    pub value: T,
}

/// A test done, or one that can't be, in the order of the log.
#[derive(Debug, Clone, PartialEq)]
pub enum TestEvent {
    /// It was read.
    Read(Reading),
    /// It can't be done.
    Skipped(Skipped),
}

/// A photo with its latest caption and marks.
#[derive(Debug, Clone, PartialEq)]
pub struct PhotoState {
    /// The photo.
    pub photo: Photo,
    /// Its caption now.
    pub caption: String,
    /// Its marks now.
    pub marks: Vec<MarkRecord>,
}

/// A line of the record: the entry as written, what it says, what became of it.
#[derive(Debug, Clone, PartialEq)]
pub struct RecordLine {
    /// The entry, verbatim.
    pub entry: Entry,
    /// What it says.
    pub content: Content,
    /// What became of it.
    pub standing: Standing,
}

/// What a job's entries come to. Later entries win over earlier ones, field by field where a payload says so.
#[derive(Debug, Clone, PartialEq)]
pub struct JobState {
    /// Which job.
    pub job: JobId,
    /// How it was begun; none if that entry has not come (a bundle in parts).
    pub opened: Option<Dated<Opened>>,
    /// The name of the vehicle kind, where this is not a job but what is known of one.
    pub kind: Option<String>,
    /// The vehicle.
    pub vehicle: Vehicle,
    /// The complaint.
    pub complaint: Complaint,
    /// The circuit.
    pub circuit: Option<CircuitStated>,
    /// Where the work is done.
    pub place: Option<Place>,
    /// The instruments.
    pub instruments: Option<Instruments>,
    /// The tools at hand.
    pub tools: Option<Tools>,
    /// Whether the engine can run, with the time it was said.
    pub engine: Option<Dated<Engine>>,
    /// Whether a second person is there.
    pub second_person: Option<SecondPerson>,
    /// Who is at work.
    pub profile: Option<Profile>,
    /// What may be lost, and how sure a finding has to be.
    pub limit: Limit,
    /// Cautions ticked.
    pub acknowledged: Vec<Dated<Acknowledged>>,
    /// Tests done and tests that can't be, in order.
    pub tests: Vec<Dated<TestEvent>>,
    /// Holds that were broken off.
    pub interrupted: Vec<Dated<Interrupted>>,
    /// Gauge traces by hold, each in order of time.
    pub traces: BTreeMap<String, Vec<TraceChunk>>,
    /// Photos.
    pub photos: Vec<Dated<PhotoState>>,
    /// Notes.
    pub notes: Vec<Dated<Note>>,
    /// Repairs.
    pub repairs: Vec<Dated<Repair>>,
    /// What the work costs.
    pub costs: Option<Dated<Costs>>,
    /// Who does the work.
    pub workshop: Option<Workshop>,
    /// The language of the reports, by its tag, where it is not that of the screens.
    pub report_language: Option<String>,
    /// What the reports leave out.
    pub report_left_out: Vec<ReportPart>,
    /// What the customer said to work, in order.
    pub approvals: Vec<Dated<Approval>>,
    /// The finding the job was closed with, if it is closed.
    pub closed: Option<Dated<Closed>>,
    /// Reports made.
    pub reports: Vec<Dated<ReportMade>>,
    /// The entry that put the job in the bin, if it is there.
    pub binned: Option<EntryKey>,
    /// Every entry in order, with what became of it.
    pub record: Vec<RecordLine>,
    marked: Vec<PhotoMarked>,
}

impl JobState {
    pub(super) fn empty(job: JobId) -> Self {
        Self {
            job,
            opened: None,
            kind: None,
            vehicle: Vehicle::default(),
            complaint: Complaint::default(),
            circuit: None,
            place: None,
            instruments: None,
            tools: None,
            engine: None,
            second_person: None,
            profile: None,
            limit: Limit::default(),
            acknowledged: Vec::new(),
            tests: Vec::new(),
            interrupted: Vec::new(),
            traces: BTreeMap::new(),
            photos: Vec::new(),
            notes: Vec::new(),
            repairs: Vec::new(),
            costs: None,
            workshop: None,
            report_language: None,
            report_left_out: Vec::new(),
            approvals: Vec::new(),
            closed: None,
            reports: Vec::new(),
            binned: None,
            record: Vec::new(),
            marked: Vec::new(),
        }
    }

    pub(super) fn take(&mut self, entry: &Entry, payload: &Payload, corrected: bool) {
        fn dated<T: Clone>(entry: &Entry, corrected: bool, value: &T) -> Dated<T> {
            let Entry {
                key,
                at_ms,
                offset_min,
                ..
            } = *entry;
            Dated {
                key,
                at_ms,
                offset_min,
                corrected,
                value: value.clone(),
            }
        }
        match payload {
            Payload::Opened(it) => {
                self.opened.get_or_insert_with(|| dated(entry, corrected, it));
            }
            // Only under the id that its name gives: in a job's own entries it says nothing.
            Payload::VehicleKind(it) => {
                let stream = kind::stream(&it.label) == Some(self.job);
                self.kind = self.kind.take().or(stream.then(|| it.label.clone()));
            }
            Payload::Vehicle(it) => self.vehicle.take(it),
            Payload::Complaint(it) => self.complaint = it.clone(),
            Payload::Circuit(it) => self.circuit = Some(it.clone()),
            Payload::Place(it) => self.place = Some(it.clone()),
            Payload::Instruments(it) => self.instruments = Some(it.clone()),
            Payload::Tools(it) => self.tools = Some(it.clone()),
            Payload::Engine(it) => self.engine = Some(dated(entry, corrected, it)),
            Payload::SecondPerson(it) => self.second_person = Some(it.clone()),
            Payload::Profile(it) => self.profile = Some(it.clone()),
            Payload::Limit(it) => self.limit.take(it),
            Payload::Acknowledged(it) => self.acknowledged.push(dated(entry, corrected, it)),
            Payload::Reading(it) => {
                self.tests
                    .push(dated(entry, corrected, &TestEvent::Read(it.clone())));
            }
            Payload::Skipped(it) => {
                self.tests
                    .push(dated(entry, corrected, &TestEvent::Skipped(it.clone())));
            }
            Payload::TraceChunk(it) => self.take_chunk(it),
            Payload::Interrupted(it) => self.interrupted.push(dated(entry, corrected, it)),
            Payload::Photo(it) => {
                let shown = PhotoState {
                    photo: it.clone(),
                    caption: it.caption.clone(),
                    marks: it.marks.clone(),
                };
                self.photos.push(dated(entry, corrected, &shown));
            }
            Payload::PhotoMarked(it) => self.marked.push(it.clone()),
            Payload::Note(it) => self.notes.push(dated(entry, corrected, it)),
            Payload::Repair(it) => self.repairs.push(dated(entry, corrected, it)),
            Payload::Costs(it) => self.costs = Some(dated(entry, corrected, it)),
            Payload::Workshop(it) => self.workshop = Some(it.clone()),
            Payload::ReportLanguage(it) => {
                self.report_language = Some(it.tag.clone()).filter(|tag| !tag.is_empty());
            }
            Payload::ReportParts(it) => self.report_left_out.clone_from(&it.left_out),
            Payload::Approval(it) => self.approvals.push(dated(entry, corrected, it)),
            Payload::Closed(it) => self.closed = Some(dated(entry, corrected, it)),
            Payload::ReportMade(it) => self.reports.push(dated(entry, corrected, it)),
            Payload::Binned(_) => self.binned = Some(entry.key),
            // What these do to their targets is in the targets' standing.
            Payload::Correction(_) | Payload::Undo(_) => {}
        }
    }

    fn take_chunk(&mut self, chunk: &TraceChunk) {
        let chunks = self.traces.entry(chunk.hold.clone()).or_default();
        let at = chunks.partition_point(|before| before.from_s.total_cmp(&chunk.from_s).is_le());
        chunks.insert(at, chunk.clone());
    }

    pub(super) fn push_line(&mut self, entry: &Entry, content: Content, standing: Standing) {
        self.record.push(RecordLine {
            entry: entry.clone(),
            content,
            standing,
        });
    }

    /// Gives each photo its last caption and marks.
    pub(super) fn settle_photos(&mut self) {
        for marked in std::mem::take(&mut self.marked) {
            for photo in self.photos.iter_mut().filter(|photo| photo.key == marked.photo) {
                photo.value.caption.clone_from(&marked.caption);
                photo.value.marks.clone_from(&marked.marks);
            }
        }
    }

    /// The entry that gave a photo the caption and marks it has now; none if it is as it came.
    pub fn last_marking(&self, photo: EntryKey) -> Option<EntryKey> {
        let mine = |line: &&RecordLine| match (&line.content, &line.standing) {
            (Content::Known(Payload::PhotoMarked(marked)), Standing::Stands) => marked.photo == photo,
            _ => false,
        };
        self.record.iter().rev().find(mine).map(|line| line.entry.key)
    }

    /// The readings that hold, in order.
    pub fn readings(&self) -> impl Iterator<Item = (&Dated<TestEvent>, &Reading)> {
        self.tests.iter().filter_map(|dated| match &dated.value {
            TestEvent::Read(reading) => Some((dated, reading)),
            TestEvent::Skipped(_) => None,
        })
    }

    /// Entries that this software can't read because a newer version wrote them.
    pub fn newer(&self) -> usize {
        self.record
            .iter()
            .filter(|line| line.content == Content::Newer)
            .count()
    }

    /// The time of the last entry, ms since 1970-01-01T00:00Z; none without entries.
    pub fn last_at_ms(&self) -> Option<i64> {
        self.record.last().map(|line| line.entry.at_ms)
    }
}
