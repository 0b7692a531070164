package sopwell.log;

/**
 * One event as it stands in the log. Immutable.
 *
 * @param seq its place, from 1, without gaps
 * @param atMs when it was decided, milliseconds since 1970-01-01 UTC; never less than its
 *     predecessor's
 * @param key the idempotency key of the command that caused it
 * @param ordinal its place among that command's events, from 0
 */
public record Recorded(long seq, long atMs, String key, int ordinal, Event event) {}
