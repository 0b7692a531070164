-- The event log, version 1. A row is one event; rows are only ever added.
-- at_ms       when the command was decided, milliseconds since 1970-01-01 UTC
-- key         the command's idempotency key, on the command's first event only
-- fingerprint what was asked, condensed, on the command's first event only
-- ordinal     the event's place among its command's events, from 0
-- body        JSON, see docs/events.md
-- hash        SHA-256 over the hash of the row before and every column of this one
CREATE TABLE events (
    stand       TEXT    NOT NULL,
    seq         INTEGER NOT NULL,
    at_ms       INTEGER NOT NULL,
    kind        TEXT    NOT NULL,
    version     INTEGER NOT NULL,
    key         TEXT,
    fingerprint TEXT,
    ordinal     INTEGER NOT NULL,
    body        TEXT    NOT NULL,
    hash        BLOB    NOT NULL,
    PRIMARY KEY (stand, seq)
) STRICT, WITHOUT ROWID;

CREATE UNIQUE INDEX events_by_key ON events (stand, key) WHERE key IS NOT NULL;

CREATE INDEX events_rare ON events (stand, kind, seq)
    WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted');

CREATE TABLE meta (
    name  TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Another epoch tells every screen to start over.
INSERT INTO meta (name, value) VALUES ('epoch', lower(hex(randomblob(8))));
