package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.List;
import sopwell.prep.forecast.PastDay.Hours;

/**
 * A day on which the stand means to open. Immutable.
 *
 * @param hours the planned ones; {@link Hours#UNKNOWN} for the usual ones of that weekday
 * @param occasions what is particular about it, as far as is known
 */
public record ComingDay(LocalDate date, Hours hours, List<Occasion> occasions) {
    public ComingDay {
        occasions = List.copyOf(occasions);
    }

    /** A day like any other of its weekday. */
    public static ComingDay usual(LocalDate date) {
        return new ComingDay(date, Hours.UNKNOWN, List.of());
    }
}
