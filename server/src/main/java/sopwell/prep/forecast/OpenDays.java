package sopwell.prep.forecast;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import sopwell.prep.forecast.PastDay.Hours;

/**
 * On which days a stand opens next, as it was known on a day: by its calendar as far as that goes,
 * and after that by the weekdays on which it was open of late. Immutable.
 *
 * <p>A coming day's own hours are believed only where the calendar names something for it; else the
 * usual hours are, since nobody knows beforehand that a day will be closed early.
 */
public final class OpenDays {
    private static final int WEEKS = 4;
    private static final int DAYS_LOOKED_AT = 60;

    private final TreeMap<LocalDate, PastDay> days = new TreeMap<>();
    private final boolean isCalendar;

    /**
     * Days.
     *
     * @param open days on which it was or will be open
     * @param isCalendar whether days after the day asked from may be read, as from a calendar
     */
    public OpenDays(List<PastDay> open, boolean isCalendar) {
        open.forEach(day -> days.put(day.date(), day));
        this.isCalendar = isCalendar;
    }

    /** The next open days after a day. */
    public List<ComingDay> after(LocalDate date, int count) {
        List<ComingDay> next = new ArrayList<>();
        LocalDate at = date;
        LocalDate end = isCalendar && !days.isEmpty() ? days.lastKey() : date;
        for (int i = 0; i < DAYS_LOOKED_AT && next.size() < count; i++) {
            at = at.plusDays(1);
            if (!at.isAfter(end)) {
                PastDay day = days.get(at);
                if (day != null) {
                    boolean named = !day.occasions().isEmpty();
                    Hours hours = named ? day.hours() : Hours.UNKNOWN;
                    next.add(new ComingDay(at, hours, day.occasions()));
                }
            } else if (isOpen(at.getDayOfWeek(), date)) {
                next.add(ComingDay.usual(at));
            }
        }
        return next;
    }

    /** Whether it was open on half or more of the last four such weekdays, the date included. */
    private boolean isOpen(DayOfWeek weekday, LocalDate asOf) {
        int back = Math.floorMod(asOf.getDayOfWeek().getValue() - weekday.getValue(), 7);
        LocalDate at = asOf.minusDays(back);
        int open = 0;
        int known = 0;
        for (int week = 0; week < WEEKS && !at.isBefore(days.firstKey()); week++) {
            known++;
            open += days.containsKey(at) ? 1 : 0;
            at = at.minusWeeks(1);
        }
        return known == 0 || 2 * open >= known;
    }
}
