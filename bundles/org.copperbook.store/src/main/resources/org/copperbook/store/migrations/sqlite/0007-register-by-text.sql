-- The same rows with a key of their own, which the list of texts goes by: a row without one may get another when the
-- file is copied.
CREATE TABLE register_made_anew (
    id           INTEGER PRIMARY KEY,
    job_id       TEXT UNIQUE NOT NULL REFERENCES job (id),
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

INSERT INTO register_made_anew (job_id, number, customer, machine, serial, stage, promised, changed_at, voided,
    number_key, customer_key, machine_key, serial_key, stage_key, search)
SELECT job_id, number, customer, machine, serial, stage, promised, changed_at, voided, number_key,
    substr(customer_key, 1, 200), substr(machine_key, 1, 200), substr(serial_key, 1, 200), substr(stage_key, 1, 200),
    search
FROM register;

DROP TABLE register;

ALTER TABLE register_made_anew RENAME TO register;

CREATE INDEX register_by_number ON register (number_key);

CREATE INDEX register_by_change ON register (changed_at, number_key);

CREATE INDEX register_by_customer ON register (customer_key, number_key DESC);

CREATE INDEX register_by_machine ON register (machine_key, number_key DESC);

CREATE INDEX register_by_serial ON register (serial_key, number_key DESC);

CREATE INDEX register_by_stage ON register (stage_key, number_key DESC);

-- So many jobs stand at one stage that the other way round needs its own.
CREATE INDEX register_by_stage_down ON register (stage_key, number_key);

CREATE INDEX register_by_promise ON register (promised, number_key DESC);

-- Every three characters in a row of the folded text; holds places only, the text stays in the register.
CREATE VIRTUAL TABLE register_text USING fts5 (search, content = 'register', content_rowid = 'id',
    tokenize = 'trigram case_sensitive 1');

-- What is taken out is gone at once, so that an erased name cannot be put together again from its threes.
INSERT INTO register_text (register_text, rank) VALUES ('secure-delete', 1);

INSERT INTO register_text (register_text) VALUES ('rebuild');

CREATE TRIGGER register_text_follows_new AFTER INSERT ON register
BEGIN
    INSERT INTO register_text (rowid, search) VALUES (NEW.id, NEW.search);
END;

CREATE TRIGGER register_text_follows_change AFTER UPDATE OF search ON register WHEN OLD.search <> NEW.search
BEGIN
    INSERT INTO register_text (register_text, rowid, search) VALUES ('delete', OLD.id, OLD.search);
    INSERT INTO register_text (rowid, search) VALUES (NEW.id, NEW.search);
END;

CREATE TRIGGER register_text_follows_end AFTER DELETE ON register
BEGIN
    INSERT INTO register_text (register_text, rowid, search) VALUES ('delete', OLD.id, OLD.search);
END;
