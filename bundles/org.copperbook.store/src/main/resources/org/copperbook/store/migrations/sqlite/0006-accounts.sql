-- What tells that somebody knows the secret of a person of the shop; never the secret. While there is no row nobody has
-- to sign in. failures counts wrong secrets since the last right one, the latest at failed_at.
CREATE TABLE account (
    key        TEXT PRIMARY KEY NOT NULL,
    algorithm  TEXT NOT NULL,
    iterations INTEGER NOT NULL,
    salt       TEXT NOT NULL,
    hash       TEXT NOT NULL,
    set_at     TEXT NOT NULL,
    failures   INTEGER NOT NULL,
    failed_at  TEXT
) STRICT;
