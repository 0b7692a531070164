package sopwell.log;

import java.util.List;

/**
 * A command that was accepted before: what was asked, and what came of it. Immutable.
 *
 * @param fingerprint what was asked, condensed; empty once names were taken out, so that they can't
 *     be guessed from it
 * @param events the command's events, in order
 */
public record Kept(String fingerprint, List<Recorded> events) {
    public Kept {
        events = List.copyOf(events);
    }

    /** Whether this is what was asked then, as far as it is still known. */
    public boolean isOf(String asked) {
        return fingerprint.isEmpty() || fingerprint.equals(asked);
    }
}
