package sopwell.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.StandSettings;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;

/** Builds a stand from the log, reading only what the newest business day needs. Stateless. */
public final class Replay {
    private Replay() {}

    /**
     * The stand as the log has it: the menu, recipes and calendar in force, then all since the
     * newest date was first opened.
     *
     * @param alsoTo is handed every event that was read
     */
    public static Stand newestDay(EventLog log, StandSettings settings, Consumer<Recorded> alsoTo) {
        return at(log, settings, log.lastSeq(), alsoTo);
    }

    /**
     * The same as it was when the log ended at a place.
     *
     * @param last the place
     */
    public static Stand at(
            EventLog log, StandSettings settings, long last, Consumer<Recorded> alsoTo) {
        OptionalLong opened = log.lastOf(DayOpened.class, last);
        // Without an opening the last event is read all the same: a stand knows where its log ends.
        long from = opened.isPresent() ? firstOfDate(log, opened.getAsLong()) : last;
        return range(log, settings, from, last, alsoTo);
    }

    /** The stand as it was at the end of a date, or empty when nothing was opened on it. */
    public static Optional<Stand> day(EventLog log, StandSettings settings, LocalDate date) {
        return day(log, settings, date, event -> {});
    }

    /**
     * The same.
     *
     * @param alsoTo is handed every event of the date
     */
    public static Optional<Stand> day(
            EventLog log, StandSettings settings, LocalDate date, Consumer<Recorded> alsoTo) {
        return span(log, date).map(span -> range(log, settings, span.from(), span.to(), alsoTo));
    }

    /**
     * Where a date's events stand in the log. Immutable.
     *
     * @param from the place of its first opening
     * @param to the place before the next date's opening, or the last of all
     */
    public record Span(long from, long to) {}

    /** Where a date's events are, or empty when nothing was opened on it. */
    public static Optional<Span> span(EventLog log, LocalDate date) {
        long to = log.lastSeq();
        List<Long> places = log.placesOf(DayOpened.class);
        long from = 0;
        for (int i = places.size() - 1; i >= 0; i--) {
            LocalDate opened = dateAt(log, places.get(i));
            if (opened.equals(date)) {
                from = places.get(i);
            } else if (opened.isBefore(date)) {
                break;
            } else {
                to = places.get(i) - 1;
            }
        }
        return from == 0 ? Optional.empty() : Optional.of(new Span(from, Math.max(from, to)));
    }

    /**
     * A stand that knows the menu, the recipes and the owner's calendar that were in force at a
     * place, and nothing else. It takes them in as they came, so that it knows its own place.
     */
    public static Stand before(EventLog log, StandSettings settings, long from) {
        Stand stand = new Stand(settings);
        Stream.of(
                        log.lastOf(MenuAdopted.class, from),
                        log.lastOf(RecipesAdopted.class, from),
                        log.lastOf(CalendarSet.class, from))
                .flatMapToLong(OptionalLong::stream)
                .sorted()
                .forEach(place -> log.read(place, place, stand::apply));
        return stand;
    }

    /** The dates between two, both included, on which a day was opened, oldest first. */
    public static List<LocalDate> dates(EventLog log, LocalDate from, LocalDate to) {
        return log.placesOf(DayOpened.class).stream()
                .map(place -> dateAt(log, place))
                .filter(date -> !date.isBefore(from) && !date.isAfter(to))
                .distinct()
                .toList();
    }

    /** The stand after the events of a span, whose first opens a date. */
    static Stand of(EventLog log, StandSettings settings, Span span) {
        return range(log, settings, span.from(), span.to(), event -> {});
    }

    private static Stand range(
            EventLog log, StandSettings settings, long from, long to, Consumer<Recorded> alsoTo) {
        Stand stand = before(log, settings, from - 1);
        log.read(
                from,
                to,
                recorded -> {
                    stand.apply(recorded);
                    alsoTo.accept(recorded);
                });
        return stand;
    }

    private static long firstOfDate(EventLog log, long newest) {
        LocalDate date = dateAt(log, newest);
        long first = newest;
        OptionalLong earlier = log.lastOf(DayOpened.class, first - 1);
        while (earlier.isPresent() && dateAt(log, earlier.getAsLong()).equals(date)) {
            first = earlier.getAsLong();
            earlier = log.lastOf(DayOpened.class, first - 1);
        }
        return first;
    }

    private static LocalDate dateAt(EventLog log, long seq) {
        List<LocalDate> date = new ArrayList<>();
        log.read(seq, seq, recorded -> date.add(((DayOpened) recorded.event()).date()));
        return date.get(0);
    }
}
