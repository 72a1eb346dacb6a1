CREATE TABLE job (
    id         TEXT PRIMARY KEY NOT NULL,
    number     TEXT UNIQUE,
    created_at TEXT NOT NULL
) STRICT;

-- One chain for the whole store: sequence is its order, previous_hash its links.
CREATE TABLE revision (
    sequence      INTEGER PRIMARY KEY,
    job_id        TEXT NOT NULL REFERENCES job (id),
    part          TEXT NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision > 0),
    saved_at      TEXT NOT NULL,
    who           TEXT NOT NULL,
    why           TEXT NOT NULL,
    json          TEXT NOT NULL,
    previous_hash TEXT NOT NULL,
    hash          TEXT NOT NULL UNIQUE,
    UNIQUE (job_id, part, revision)
) STRICT;

-- The end of the chain. Taking the next sequence from here in the saving transaction keeps it free of gaps, and a
-- chain cut short at its end no longer agrees with it.
CREATE TABLE chain_head (
    id       INTEGER PRIMARY KEY CHECK (id = 1),
    sequence INTEGER NOT NULL,
    hash     TEXT NOT NULL
) STRICT;

CREATE TABLE number_series (
    pattern TEXT NOT NULL,
    year    INTEGER NOT NULL,
    last    INTEGER NOT NULL,
    PRIMARY KEY (pattern, year)
) STRICT;

-- Personal data stands outside the chain, which only names its keys.
CREATE TABLE person (
    key  TEXT PRIMARY KEY NOT NULL,
    json TEXT NOT NULL
) STRICT;

CREATE TABLE photo (
    hash    TEXT PRIMARY KEY NOT NULL,
    kept_at TEXT NOT NULL,
    bytes   BLOB NOT NULL
) STRICT;

-- Derived from the revisions; may be emptied and made anew at any time.
CREATE TABLE register (
    job_id       TEXT PRIMARY KEY NOT NULL REFERENCES job (id),
    number       TEXT NOT NULL,
    customer     TEXT NOT NULL,
    machine      TEXT NOT NULL,
    serial       TEXT NOT NULL,
    stage        TEXT NOT NULL,
    promised     TEXT,
    changed_at   TEXT NOT NULL,
    voided       INTEGER NOT NULL,
    number_key   TEXT NOT NULL,
    customer_key TEXT NOT NULL,
    machine_key  TEXT NOT NULL,
    serial_key   TEXT NOT NULL,
    stage_key    TEXT NOT NULL,
    search       TEXT NOT NULL
) STRICT;

CREATE INDEX register_by_number ON register (number_key);

CREATE INDEX register_by_change ON register (changed_at, number_key);

CREATE TABLE setting (
    name  TEXT PRIMARY KEY NOT NULL,
    value TEXT NOT NULL
) STRICT;

INSERT INTO job (id, number, created_at) VALUES ('shop', NULL, '');

INSERT INTO chain_head (id, sequence, hash)
VALUES (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

INSERT INTO setting (name, value) VALUES ('people-changes', '0');

CREATE TRIGGER revision_keeps_its_text BEFORE UPDATE ON revision
BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;

CREATE TRIGGER revision_stays BEFORE DELETE ON revision
BEGIN SELECT RAISE(ABORT, 'a revision is never removed'); END;

-- INSERT OR REPLACE removes the row in its way without asking the trigger above.
CREATE TRIGGER revision_is_not_replaced BEFORE INSERT ON revision
WHEN EXISTS (SELECT 1 FROM revision WHERE sequence = NEW.sequence OR hash = NEW.hash
             OR (job_id = NEW.job_id AND part = NEW.part AND revision = NEW.revision))
BEGIN SELECT RAISE(ABORT, 'a revision is never replaced'); END;

CREATE TRIGGER job_keeps_its_number BEFORE UPDATE ON job
BEGIN SELECT RAISE(ABORT, 'a job keeps its number'); END;

CREATE TRIGGER job_stays BEFORE DELETE ON job
BEGIN SELECT RAISE(ABORT, 'a job is never removed'); END;

CREATE TRIGGER job_is_not_replaced BEFORE INSERT ON job
WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'a job is never replaced'); END;

CREATE TRIGGER photo_keeps_its_bytes BEFORE UPDATE ON photo
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END;
