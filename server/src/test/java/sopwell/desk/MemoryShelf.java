package sopwell.desk;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import sopwell.mix.TallyShelf;

/** A shelf in memory. */
public final class MemoryShelf implements TallyShelf {
    private final TreeMap<LocalDate, Shelved> kept = new TreeMap<>();

    @Override
    public synchronized List<Shelved> of(Collection<LocalDate> dates) {
        return kept.values().stream().filter(one -> dates.contains(one.tally().date())).toList();
    }

    @Override
    public synchronized List<Shelved> all() {
        return List.copyOf(kept.values());
    }

    @Override
    public synchronized void put(List<Shelved> tallies) {
        tallies.forEach(one -> kept.put(one.tally().date(), one));
    }

    @Override
    public synchronized void clear() {
        kept.clear();
    }
}
