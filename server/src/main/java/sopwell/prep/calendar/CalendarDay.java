package sopwell.prep.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.PastDay;

/**
 * What the owner has said of one date. Immutable.
 *
 * @param closed the stand does not open
 * @param hours other than the usual ones; empty for those
 * @param occasions in the order in which they were named
 */
public record CalendarDay(
        LocalDate date, boolean closed, Optional<OpenHours> hours, List<NamedOccasion> occasions) {
    public CalendarDay {
        occasions = List.copyOf(occasions);
    }

    /** A date of which nothing is said. */
    public static CalendarDay plain(LocalDate date) {
        return new CalendarDay(date, false, Optional.empty(), List.of());
    }

    /** Whether nothing is said of it. */
    public boolean isPlain() {
        return !closed && hours.isEmpty() && occasions.isEmpty();
    }

    /** The planned hours as the forecast takes them. */
    public PastDay.Hours plannedHours() {
        return hours.map(span -> new PastDay.Hours(span.fromMinute(), span.toMinute()))
                .orElse(PastDay.Hours.UNKNOWN);
    }

    /** The occasions as the forecast takes them. */
    public List<Occasion> known() {
        return occasions.stream().map(NamedOccasion::asKnown).toList();
    }

    CalendarDay open(boolean isClosed, Optional<OpenHours> span) {
        return new CalendarDay(date, isClosed, span, occasions);
    }

    /** One more; one of the same name gives way to it, in its place. */
    CalendarDay with(NamedOccasion occasion) {
        List<NamedOccasion> more = new ArrayList<>(occasions);
        int at = at(occasion.name());
        if (at < 0) {
            more.add(occasion);
        } else {
            more.set(at, occasion);
        }
        return new CalendarDay(date, closed, hours, more);
    }

    CalendarDay without(String name) {
        List<NamedOccasion> fewer = new ArrayList<>(occasions);
        fewer.remove(at(name));
        return new CalendarDay(date, closed, hours, fewer);
    }

    boolean has(String name) {
        return at(name) >= 0;
    }

    private int at(String name) {
        for (int i = 0; i < occasions.size(); i++) {
            if (occasions.get(i).name().equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }
}
