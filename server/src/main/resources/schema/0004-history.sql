-- The event log, version 4: days out of old records are found without reading all of the log.
DROP INDEX events_rare;

CREATE INDEX events_rare ON events (stand, kind, seq)
    WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted', 'recipes-adopted', 'calendar-set',
        'out-marked', 'out-lifted', 'past-day-kept');
