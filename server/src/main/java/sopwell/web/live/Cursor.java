package sopwell.web.live;

import java.util.Optional;

/**
 * The last that a screen saw: a place in a log. Immutable.
 *
 * @param epoch names the log
 * @param seq the place
 */
record Cursor(String epoch, long seq) {
    private static final int SEQ_DIGITS_MAX = 15;
    private static final int CHARS_MAX = 64;

    /** Reads {@code EPOCH:SEQ}; empty when it is not that. */
    static Optional<Cursor> of(String text) {
        int colon = text.lastIndexOf(':');
        String seq = text.substring(colon + 1);
        boolean sound =
                colon > 0
                        && text.length() <= CHARS_MAX
                        && seq.length() <= SEQ_DIGITS_MAX
                        && !seq.isEmpty()
                        && seq.chars().allMatch(c -> c >= '0' && c <= '9');
        return sound
                ? Optional.of(new Cursor(text.substring(0, colon), Long.parseLong(seq)))
                : Optional.empty();
    }
}
