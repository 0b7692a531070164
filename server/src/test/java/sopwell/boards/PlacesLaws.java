package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.boards.Places.Wanted;
import sopwell.kitchen.PartId;

/** Rows stay where a cook has learned that they are. */
class PlacesLaws {
    private static final int RUNS = 200;
    private static final int STEPS = 60;

    @Test
    void noRowEverPassesAnotherAndNoNewOnePushesThoseInSight() {
        long settled = 0;
        for (int seed = 0; seed < RUNS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Places places = new Places();
            Map<PartId, Wanted> rows = new HashMap<>();
            List<PartId> before = List.of();
            Map<PartId, Integer> digits = Map.of();
            for (int step = 0; step < STEPS; step++) {
                Set<PartId> fresh = change(rows, random, seed * STEPS + step);
                List<PartId> after = places.place(new ArrayList<>(rows.values()));
                assertEquals(new HashSet<>(after), rows.keySet(), "seed " + seed);
                assertEquals(kept(before, rows.keySet()), kept(after, fresh, before));
                for (PartId row : fresh) {
                    int at = after.indexOf(row);
                    int stayed = kept(before, rows.keySet()).size();
                    assertTrue(
                            at >= Math.min(stayed, Limits.BOARD_SETTLED_ROWS),
                            "seed " + seed + ": a new row came in at " + at);
                    settled += stayed > Limits.BOARD_SETTLED_ROWS ? 1 : 0;
                }
                Map<PartId, Integer> now = places.digits(after);
                for (PartId row : kept(before, rows.keySet())) {
                    if (digits.get(row) > 0) {
                        assertEquals(digits.get(row), now.get(row), "seed " + seed);
                    }
                }
                before = after;
                digits = now;
            }
        }
        assertTrue(settled > RUNS, "boards were full often enough: " + settled);
    }

    @Test
    void whatIsBroughtBackStandsByItsAgeAndWhatIsNewByItsStart() {
        Places places = new Places();
        List<Wanted> rows = new ArrayList<>();
        for (int n = 0; n < Limits.BOARD_SETTLED_ROWS; n++) {
            rows.add(new Wanted(List.of(id(n)), n, n, false));
        }
        places.place(rows);
        rows.add(new Wanted(List.of(id(100)), 900, 100, false));
        places.place(rows);
        rows.add(new Wanted(List.of(id(101)), 300, 101, false));
        rows.add(new Wanted(List.of(id(102)), 0, -5, true));
        List<PartId> placed = places.place(rows);
        assertEquals(id(102), placed.get(0));
        assertEquals(List.of(id(101), id(100)), placed.subList(placed.size() - 2, placed.size()));
    }

    /** Some rows leave, some come; the ids of those that came. */
    private static Set<PartId> change(
            Map<PartId, Wanted> rows, SplittableRandom random, int place) {
        rows.keySet().removeIf(row -> random.nextInt(12) == 0);
        Set<PartId> fresh = new HashSet<>();
        for (int n = random.nextInt(4); n > 0; n--) {
            PartId id = id(place * 10 + n);
            rows.put(id, new Wanted(List.of(id), random.nextInt(1_000), place, false));
            fresh.add(id);
        }
        return fresh;
    }

    private static List<PartId> kept(List<PartId> rows, Set<PartId> those) {
        return rows.stream().filter(those::contains).toList();
    }

    private static List<PartId> kept(List<PartId> rows, Set<PartId> fresh, List<PartId> before) {
        return rows.stream().filter(r -> !fresh.contains(r) && before.contains(r)).toList();
    }

    private static PartId id(int n) {
        return new PartId("20260114-0001", n + 1, "line");
    }
}
