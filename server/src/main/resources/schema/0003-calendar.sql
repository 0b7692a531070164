-- The event log, version 3: the owner's calendar, and what was out, are found as quickly as menus.
DROP INDEX events_rare;

CREATE INDEX events_rare ON events (stand, kind, seq)
    WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted', 'recipes-adopted', 'calendar-set',
        'out-marked', 'out-lifted');
