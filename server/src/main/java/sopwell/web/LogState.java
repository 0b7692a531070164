package sopwell.web;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * What the newest check of the whole log found. Immutable.
 *
 * @param checkedAtMs when it ended, milliseconds since 1970-01-01 UTC; empty before the first
 * @param damage what is wrong, or empty
 */
public record LogState(OptionalLong checkedAtMs, Optional<String> damage) {
    /** Not checked yet. */
    public static final LogState UNCHECKED = new LogState(OptionalLong.empty(), Optional.empty());
}
