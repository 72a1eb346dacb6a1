-- What tells that somebody knows the secret of a person of the shop; never the secret. While there is no row nobody has
-- to sign in. failures counts wrong secrets since the last right one, the latest at failed_at.
CREATE TABLE account (
    key        TEXT COLLATE "C" PRIMARY KEY NOT NULL,
    algorithm  TEXT COLLATE "C" NOT NULL,
    iterations BIGINT NOT NULL,
    salt       TEXT COLLATE "C" NOT NULL,
    hash       TEXT COLLATE "C" NOT NULL,
    set_at     TEXT COLLATE "C" NOT NULL,
    failures   BIGINT NOT NULL,
    failed_at  TEXT COLLATE "C"
);
