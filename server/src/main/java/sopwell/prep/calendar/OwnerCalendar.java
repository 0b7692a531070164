package sopwell.prep.calendar;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sopwell.prep.forecast.Guesses;

/**
 * All that the owner has said of days, gone ones among them: the forecast learns from what was
 * particular about them. Immutable.
 *
 * @param days those of which something is said, by date
 * @param pieces how many of an item a plain day is guessed to sell, by the item's id
 * @param terms what is set for the plan
 */
public record OwnerCalendar(
        SortedMap<LocalDate, CalendarDay> days, Map<String, Integer> pieces, OwnerTerms terms) {
    /** Nothing was said yet. */
    public static final OwnerCalendar EMPTY = of(List.of(), Map.of());

    public OwnerCalendar {
        days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
        pieces = Collections.unmodifiableSortedMap(new TreeMap<>(pieces));
    }

    /** A calendar of these days, in any order. */
    public static OwnerCalendar of(List<CalendarDay> days, Map<String, Integer> pieces) {
        TreeMap<LocalDate, CalendarDay> byDate = new TreeMap<>();
        days.stream().filter(day -> !day.isPlain()).forEach(day -> byDate.put(day.date(), day));
        return new OwnerCalendar(byDate, pieces, OwnerTerms.USUAL);
    }

    /** What is said of a date. */
    public CalendarDay day(LocalDate date) {
        CalendarDay known = days.get(date);
        return known == null ? CalendarDay.plain(date) : known;
    }

    /** The guesses as the forecast takes them. */
    public Guesses guesses() {
        return new Guesses(
                pieces.entrySet().stream()
                        .collect(
                                Collectors.toMap(
                                        Map.Entry::getKey, each -> each.getValue() + 0.0)));
    }

    /** The same with another day, without those before a date. */
    OwnerCalendar with(CalendarDay day, LocalDate keptFrom) {
        TreeMap<LocalDate, CalendarDay> more = new TreeMap<>(days);
        if (day.isPlain()) {
            more.remove(day.date());
        } else {
            more.put(day.date(), day);
        }
        more.headMap(keptFrom).clear();
        return new OwnerCalendar(more, pieces, terms);
    }

    /** The same with another guess; 0 takes it back. */
    OwnerCalendar guessing(String item, int count) {
        TreeMap<String, Integer> more = new TreeMap<>(pieces);
        if (count == 0) {
            more.remove(item);
        } else {
            more.put(item, count);
        }
        return new OwnerCalendar(days, more, terms);
    }

    /** The same with other settings. */
    public OwnerCalendar with(OwnerTerms others) {
        return new OwnerCalendar(days, pieces, others);
    }
}
