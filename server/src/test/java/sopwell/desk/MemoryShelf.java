package sopwell.desk;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelves;

/** A shelf in memory. */
public final class MemoryShelf<T> implements TallyShelf<T> {
    private final TreeMap<LocalDate, Shelved<T>> kept = new TreeMap<>();

    /** Empty shelves of every kind. */
    public static TallyShelves shelves() {
        return new TallyShelves(new MemoryShelf<>(), new MemoryShelf<>(), new MemoryShelf<>());
    }

    @Override
    public synchronized List<Shelved<T>> of(Collection<LocalDate> dates) {
        return kept.values().stream().filter(one -> dates.contains(one.date())).toList();
    }

    @Override
    public synchronized List<Shelved<T>> all() {
        return List.copyOf(kept.values());
    }

    @Override
    public synchronized void put(List<Shelved<T>> tallies) {
        tallies.forEach(one -> kept.put(one.date(), one));
    }

    @Override
    public synchronized void forget(LocalDate date) {
        kept.remove(date);
    }

    @Override
    public synchronized void clear() {
        kept.clear();
    }
}
