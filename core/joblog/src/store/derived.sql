-- Derived from the entries by the fold; dropped and made anew when its rules change. No migration touches these.

DROP TABLE IF EXISTS derived;
DROP TABLE IF EXISTS job_list;
DROP TABLE IF EXISTS job_text;
DROP TABLE IF EXISTS job_photo;

CREATE TABLE derived (
    one          INTEGER PRIMARY KEY CHECK (one = 1),  -- there is one row
    fold_version INTEGER NOT NULL                      -- the rules these tables were made by
) STRICT;

CREATE TABLE job_list (
    row               INTEGER PRIMARY KEY,
    job               BLOB    NOT NULL UNIQUE,
    opened_ms         INTEGER NOT NULL,  -- wall clock of the first entry, ms since 1970-01-01T00:00Z
    opened_offset_min INTEGER NOT NULL,  -- local time's offset from UTC then, minutes
    last_ms           INTEGER NOT NULL,  -- wall clock of the last entry, ms
    last_hlc          INTEGER NOT NULL,  -- hybrid logical clock of the last entry, ms: the list's order
    plate             TEXT,              -- as typed
    plate_search      TEXT,              -- letters and digits only, upper case
    vin               TEXT,
    label             TEXT,
    customer          TEXT,
    complaint         TEXT    NOT NULL,  -- JSON list of phrase ids
    closed_parts      TEXT,              -- JSON list of component ids; null: not closed
    closed_p          REAL,              -- probability of the finding, 0 to 1
    closed_headline   TEXT,
    repaired          INTEGER NOT NULL,  -- 0 or 1
    binned            INTEGER NOT NULL,  -- 0 or 1
    entries           INTEGER NOT NULL,  -- how many
    readings          INTEGER NOT NULL,  -- how many
    photos            INTEGER NOT NULL,  -- how many
    newer             INTEGER NOT NULL   -- entries from a newer version, how many
) STRICT;

CREATE INDEX job_list_by_time ON job_list (binned, last_hlc);
CREATE INDEX job_list_by_plate ON job_list (plate_search);

CREATE VIRTUAL TABLE job_text USING fts5 (
    plate, vin, label, customer, complaint, finding, notes,
    tokenize = "unicode61 remove_diacritics 2",
    prefix = '1 2 3'
);
INSERT INTO job_text (job_text, rank) VALUES ('secure-delete', 1);

CREATE TABLE job_photo (
    sha256 TEXT NOT NULL,  -- a digest named in any entry of the job, of any version
    job    BLOB NOT NULL,
    PRIMARY KEY (sha256, job)
) STRICT, WITHOUT ROWID;

CREATE INDEX job_photo_of_job ON job_photo (job);
