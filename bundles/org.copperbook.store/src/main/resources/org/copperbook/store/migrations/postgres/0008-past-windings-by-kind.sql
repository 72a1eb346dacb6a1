-- By poles and slots first: of another kind not even the same size is near, so that a search looks at few sizes of each.
DROP INDEX past_winding_by_bore;

DROP INDEX past_winding_by_rating;

CREATE INDEX past_winding_by_kind_and_bore ON past_winding
    (role, poles, slots, bore, job_id, rating, length, volts);

CREATE INDEX past_winding_by_kind_and_rating ON past_winding
    (role, poles, slots, rating, job_id, bore, length, volts);
