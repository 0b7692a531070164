package sopwell.prep.past;

import java.time.LocalDate;
import sopwell.Check;

/**
 * A task as a plan had it. Immutable.
 *
 * @param makes the ingredient
 * @param lots how many lots of the recipe, from 1
 * @param thousandths what they give, in thousandths of the base unit
 * @param startMs when it was to be started at the latest, milliseconds since 1970-01-01 UTC
 * @param neededMs when it was to be ready
 * @param firstDay the first date it was for
 */
public record KeptTask(
        String makes, int lots, long thousandths, long startMs, long neededMs, LocalDate firstDay) {
    public KeptTask {
        Check.that(lots >= 1 && thousandths >= 0, "a task makes something");
    }
}
