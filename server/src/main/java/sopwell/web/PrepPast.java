package sopwell.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import sopwell.Limits;
import sopwell.desk.DayBook;
import sopwell.desk.PastRecords;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.orders.OutEvent;
import sopwell.orders.StandSettings;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.PrepAsk;
import sopwell.prep.PrepDays;
import sopwell.prep.SellOuts;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.OutSpan;

/**
 * All days that a plan of prep learns from: those that the stand sold itself, and before them the
 * owner's old records. Reads what is new in the log alone. Not thread-safe.
 */
final class PrepPast {
    private final EventLog log;
    private final DayBook book;
    private final SellOuts outs;
    private long outsTo;
    private History old = History.none(PrepDays.BIN_MINUTES);
    private int oldPlaces;

    PrepPast(EventLog log, DayBook book, StandSettings settings) {
        this.log = log;
        this.book = book;
        this.outs = new SellOuts(settings.zone(), settings.cutHour());
    }

    /**
     * The days before a date. Of one that was sold here and stands in old records too, what was
     * sold here counts.
     *
     * @param newest the stand's newest day when it is over and no other has followed it
     */
    PrepAsk.Past before(
            LocalDate today, Menu menu, OwnerCalendar calendar, Optional<DayTally> newest) {
        LocalDate from = today.minusDays(Limits.PREP_HISTORY_DAYS_MAX);
        List<DayTally> own = new ArrayList<>(book.days(from, today.minusDays(1)));
        newest.ifPresent(own::add);
        look();
        List<PastDay> kept =
                old.days().stream()
                        .filter(day -> !day.date().isBefore(from) && day.date().isBefore(today))
                        .toList();
        TreeMap<LocalDate, PastDay> days = new TreeMap<>();
        kept.forEach(day -> days.put(day.date(), day));
        PrepDays.of(own, outs.spans(), calendar).forEach(day -> days.put(day.date(), day));
        TreeMap<LocalDate, DayTally> tallies = new TreeMap<>();
        PrepDays.priced(kept, menu).forEach(tally -> tallies.put(tally.date(), tally));
        own.forEach(tally -> tallies.put(tally.date(), tally));
        return new PrepAsk.Past(
                List.copyOf(days.values()), List.copyOf(tallies.values()), old.outlooks());
    }

    /** What could not be sold, by day; as of the last time days were asked for. */
    Map<LocalDate, List<OutSpan>> outs() {
        return outs.spans();
    }

    /** Reads the marks of what is out that came since, and old records when there are more. */
    private void look() {
        List<Long> places =
                Stream.of(OutEvent.OutMarked.class, OutEvent.OutLifted.class)
                        .map(log::placesOf)
                        .flatMap(Collection::stream)
                        .filter(place -> place > outsTo)
                        .sorted()
                        .toList();
        for (long place : places) {
            log.read(
                    place,
                    place,
                    recorded -> outs.apply((OutEvent) recorded.event(), recorded.atMs()));
            outsTo = place;
        }
        int more = log.placesOf(PastDayKept.class).size();
        if (more > oldPlaces) {
            old = PastRecords.history(log, PrepDays.BIN_MINUTES);
            oldPlaces = more;
        }
    }
}
