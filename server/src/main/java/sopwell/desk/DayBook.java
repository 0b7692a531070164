package sopwell.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import sopwell.log.EventLog;
import sopwell.mix.DayTally;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.mix.WaitTally;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.StandSettings;

/**
 * The tallies of past business days. A day that another has followed is counted once from the log
 * and then kept on the shelf; the newest day may still grow and is not kept. Thread-safe.
 */
public final class DayBook {
    private final EventLog log;
    private final StandSettings settings;
    private final TallyShelf shelf;
    private final TreeMap<LocalDate, Long> firsts = new TreeMap<>();
    private int known;

    /** A book over a log. */
    public DayBook(EventLog log, StandSettings settings, TallyShelf shelf) {
        this.log = log;
        this.settings = settings;
        this.shelf = shelf;
    }

    /** The tallies of days that others have followed, oldest first; both dates included. */
    public List<DayTally> days(LocalDate from, LocalDate to) {
        return tallies(ends(from, to));
    }

    /** The same of single dates; those without such a day are left out. */
    public List<DayTally> days(Collection<LocalDate> dates) {
        if (dates.isEmpty()) {
            return List.of();
        }
        NavigableMap<LocalDate, Long> ends = ends(Collections.min(dates), Collections.max(dates));
        ends.keySet().retainAll(dates);
        return tallies(ends);
    }

    /** The waits of single days that others have followed, oldest first. */
    public List<WaitTally> waits(Collection<LocalDate> dates) {
        if (dates.isEmpty()) {
            return List.of();
        }
        NavigableMap<LocalDate, Long> ends = ends(Collections.min(dates), Collections.max(dates));
        ends.keySet().retainAll(dates);
        return ends.keySet().stream().map(this::waits).toList();
    }

    private WaitTally waits(LocalDate date) {
        Stand stand = Replay.day(log, settings, date).orElseThrow();
        return WaitTally.of(date, stand.orders(), stand.kitchen(), settings.zone());
    }

    private List<DayTally> tallies(NavigableMap<LocalDate, Long> ends) {
        Map<LocalDate, DayTally> found = new TreeMap<>();
        for (Shelved kept : shelf.of(ends.keySet())) {
            LocalDate date = kept.tally().date();
            if (ends.get(date) == kept.lastSeq()) {
                found.put(date, kept.tally());
            }
        }
        List<Shelved> fresh = new ArrayList<>();
        ends.forEach(
                (date, end) -> {
                    if (!found.containsKey(date)) {
                        DayTally tally = count(date);
                        found.put(date, tally);
                        fresh.add(new Shelved(tally, end));
                    }
                });
        if (!fresh.isEmpty()) {
            shelf.put(fresh);
        }
        return List.copyOf(found.values());
    }

    /**
     * Counts every day anew.
     *
     * @param progress is told after each day how many are done, of how many
     * @return how many days there were
     */
    public int rebuild(BiConsumer<Integer, Integer> progress) {
        shelf.clear();
        NavigableMap<LocalDate, Long> ends = ends(LocalDate.MIN, LocalDate.MAX);
        int done = 0;
        for (Map.Entry<LocalDate, Long> day : ends.entrySet()) {
            shelf.put(List.of(new Shelved(count(day.getKey()), day.getValue())));
            done++;
            progress.accept(done, ends.size());
        }
        return done;
    }

    /** The dates whose kept tally is not what the log says. */
    public List<LocalDate> wrong() {
        NavigableMap<LocalDate, Long> ends = ends(LocalDate.MIN, LocalDate.MAX);
        List<LocalDate> wrong = new ArrayList<>();
        for (Shelved kept : shelf.all()) {
            LocalDate date = kept.tally().date();
            boolean right =
                    ends.containsKey(date)
                            && ends.get(date) == kept.lastSeq()
                            && count(date).equals(kept.tally());
            if (!right) {
                wrong.add(date);
            }
        }
        return wrong;
    }

    private DayTally count(LocalDate date) {
        Stand stand = Replay.day(log, settings, date).orElseThrow();
        return DayTally.of(date, stand.orders(), settings.zone(), stand::menuOf);
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
