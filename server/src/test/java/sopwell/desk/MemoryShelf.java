package sopwell.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import sopwell.mix.TallyShelf;

/** A shelf in memory. */
public final class MemoryShelf implements TallyShelf {
    private final TreeMap<LocalDate, Shelved> kept = new TreeMap<>();

    @Override
    public synchronized List<Shelved> between(LocalDate from, LocalDate to) {
        return List.copyOf(kept.subMap(from, true, to, true).values());
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
