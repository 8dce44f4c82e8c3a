-- A log of file format 1. Invented. It never changes.
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

INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 1, x'11111111111111111111111111111111', 1764061200000, 1764061200000, 60, 'opened', 1, '{"software":"0.1.0"}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 2, x'11111111111111111111111111111111', 1764061200001, 1764061200000, 60, 'vehicle', 1, '{"plate":"HF-204","label":"Grey estate","customer":"Ms Ögmundsdóttir"}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 3, x'11111111111111111111111111111111', 1764061205000, 1764061205000, 60, 'reading', 1, '{"test":"hold:branch","answer":{"start":20.0,"readings":[[20.0,31.5]],"unit":"inHg"},"typed":[{"key":"gauge","text":"31,5","unit":"inHg"}],"state":{},"confirmed":false,"after_repair":false}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 4, x'11111111111111111111111111111111', 1764061206000, 1764061206000, 60, 'correction', 1, '{"target":"0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a-3","kind":"reading","v":1,"body":{"test":"hold:branch","answer":{"start":20.0,"readings":[[20.0,13.5]],"unit":"inHg"},"typed":[{"key":"gauge","text":"13,5","unit":"inHg"}],"state":{},"confirmed":false,"after_repair":false},"why":""}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 5, x'11111111111111111111111111111111', 1764061207000, 1764061207000, 60, 'note', 1, '{"text":"wrong car","about":"job"}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 6, x'11111111111111111111111111111111', 1764061208000, 1764061208000, 60, 'undo', 1, '{"target":"0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a-5"}');
INSERT INTO entries VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 40, x'11111111111111111111111111111111', 1764061209000, 1764061209000, 60, 'closed', 1, '{"parts":["front_hose"],"p":0.97,"causes":[],"repaired":false,"headline":"The front hose leaks.","software":"0.1.0"}');
INSERT INTO entries VALUES (x'0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b', 7, x'11111111111111111111111111111111', 1764061299999, 1764061299000, 60, 'hologram', 1, '{ "b":1,  "a":[1.10] }');
INSERT INTO entries VALUES (x'0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b', 8, x'11111111111111111111111111111111', 1764061300000, 1764061299000, 60, 'note', 2, '{"words":"from a later version"}');
INSERT INTO log VALUES (1, x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 40, 1764061300000);
INSERT INTO session VALUES (1, '{"screen":"hold","draft":"13,5"}');
INSERT INTO purged VALUES (x'33333333333333333333333333333333');
PRAGMA user_version = 1;
PRAGMA application_id = 1212574316;
