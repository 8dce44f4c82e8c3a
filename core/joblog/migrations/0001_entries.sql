-- The log itself. What can be rebuilt from it (list, search) is not made here but by the derived tables.

CREATE TABLE entries (
    device     BLOB    NOT NULL CHECK (length(device) = 16),  -- who wrote it: random 128 bits of a phone's log
    counter    INTEGER NOT NULL CHECK (counter >= 1),         -- that device's running number
    job        BLOB    NOT NULL CHECK (length(job) = 16),     -- the job's random 128 bits
    hlc        INTEGER NOT NULL,  -- hybrid logical clock, ms: at least the (bounded) wall clock, more than any seen
    at_ms      INTEGER NOT NULL,  -- wall clock when written, ms since 1970-01-01T00:00Z
    offset_min INTEGER NOT NULL,  -- local time's offset from UTC then, minutes
    kind       TEXT    NOT NULL,  -- what kind of thing, such as 'reading'
    v          INTEGER NOT NULL,  -- version of the body's form
    body       TEXT    NOT NULL,  -- JSON, verbatim
    PRIMARY KEY (device, counter)
) STRICT, WITHOUT ROWID;

CREATE INDEX entries_of_job ON entries (job, hlc, device, counter);

CREATE TABLE log (
    one          INTEGER PRIMARY KEY CHECK (one = 1),  -- there is one row
    device       BLOB    NOT NULL CHECK (length(device) = 16),  -- this phone's log
    last_counter INTEGER NOT NULL,  -- the last counter given to an entry of this log; never given again
    last_hlc     INTEGER            -- the greatest clock seen in any entry, ms; null before the first
) STRICT;

CREATE TABLE session (
    one  INTEGER PRIMARY KEY CHECK (one = 1),  -- there is one row
    body TEXT    NOT NULL                      -- JSON: screens, drafts, the running hold
) STRICT;

CREATE TABLE purged (
    job BLOB PRIMARY KEY NOT NULL CHECK (length(job) = 16)  -- all that is left of a job that was emptied from the bin
) STRICT, WITHOUT ROWID;
