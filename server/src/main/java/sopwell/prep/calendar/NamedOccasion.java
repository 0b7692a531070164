package sopwell.prep.calendar;

import sopwell.Check;
import sopwell.prep.forecast.Occasion;

/**
 * Something particular about a day, as the owner wrote it. Immutable.
 *
 * @param name the same each time, so that the forecast learns it; {@code festival: river} is one of
 *     the festivals
 * @param percent how much more the owner thinks that it makes of a day; less when negative, 0 for
 *     no guess
 */
public record NamedOccasion(String name, int percent) {
    public NamedOccasion {
        Check.that(!name.isBlank(), "an occasion has a name");
        Check.that(
                percent >= CalendarLimits.OCCASION_PERCENT_MIN
                        && percent <= CalendarLimits.OCCASION_PERCENT_MAX,
                "an owner's guess stays within the limits");
    }

    /** As the forecast takes it. */
    public Occasion asKnown() {
        Occasion read = Occasion.read(name);
        return percent == 0 ? read : new Occasion(read.name(), read.kind(), 1 + percent / 100.0);
    }
}
