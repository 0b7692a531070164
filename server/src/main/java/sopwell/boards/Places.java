package sopwell.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.kitchen.PartId;
import sopwell.kitchen.Settler;

/**
 * Where each row of one board stands. Not thread-safe.
 *
 * <p>Nothing is shuffled under a cook's hand: a row moves only when another leaves. A new row takes
 * its place by when it must be begun, but never above the {@link Limits#BOARD_SETTLED_ROWS} that a
 * screen may show; a row that was split off another stands right under it; and one that was brought
 * back, by the one who wants it in sight, stands by its age.
 */
public final class Places {
    private final Settler starts = new Settler();
    private final Settler ups = new Settler();
    private final LoadTimes loads = new LoadTimes();
    private final PanTimes pans = new PanTimes();
    private final Digits<PartId> digits = new Digits<>();
    private final List<Standing> standing = new ArrayList<>();
    private final Map<PartId, PartId> rowOf = new HashMap<>();

    /** A row on the board, and what it was placed by. */
    private record Standing(PartId lead, long startByMs, long placedAtMs) {}

    /**
     * A row that wants a place.
     *
     * @param parts what is joined in it, the one that names the row first
     * @param startByMs when it is to be begun, milliseconds since 1970-01-01 UTC
     * @param placedAtMs since when its guest waits
     * @param begun whether work on it has begun
     */
    public record Wanted(List<PartId> parts, long startByMs, long placedAtMs, boolean begun) {
        public Wanted {
            parts = List.copyOf(parts);
        }

        PartId lead() {
            return parts.get(0);
        }
    }

    /** The names of the rows as they stand now, top first. */
    public List<PartId> place(List<Wanted> rows) {
        Map<PartId, Wanted> wanted = new LinkedHashMap<>();
        rows.forEach(row -> wanted.put(row.lead(), row));
        Set<PartId> known = new HashSet<>();
        standing.forEach(row -> known.add(row.lead()));
        List<Wanted> fresh = new ArrayList<>(wanted.values());
        fresh.removeIf(row -> known.contains(row.lead()));
        fresh.removeIf(row -> inherits(row, wanted));
        standing.removeIf(row -> !wanted.containsKey(row.lead()));
        fresh.sort(Comparator.comparingLong(Wanted::startByMs));
        fresh.forEach(this::insert);
        rowOf.clear();
        rows.forEach(row -> row.parts().forEach(part -> rowOf.put(part, row.lead())));
        starts.keepOnly(wanted.keySet());
        return standing.stream().map(Standing::lead).toList();
    }

    /** The digits of these rows, top first; 0 for a row that must wait for one. */
    public Map<PartId, Integer> digits(List<PartId> rows) {
        return digits.give(rows);
    }

    /** The times of the board's loads, as they are shown. */
    LoadTimes loads() {
        return loads;
    }

    /** The times of the board's pans, as they are shown. */
    PanTimes pans() {
        return pans;
    }

    /** When a row is to be begun, as it is shown: without jitter. */
    long startBy(PartId row, long startByMs, long nowMs) {
        return starts.settled(row, startByMs, nowMs);
    }

    /** When what a row waits for is expected, as it is shown: without jitter. */
    long expected(PartId part, long upAtMs, long nowMs) {
        return ups.settled(part, upAtMs, nowMs);
    }

    /** Forgets when anything but these was expected. */
    void keepExpected(Set<PartId> parts) {
        ups.keepOnly(parts);
    }

    /** What is left of a row whose first part is gone keeps the row's place and digit. */
    private boolean inherits(Wanted row, Map<PartId, Wanted> wanted) {
        PartId former = rowOf.get(row.lead());
        if (former == null || wanted.containsKey(former)) {
            return false;
        }
        for (int at = 0; at < standing.size(); at++) {
            if (standing.get(at).lead().equals(former)) {
                standing.set(at, new Standing(row.lead(), row.startByMs(), row.placedAtMs()));
                digits.pass(former, row.lead());
                return true;
            }
        }
        return false;
    }

    private void insert(Wanted row) {
        Standing placed = new Standing(row.lead(), row.startByMs(), row.placedAtMs());
        standing.add(placeOf(row), placed);
    }

    private int placeOf(Wanted row) {
        PartId former = rowOf.get(row.lead());
        if (former != null) {
            for (int at = 0; at < standing.size(); at++) {
                if (standing.get(at).lead().equals(former)) {
                    return at + 1;
                }
            }
        }
        int at = row.begun() ? 0 : Math.min(standing.size(), Limits.BOARD_SETTLED_ROWS);
        while (at < standing.size() && !standsBefore(row, standing.get(at))) {
            at++;
        }
        return at;
    }

    private static boolean standsBefore(Wanted row, Standing other) {
        return row.begun()
                ? row.placedAtMs() < other.placedAtMs()
                : row.startByMs() < other.startByMs();
    }
}
