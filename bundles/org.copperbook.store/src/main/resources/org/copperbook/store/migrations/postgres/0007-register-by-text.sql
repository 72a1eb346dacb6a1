-- An index refuses long text; two that are the same for so long may as well stand by their numbers.
UPDATE register SET customer_key = substr(customer_key, 1, 200), machine_key = substr(machine_key, 1, 200),
    serial_key = substr(serial_key, 1, 200), stage_key = substr(stage_key, 1, 200);

CREATE INDEX register_by_customer ON register (customer_key, number_key DESC);

CREATE INDEX register_by_machine ON register (machine_key, number_key DESC);

CREATE INDEX register_by_serial ON register (serial_key, number_key DESC);

CREATE INDEX register_by_stage ON register (stage_key, number_key DESC);

-- So many jobs stand at one stage that the other way round needs its own.
CREATE INDEX register_by_stage_down ON register (stage_key, number_key);

CREATE INDEX register_by_promise ON register (promised, number_key DESC);

-- Every three characters in a row. A server that has not got the extension, or does not let this user have it, filters
-- by looking at every row: slower, and the same.
DO $$
DECLARE
    home TEXT;
BEGIN
    CREATE EXTENSION IF NOT EXISTS pg_trgm;
    SELECT n.nspname INTO home FROM pg_extension e JOIN pg_namespace n ON n.oid = e.extnamespace
    WHERE e.extname = 'pg_trgm';
    EXECUTE format('CREATE INDEX register_by_text ON register USING gin (search %I.gin_trgm_ops)', home);
EXCEPTION WHEN OTHERS THEN
    RAISE NOTICE 'the register has no index by text: %', SQLERRM;
END $$;
