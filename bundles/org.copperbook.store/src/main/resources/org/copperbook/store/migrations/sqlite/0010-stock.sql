-- Derived from the revisions of the items; may be emptied and made anew at any time.
CREATE TABLE stock_item (
    part     TEXT PRIMARY KEY NOT NULL,
    kind     TEXT NOT NULL,
    revision INTEGER NOT NULL
) STRICT;

-- One row for each revision that is a movement. job_id and undoes are empty when there is none; quantity in thousandths.
CREATE TABLE stock_move (
    sequence INTEGER PRIMARY KEY REFERENCES revision (sequence),
    part     TEXT NOT NULL,
    job_id   TEXT NOT NULL,
    kind     TEXT NOT NULL,
    id       TEXT NOT NULL,
    undoes   TEXT NOT NULL,
    quantity INTEGER NOT NULL
) STRICT;

CREATE INDEX stock_move_by_part ON stock_move (part, sequence);

CREATE INDEX stock_move_by_job ON stock_move (job_id, sequence) WHERE job_id <> '';

CREATE INDEX stock_move_by_part_and_job ON stock_move (part, job_id, kind, quantity);

CREATE INDEX stock_move_by_id ON stock_move (part, id);

CREATE INDEX stock_move_undone ON stock_move (part, undoes) WHERE undoes <> '';
