-- Derived from the revisions: what happened in which month, one row a thing. Amounts are thousandths.
CREATE TABLE month_fact (
    job_id TEXT NOT NULL REFERENCES job (id),
    month  TEXT NOT NULL,
    kind   TEXT NOT NULL,
    what   TEXT NOT NULL,
    amount INTEGER NOT NULL
) STRICT;

CREATE INDEX month_fact_by_month ON month_fact (month, kind, what, amount);

CREATE INDEX month_fact_by_job ON month_fact (job_id);
