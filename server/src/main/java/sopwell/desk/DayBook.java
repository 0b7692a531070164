package sopwell.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import sopwell.log.EventLog;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.ExceptionTally.Difference;
import sopwell.mix.ExceptionTally.Refunds;
import sopwell.mix.OutTime;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.mix.TallyShelves;
import sopwell.mix.WaitTally;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.StandSettings;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Move;
import sopwell.till.TillEvent;

/**
 * The tallies of past business days. A day that another has followed is counted once from the log
 * and then kept on the shelf; the newest day may still grow and is not kept. Thread-safe.
 */
public final class DayBook {
    private final EventLog log;
    private final StandSettings settings;
    private final Doubts doubts = new Doubts();
    private final KeptDays<DayTally> mixes;
    private final KeptDays<WaitTally> waits;
    private final KeptDays<ExceptionTally> exceptions;
    private final TreeMap<LocalDate, Long> firsts = new TreeMap<>();
    private final Set<LocalDate> settled = ConcurrentHashMap.newKeySet();
    private int known;

    /** A book over a log. */
    public DayBook(EventLog log, StandSettings settings, TallyShelves shelves) {
        this.log = log;
        this.settings = settings;
        this.mixes = new KeptDays<>(shelves.mixes(), DayBook::mix, doubts);
        this.waits = new KeptDays<>(shelves.waits(), DayBook::waits, doubts);
        this.exceptions = new KeptDays<>(shelves.exceptions(), DayBook::exceptions, doubts);
    }

    /** All that is kept of one day. Immutable. */
    public record Day(DayTally mix, WaitTally waits, ExceptionTally exceptions) {
        /** A stand's newest day, which must have been opened. */
        public static Day of(Stand stand) {
            return new Day(DayBook.mix(stand), DayBook.waits(stand), DayBook.exceptions(stand));
        }
    }

    /** What sold on a stand's newest day, which must have been opened. */
    public static DayTally mix(Stand stand) {
        return DayTally.of(
                stand.orders().date().orElseThrow(),
                stand.orders(),
                stand.settings().zone(),
                stand::menuOf);
    }

    /** How long guests waited on a stand's newest day, which must have been opened. */
    public static WaitTally waits(Stand stand) {
        return WaitTally.of(
                stand.orders().date().orElseThrow(),
                stand.orders(),
                stand.kitchen(),
                stand.settings().zone());
    }

    /** What did not go straight on a stand's newest day, which must have been opened. */
    public static ExceptionTally exceptions(Stand stand) {
        DayReport money = DayReport.of(stand.orders(), stand.till());
        return new ExceptionTally(
                stand.orders().date().orElseThrow(),
                DayExceptions.of(stand.orders(), stand.kitchen()),
                OutTime.of(stand.outSpans(), stand.orders(), stand.atMs()),
                refunds(money),
                money.drawers().stream()
                        .map(till -> new Difference(till.cashier(), overCents(till)))
                        .filter(difference -> difference.overCents() != 0)
                        .toList());
    }

    private static long overCents(Drawer till) {
        return till.counted().map(Drawer.Counted::overCents).orElse(0L);
    }

    private static List<Refunds> refunds(DayReport money) {
        TreeMap<String, Refunds> byReason = new TreeMap<>();
        for (Move move : money.moves()) {
            if (move.kind() == TillEvent.Kind.REFUNDED) {
                Refunds one = new Refunds(move.reason(), 1, move.cents());
                byReason.merge(move.reason(), one, Refunds::plus);
            }
        }
        return List.copyOf(byReason.values());
    }

