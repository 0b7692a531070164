-- The event log, version 5: who did what is found without reading all of the log.
DROP INDEX events_rare;

CREATE INDEX events_rare ON events (stand, kind, seq)
    WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted', 'recipes-adopted', 'calendar-set',
        'out-marked', 'out-lifted', 'past-day-kept', 'done-by');
