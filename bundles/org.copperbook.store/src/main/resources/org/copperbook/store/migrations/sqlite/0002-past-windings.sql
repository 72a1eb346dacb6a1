-- Cards taken in from old records hang on this key as the shop's own parts hang on theirs.
INSERT INTO job (id, number, created_at) VALUES ('cards', NULL, '');

-- Derived from the revisions; may be emptied and made anew at any time. Figures in SI, NULL where unknown.
CREATE TABLE past_winding (
    id             INTEGER PRIMARY KEY,
    job_id         TEXT NOT NULL REFERENCES job (id),
    part           TEXT NOT NULL,
    revision       INTEGER NOT NULL,
    number         TEXT NOT NULL,
    role           TEXT NOT NULL,
    as_wound       INTEGER NOT NULL,
    proposed       INTEGER NOT NULL,
    maker          TEXT NOT NULL,
    type           TEXT NOT NULL,
    serial         TEXT NOT NULL,
    serial_key     TEXT NOT NULL,
    search         TEXT NOT NULL,
    rating         REAL,
    poles          REAL,
    slots          REAL,
    bore           REAL,
    length         REAL,
    volts          REAL,
    span           TEXT NOT NULL,
    turns          INTEGER,
    wire           TEXT NOT NULL,
    circuits       INTEGER,
    connection     TEXT NOT NULL,
    recorded_at    TEXT NOT NULL,
    fingerprint    TEXT NOT NULL,
    UNIQUE (job_id, part)
) STRICT;

CREATE INDEX past_winding_by_serial ON past_winding (serial_key);

CREATE INDEX past_winding_by_time ON past_winding (recorded_at);
