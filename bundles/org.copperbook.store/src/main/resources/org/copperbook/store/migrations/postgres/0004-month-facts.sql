-- Derived from the revisions: what happened in which month, one row a thing. Amounts are thousandths.
CREATE TABLE month_fact (
    job_id TEXT COLLATE "C" NOT NULL REFERENCES job (id),
    month  TEXT COLLATE "C" NOT NULL,
    kind   TEXT COLLATE "C" NOT NULL,
    what   TEXT COLLATE "C" NOT NULL,
    amount BIGINT NOT NULL
);

-- Without the text: an index refuses long ones.
CREATE INDEX month_fact_by_month ON month_fact (month, kind);

CREATE INDEX month_fact_by_job ON month_fact (job_id);
