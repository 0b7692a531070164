package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import sopwell.Check;

/**
 * All that is known of a stand's past, oldest first. Immutable.
 *
 * @param binMinutes how long a bin of the day is: 15 or 30 minutes are usual
 * @param days no date twice; a date that is missing tells nothing, like a closed one
 * @param outlooks weather forecasts, in any order
 */
public record History(int binMinutes, List<PastDay> days, List<Outlook> outlooks) {
    /** A business day reaches to noon of the next day at most. */
    public static final int DAY_MINUTES = 36 * 60;

    private static final int BIN_MINUTES_MAX = 240;

    public History {
        Check.that(binMinutes >= 5 && binMinutes <= BIN_MINUTES_MAX, "a bin is 5 to 240 minutes");
        days = days.stream().sorted(Comparator.comparing(PastDay::date)).toList();
        outlooks = List.copyOf(outlooks);
        TreeSet<LocalDate> dates = new TreeSet<>();
        days.forEach(day -> Check.that(dates.add(day.date()), "a day stands once in a history"));
    }

    /** Nothing is known. */
    public static History none(int binMinutes) {
        return new History(binMinutes, List.of(), List.of());
    }

    /** How many bins a day has. */
    int bins() {
        return (DAY_MINUTES + binMinutes - 1) / binMinutes;
    }
}
