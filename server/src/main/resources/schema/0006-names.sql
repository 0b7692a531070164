-- The event log, version 6: names of people can be taken out of it.
-- salt    chance that goes into the hash of what may name somebody, so that nobody can try names
--         against the hash; goes with the name
-- erased  which events were taken something out of: by_seq is the names-erased event that says so,
--         proof is SHA-256 over the event as it is since then, see docs/privacy.md
DROP INDEX events_rare;

CREATE INDEX events_rare ON events (stand, kind, seq)
    WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted', 'recipes-adopted', 'calendar-set',
        'out-marked', 'out-lifted', 'past-day-kept', 'done-by', 'names-erased');

ALTER TABLE events ADD COLUMN salt BLOB;

CREATE TABLE erased (
    stand  TEXT    NOT NULL,
    seq    INTEGER NOT NULL,
    by_seq INTEGER NOT NULL,
    proof  BLOB    NOT NULL,
    PRIMARY KEY (stand, seq, by_seq)
) STRICT, WITHOUT ROWID;

CREATE INDEX erased_by ON erased (stand, by_seq, seq, proof);