    /** All of a day that another has followed; empty when there is no such day. */
    public Optional<Day> day(LocalDate date) {
        NavigableMap<LocalDate, Long> ends = ends(date, date);
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Day(
                        of(mixes, ends).get(0),
                        of(waits, ends).get(0),
                        of(exceptions, ends).get(0)));
    }

    private <T> List<T> of(KeptDays<T> kind, NavigableMap<LocalDate, Long> ends) {
        return kind.of(ends, date -> read(date, ends.get(date), kind));
    }

    /** Reads a day for one kind, and keeps the others too, so that it is not read for each. */
    private Stand read(LocalDate date, long end, KeptDays<?> asking) {
        long readFrom = doubts.now();
        Stand stand = stand(date);
        for (KeptDays<?> kind : kinds()) {
            if (kind != asking && !kind.isKept(date, end)) {
                kind.keep(date, end, stand, readFrom);
            }
        }
        return stand;
    }

    /** The tallies of days that others have followed, oldest first; both dates included. */
    public List<DayTally> days(LocalDate from, LocalDate to) {
        return of(mixes, ends(from, to));
    }

    /** The same of those dates between that are wanted. */
    public List<DayTally> days(LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        return of(mixes, ends(from, to, which));
    }

    /** The same of single dates; those without such a day are left out. */
    public List<DayTally> days(Collection<LocalDate> dates) {
        return of(mixes, ends(dates));
    }

    /** The waits of days that others have followed and that are wanted, oldest first. */
    public List<WaitTally> waits(LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        return of(waits, ends(from, to, which));
    }

    /** What did not go straight on days that others have followed and that are wanted. */
    public List<ExceptionTally> exceptions(
            LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        return of(exceptions, ends(from, to, which));
    }

    /**
     * Counts the newest past day of which something is not kept yet, and keeps it.
     *
     * @return whether there was such a day; then there may be another
     */
    public boolean keepNext() {
        for (Map.Entry<LocalDate, Long> day :
                ends(LocalDate.MIN, LocalDate.MAX).descendingMap().entrySet()) {
            LocalDate date = day.getKey();
            if (settled.contains(date)) {
                continue;
            }
            boolean missing = kinds().stream().anyMatch(kind -> !kind.isKept(date, day.getValue()));
            if (missing) {
                day(date);
            }
            settled.add(date);
            if (missing) {
                return true;
            }
        }
        return false;
    }

    /**
     * The log is about to say something else of a day, such as fewer names. What is kept of it is
     * thrown away first, and nothing is kept until the day is counted anew: so that nothing stays
     * if the stand ends in between, nor when somebody reads the day just then.
     */
    public void doubt(LocalDate date) {
        doubts.raise(date, () -> kinds().forEach(kind -> kind.forget(date)));
    }

    /** Counts a day anew that was in doubt; the log says of it what it will say. */
    public void recount(LocalDate date) {
        doubts.settle(date);
        settled.remove(date);
        NavigableMap<LocalDate, Long> ends = ends(date, date);
        if (!ends.isEmpty()) {
            keep(date, ends.get(date));
        }
    }

    private void keep(LocalDate date, long end) {
        long readFrom = doubts.now();
        Stand stand = stand(date);
        kinds().forEach(kind -> kind.keep(date, end, stand, readFrom));
    }

    private List<KeptDays<?>> kinds() {
        return List.of(mixes, waits, exceptions);
    }

    /**
     * Counts every day anew.
     *
     * @param progress is told after each day how many are done, of how many
     * @return how many days there were
     */
    public int rebuild(BiConsumer<Integer, Integer> progress) {
        kinds().forEach(KeptDays::clear);
        NavigableMap<LocalDate, Long> ends = ends(LocalDate.MIN, LocalDate.MAX);
        int done = 0;
        for (Map.Entry<LocalDate, Long> day : ends.entrySet()) {
            keep(day.getKey(), day.getValue());
            done++;
            progress.accept(done, ends.size());
        }
        return done;
    }

    /**
     * The dates of which something is kept that is not what the log says.
     *
     * @throws sopwell.log.LogFault when what is kept can't be read at all
     */
    public List<LocalDate> wrong() {
        NavigableMap<LocalDate, Long> ends = ends(LocalDate.MIN, LocalDate.MAX);
        Map<LocalDate, Shelved<DayTally>> keptMixes = mixes.all();
        Map<LocalDate, Shelved<WaitTally>> keptWaits = waits.all();
        Map<LocalDate, Shelved<ExceptionTally>> keptExceptions = exceptions.all();
        List<LocalDate> wrong = new ArrayList<>();
        for (LocalDate date : KeptDays.dates(List.of(keptMixes, keptWaits, keptExceptions))) {
            if (!ends.containsKey(date)) {
                wrong.add(date);
                continue;
            }
            long end = ends.get(date);
            Stand stand = stand(date);
            boolean right =
                    mixes.isRight(Optional.ofNullable(keptMixes.get(date)), end, stand)
                            && waits.isRight(Optional.ofNullable(keptWaits.get(date)), end, stand)
                            && exceptions.isRight(
                                    Optional.ofNullable(keptExceptions.get(date)), end, stand);
            if (!right) {
                wrong.add(date);
            }
        }
        return wrong;
    }

    /**
     * The stand at the end of a day that another has followed. Where the day is in the log is known
     * here; to look for it anew would read every day's opening for each day.
     */
    private Stand stand(LocalDate date) {
        long end = ends(date, date).get(date);
        long from;
        synchronized (firsts) {
            from = firsts.get(date);
        }
        return Replay.of(log, settings, new Replay.Span(from, end));
    }

    private NavigableMap<LocalDate, Long> ends(
            LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        NavigableMap<LocalDate, Long> ends = ends(from, to);
        ends.keySet().removeIf(which.negate());
        return ends;
    }

    private NavigableMap<LocalDate, Long> ends(Collection<LocalDate> dates) {
        if (dates.isEmpty()) {
            return new TreeMap<>();
        }
        NavigableMap<LocalDate, Long> ends = ends(Collections.min(dates), Collections.max(dates));
        ends.keySet().retainAll(dates);
        return ends;
    }

    /** The last places of the days between two dates that another day has followed. */
    private NavigableMap<LocalDate, Long> ends(LocalDate from, LocalDate to) {
        NavigableMap<LocalDate, Long> ends = new TreeMap<>();
        synchronized (firsts) {
            learn();
            for (LocalDate date : firsts.subMap(from, true, to, true).keySet()) {
                Map.Entry<LocalDate, Long> next = firsts.higherEntry(date);
                if (next != null) {
                    ends.put(date, next.getValue() - 1);
                }
            }
        }
        return ends;
    }

    /** Looks at the openings that came since the last time. */
    private void learn() {
        List<Long> places = log.placesOf(DayOpened.class);
        for (long place : places.subList(known, places.size())) {
            log.read(
                    place,
                    place,
                    recorded -> firsts.putIfAbsent(((DayOpened) recorded.event()).date(), place));
        }
        known = places.size();
    }
}
