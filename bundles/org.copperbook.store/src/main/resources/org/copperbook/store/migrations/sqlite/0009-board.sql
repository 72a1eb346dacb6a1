-- Where a job stands on the board. Rows are filled when the register is made anew.
ALTER TABLE register ADD COLUMN step TEXT NOT NULL DEFAULT 'UNKNOWN';

-- The day promised, or 9999-12-31, so that one index serves jobs with and without.
ALTER TABLE register ADD COLUMN due TEXT NOT NULL DEFAULT '9999-12-31';

-- Empty when nobody wrote it down.
ALTER TABLE register ADD COLUMN booked_at TEXT NOT NULL DEFAULT '';

-- Empty when the job does not wait; '?' when nobody said what for.
ALTER TABLE register ADD COLUMN waiting_for TEXT NOT NULL DEFAULT '';

ALTER TABLE register ADD COLUMN waiting_since TEXT NOT NULL DEFAULT '';

ALTER TABLE register ADD COLUMN waiting_reason TEXT NOT NULL DEFAULT '';

CREATE INDEX register_by_step ON register (step, due, number_key, job_id);

CREATE INDEX register_by_due ON register (due, number_key, job_id);

CREATE INDEX register_by_step_and_change ON register (step, changed_at, number_key, job_id);

CREATE INDEX register_waiting ON register (due, number_key, job_id) WHERE waiting_for <> '';

-- Hours agreed to and still ahead, thousandths.
CREATE TABLE work_ahead (
    job_id TEXT NOT NULL REFERENCES job (id),
    trade  TEXT NOT NULL,
    due    TEXT NOT NULL,
    amount INTEGER NOT NULL
) STRICT;

CREATE INDEX work_ahead_by_job ON work_ahead (job_id);
