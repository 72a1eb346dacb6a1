-- Each holds every figure, so that a search walks outwards from the size asked for without looking at the rows.
CREATE INDEX past_winding_by_bore ON past_winding (role, bore, job_id, rating, poles, slots, length, volts);

CREATE INDEX past_winding_by_rating ON past_winding (role, rating, job_id, poles, slots, bore, length, volts);

DROP INDEX past_winding_by_serial;

CREATE INDEX past_winding_by_serial ON past_winding (serial_key, role);

DROP INDEX past_winding_by_time;

CREATE INDEX past_winding_by_time ON past_winding (role, recorded_at);
