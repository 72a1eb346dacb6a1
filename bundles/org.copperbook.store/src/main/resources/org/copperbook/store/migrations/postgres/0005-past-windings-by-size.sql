-- Each holds every figure, so that a search walks outwards from the size asked for without looking at the rows. The
-- index by serial number stays what it is: the other kind refuses long text.
CREATE INDEX past_winding_by_bore ON past_winding (role, bore, job_id, rating, poles, slots, length, volts);

CREATE INDEX past_winding_by_rating ON past_winding (role, rating, job_id, poles, slots, bore, length, volts);

DROP INDEX past_winding_by_time;

CREATE INDEX past_winding_by_time ON past_winding (role, recorded_at);
