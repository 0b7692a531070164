package sopwell.log;

import java.util.List;

/**
 * All the events of one command, to be appended whole. Immutable.
 *
 * @param atMs when it was decided, milliseconds since 1970-01-01 UTC
 * @param key the command's idempotency key, unique for ever
 * @param fingerprint what was asked, condensed; tells a repeat from a key used twice
 * @param events at least one
 */
public record Entry(long atMs, String key, String fingerprint, List<Event> events) {
    public Entry {
        events = List.copyOf(events);
    }
}
