package sopwell.kitchen;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sopwell.menu.Menu;

/** The parts that are neither up nor cancelled, by station. Not thread-safe. */
final class OpenWork {
    /** Oldest order first; ids of one day differ only in their running number. */
    static final Comparator<PartId> BY_AGE =
            Comparator.comparingInt((PartId id) -> id.order().length())
                    .thenComparing(PartId::order)
                    .thenComparingInt(PartId::line);

    private final Map<String, TreeMap<PartId, Work>> stations = new HashMap<>();
    private final Map<String, Long> menuSeconds = new HashMap<>();

    /** What a station has to do, oldest order first. */
    Collection<Work> at(String station) {
        TreeMap<PartId, Work> work = stations.get(station);
        return work == null ? List.of() : Collections.unmodifiableCollection(work.values());
    }

    int count(String station) {
        TreeMap<PartId, Work> work = stations.get(station);
        return work == null ? 0 : work.size();
    }

    /** The work that waits at a station, in seconds of one hand, by the menus' figures. */
    long backlogSeconds(String station) {
        return menuSeconds.getOrDefault(station, 0L);
    }

    Optional<Work> find(PartId id) {
        TreeMap<PartId, Work> work = stations.get(id.station());
        return work == null ? Optional.empty() : Optional.ofNullable(work.get(id));
    }

    boolean isOpen(PartId id) {
        return find(id).isPresent();
    }

    /** Whether nothing that goes into a part is still open. */
    boolean isReady(Work work) {
        for (PartId first : work.waitsFor()) {
            if (isOpen(first)) {
                return false;
            }
        }
        return true;
    }

    /**
     * How many parts of a station wait for a hand and nothing else.
     *
     * @param max what is counted at most
     */
    int takeable(String station, int max) {
        int count = 0;
        for (Work work : at(station)) {
            if (!work.isStarted() && isReady(work)) {
                count++;
                if (count == max) {
                    break;
                }
            }
        }
        return count;
    }

    /** A part as it is now, made by this menu. */
    void put(Part part, Menu menu) {
        String station = part.id().station();
        TreeMap<PartId, Work> work = stations.computeIfAbsent(station, s -> new TreeMap<>(BY_AGE));
        Work old = work.get(part.id());
        if (part.cancelled() || part.state() == PartState.UP) {
            remove(part.id());
            return;
        }
        boolean same = old != null && old.part().making().equals(part.making());
        Work now = same ? old.now(part) : Work.of(part, menu);
        work.put(part.id(), now);
        long more = now.menuSecondsInAll() - (old == null ? 0 : old.menuSecondsInAll());
        menuSeconds.merge(station, more, Long::sum);
    }

    void remove(PartId id) {
        TreeMap<PartId, Work> work = stations.get(id.station());
        Work old = work == null ? null : work.remove(id);
        if (old != null) {
            menuSeconds.merge(id.station(), -old.menuSecondsInAll(), Long::sum);
        }
    }

    void clear() {
        stations.clear();
        menuSeconds.clear();
    }
}
