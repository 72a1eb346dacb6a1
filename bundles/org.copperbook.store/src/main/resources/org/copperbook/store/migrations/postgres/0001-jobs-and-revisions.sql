-- Text is compared byte by byte, so that both engines sort alike whatever the language of the server.
CREATE TABLE job (
    id         TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    number     TEXT COLLATE "C" UNIQUE,
    created_at TEXT COLLATE "C" NOT NULL
);

-- One chain for the whole store: sequence is its order, previous_hash its links.
CREATE TABLE revision (
    sequence      BIGINT PRIMARY KEY,
    job_id        TEXT COLLATE "C" NOT NULL REFERENCES job (id),
    part          TEXT COLLATE "C" NOT NULL,
    revision      INTEGER NOT NULL CHECK (revision > 0),
    saved_at      TEXT COLLATE "C" NOT NULL,
    who           TEXT COLLATE "C" NOT NULL,
    why           TEXT COLLATE "C" NOT NULL,
    json          TEXT COLLATE "C" NOT NULL,
    previous_hash TEXT COLLATE "C" NOT NULL,
    hash          TEXT COLLATE "C" NOT NULL UNIQUE,
    UNIQUE (job_id, part, revision)
);

-- The end of the chain. Taking the next sequence from here in the saving transaction keeps it free of gaps, and a
-- chain cut short at its end no longer agrees with it.
CREATE TABLE chain_head (
    id       INTEGER PRIMARY KEY CHECK (id = 1),
    sequence BIGINT NOT NULL,
    hash     TEXT COLLATE "C" NOT NULL
);

CREATE TABLE number_series (
    pattern TEXT COLLATE "C" NOT NULL,
    year    INTEGER NOT NULL,
    last    BIGINT NOT NULL,
    PRIMARY KEY (pattern, year)
);

-- Personal data stands outside the chain, which only names its keys.
CREATE TABLE person (
    key  TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    json TEXT COLLATE "C" NOT NULL
);

CREATE TABLE photo (
    hash    TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    kept_at TEXT COLLATE "C" NOT NULL,
    bytes   BYTEA NOT NULL
);

-- Derived from the revisions; may be emptied and made anew at any time.
CREATE TABLE register (
    job_id       TEXT COLLATE "C" PRIMARY KEY NOT NULL REFERENCES job (id),
    number       TEXT COLLATE "C" NOT NULL,
    customer     TEXT COLLATE "C" NOT NULL,
    machine      TEXT COLLATE "C" NOT NULL,
    serial       TEXT COLLATE "C" NOT NULL,
    stage        TEXT COLLATE "C" NOT NULL,
    promised     TEXT COLLATE "C",
    changed_at   TEXT COLLATE "C" NOT NULL,
    voided       INTEGER NOT NULL,
    number_key   TEXT COLLATE "C" NOT NULL,
    customer_key TEXT COLLATE "C" NOT NULL,
    machine_key  TEXT COLLATE "C" NOT NULL,
    serial_key   TEXT COLLATE "C" NOT NULL,
    stage_key    TEXT COLLATE "C" NOT NULL,
    search       TEXT COLLATE "C" NOT NULL
);

CREATE INDEX register_by_number ON register (number_key);

CREATE INDEX register_by_change ON register (changed_at, number_key);

CREATE TABLE setting (
    name  TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    value TEXT COLLATE "C" NOT NULL
);

INSERT INTO job (id, number, created_at) VALUES ('shop', NULL, '');

INSERT INTO chain_head (id, sequence, hash)
VALUES (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

INSERT INTO setting (name, value) VALUES ('people-changes', '0');

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0];
END $$;

CREATE TRIGGER revision_keeps_its_text BEFORE UPDATE ON revision
FOR EACH ROW EXECUTE FUNCTION refuse_change('a revision is never changed');

CREATE TRIGGER revision_stays BEFORE DELETE ON revision
FOR EACH ROW EXECUTE FUNCTION refuse_change('a revision is never removed');

-- TRUNCATE asks no trigger of a row.
CREATE TRIGGER revision_is_not_emptied BEFORE TRUNCATE ON revision
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change('a revision is never removed');

CREATE TRIGGER job_keeps_its_number BEFORE UPDATE ON job
FOR EACH ROW EXECUTE FUNCTION refuse_change('a job keeps its number');

CREATE TRIGGER job_stays BEFORE DELETE ON job
FOR EACH ROW EXECUTE FUNCTION refuse_change('a job is never removed');

CREATE TRIGGER job_is_not_emptied BEFORE TRUNCATE ON job
FOR EACH STATEMENT EXECUTE FUNCTION refuse_change('a job is never removed');

CREATE TRIGGER photo_keeps_its_bytes BEFORE UPDATE ON photo
FOR EACH ROW EXECUTE FUNCTION refuse_change('a photo is never changed');
