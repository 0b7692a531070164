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
import sopwell.Limits;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;

/** One kind of tally of past days: counted once, kept, and compared. Thread-safe. */
final class KeptDays<T> {
    private final TallyShelf<T> shelf;
    private final Function<Stand, T> counting;

    /** Read from the shelf already, and let go when memory is short. */
    private final Map<LocalDate, SoftReference<Shelved<T>>> atHand = new HashMap<>();

    /**
     * Tallies of one kind.
     *
     * @param counting counts a stand's newest day
     */
    KeptDays(TallyShelf<T> shelf, Function<Stand, T> counting) {
        this.shelf = shelf;
        this.counting = counting;
    }

    /**
     * The tallies of days, oldest first; what is not kept, or not up to that place, is counted.
     *
     * @param ends the days' last places
     * @param days reads a day from the log
     */
    List<T> of(NavigableMap<LocalDate, Long> ends, Function<LocalDate, Stand> days) {
        Map<LocalDate, T> found = new TreeMap<>(atHand(ends));
        List<LocalDate> wanted =
                ends.keySet().stream().filter(date -> !found.containsKey(date)).toList();
        for (Shelved<T> kept : shelf.of(wanted)) {
            if (ends.get(kept.date()) == kept.lastSeq() && kept.tally().isPresent()) {
                found.put(kept.date(), kept.tally().get());
                remember(kept);
            }
        }
        List<Shelved<T>> fresh = new ArrayList<>();
        ends.forEach(
                (date, end) -> {
                    if (!found.containsKey(date)) {
                        T tally = counting.apply(days.apply(date));
                        found.put(date, tally);
                        fresh.add(Shelved.of(date, end, tally));
                        remember(Shelved.of(date, end, tally));
                    }
                });
        if (!fresh.isEmpty()) {
            shelf.put(fresh);
        }
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

    private void remember(Shelved<T> kept) {
        synchronized (atHand) {
            if (atHand.size() >= Limits.TALLIES_AT_HAND_MAX) {
                atHand.clear();
            }
            atHand.put(kept.date(), new SoftReference<>(kept));
        }
    }

    void keep(LocalDate date, long lastSeq, Stand stand) {
        shelf.put(List.of(Shelved.of(date, lastSeq, counting.apply(stand))));
    }

    /** Counts a day anew that ends at a place. */
    void recount(LocalDate date, long lastSeq, Stand stand) {
        keep(date, lastSeq, stand);
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
