package sopwell.desk;

import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import sopwell.Limits;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;

/** One kind of tally of past days: counted once, kept, and compared. Thread-safe. */
final class KeptDays<T> {
    private final TallyShelf<T> shelf;
    private final Function<Stand, T> counting;
    private final Doubts doubts;

    /** Read from the shelf already, and let go when memory is short. */
    private final Map<LocalDate, SoftReference<Shelved<T>>> atHand = new HashMap<>();

    /**
     * Tallies of one kind.
     *
     * @param counting counts a stand's newest day
     * @param doubts days of which nothing is kept just now
     */
    KeptDays(TallyShelf<T> shelf, Function<Stand, T> counting, Doubts doubts) {
        this.shelf = shelf;
        this.counting = counting;
        this.doubts = doubts;
    }

    /**
     * The tallies of days, oldest first; what is not kept, or not up to that place, is counted.
     *
     * @param ends the days' last places
     * @param days reads a day from the log
     */
    List<T> of(NavigableMap<LocalDate, Long> ends, Function<LocalDate, Stand> days) {
        long readFrom = doubts.now();
        Map<LocalDate, T> found = new TreeMap<>(atHand(ends));
        List<Shelved<T>> read = new ArrayList<>();
        List<LocalDate> wanted =
                ends.keySet().stream().filter(date -> !found.containsKey(date)).toList();
        for (Shelved<T> kept : shelf.of(wanted)) {
            if (ends.get(kept.date()) == kept.lastSeq() && kept.tally().isPresent()) {
                found.put(kept.date(), kept.tally().get());
                read.add(kept);
            }
        }
        List<Shelved<T>> fresh = new ArrayList<>();
        ends.forEach(
                (date, end) -> {
                    if (!found.containsKey(date)) {
                        T tally = counting.apply(days.apply(date));
                        found.put(date, tally);
                        fresh.add(Shelved.of(date, end, tally));
                    }
                });
        doubts.keeping(
                readFrom,
                sure -> {
                    remember(those(read, sure));
                    put(those(fresh, sure));
                    remember(those(fresh, sure));
                });
        return List.copyOf(found.values());
    }

    void clear() {
        shelf.clear();
        synchronized (atHand) {
            atHand.clear();
        }
    }

    /** What was asked for lately, as long as it counts up to the same places. */
    private Map<LocalDate, T> atHand(NavigableMap<LocalDate, Long> ends) {
        Map<LocalDate, T> found = new TreeMap<>();
        synchronized (atHand) {
            ends.forEach(
                    (date, end) ->
                            Optional.ofNullable(atHand.get(date))
                                    .map(SoftReference::get)
                                    .filter(kept -> kept.lastSeq() == end)
                                    .flatMap(Shelved::tally)
                                    .ifPresent(tally -> found.put(date, tally)));
        }
        return found;
    }

    private static <T> List<Shelved<T>> those(List<Shelved<T>> of, Predicate<LocalDate> sure) {
        return of.stream().filter(one -> sure.test(one.date())).toList();
    }

    private void put(List<Shelved<T>> fresh) {
        if (!fresh.isEmpty()) {
            shelf.put(fresh);
        }
    }

    private void remember(List<Shelved<T>> tallies) {
        synchronized (atHand) {
            for (Shelved<T> kept : tallies) {
                if (atHand.size() >= Limits.TALLIES_AT_HAND_MAX) {
                    atHand.clear();
                }
                atHand.put(kept.date(), new SoftReference<>(kept));
            }
        }
    }

    /**
     * Counts a day that ends at a place, and keeps that.
     *
     * @param readFrom when the stand began to be read
     */
    void keep(LocalDate date, long lastSeq, Stand stand, long readFrom) {
        List<Shelved<T>> counted = List.of(Shelved.of(date, lastSeq, counting.apply(stand)));
        doubts.keeping(readFrom, sure -> put(those(counted, sure)));
    }

    /** Keeps nothing of a day any more. */
    void forget(LocalDate date) {
        shelf.forget(date);
        synchronized (atHand) {
            atHand.remove(date);
        }
    }

    /** Whether the tally of a day that ends at a place is on the shelf. */
    boolean isKept(LocalDate date, long lastSeq) {
        return shelf.of(List.of(date)).stream()
                .anyMatch(kept -> kept.lastSeq() == lastSeq && kept.tally().isPresent());
    }

    /** What is kept of each date, to be compared. */
    Map<LocalDate, Shelved<T>> all() {
        Map<LocalDate, Shelved<T>> all = new TreeMap<>();
        shelf.all().forEach(kept -> all.put(kept.date(), kept));
        return all;
    }

    /** Whether what was kept of a day that ends at a place, if anything, is what the log says. */
    boolean isRight(Optional<Shelved<T>> kept, long end, Stand stand) {
        return kept.map(
                        one ->
                                one.lastSeq() == end
                                        && one.tally()
                                                .filter(counting.apply(stand)::equals)
                                                .isPresent())
                .orElse(true);
    }

    /** The dates of several kinds together. */
    static Set<LocalDate> dates(List<? extends Map<LocalDate, ?>> kinds) {
        Set<LocalDate> dates = new TreeSet<>();
        kinds.forEach(kind -> dates.addAll(kind.keySet()));
        return dates;
    }
}
