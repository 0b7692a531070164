package sopwell.log;

import java.util.List;

/**
 * A command that was accepted before: what was asked, and what came of it. Immutable.
 *
 * @param fingerprint what was asked, condensed
 * @param events the command's events, in order
 */
public record Kept(String fingerprint, List<Recorded> events) {
    public Kept {
        events = List.copyOf(events);
    }
}
