-- The random key of each person and each private name. Destroying it erases what was written under it, here and in
-- every copy that is told to.
CREATE TABLE person_key (
    key    TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    secret TEXT COLLATE "C" NOT NULL
);

-- Names that people typed into parts. The chained text carries the key only. lookup finds the key of a name without
-- opening them all; it is empty until the text is under its key.
CREATE TABLE private_name (
    key    TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    lookup TEXT COLLATE "C",
    text   TEXT COLLATE "C" NOT NULL
);

CREATE UNIQUE INDEX private_name_by_lookup ON private_name (lookup);

-- Derived from the revisions: which jobs mention whom.
CREATE TABLE person_use (
    key    TEXT COLLATE "C" NOT NULL,
    job_id TEXT COLLATE "C" NOT NULL REFERENCES job (id),
    PRIMARY KEY (key, job_id)
);

-- What was erased, so that copies taken earlier can follow. Keys only.
CREATE TABLE erased (
    key       TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    erased_at TEXT COLLATE "C" NOT NULL
);
