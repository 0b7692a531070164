package sopwell.boards;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import sopwell.Limits;

/**
 * Gives the rows of one board their keypad digits. A row keeps its digit until it leaves, so that a
 * key pressed while another row leaves never works the wrong one; a free digit goes to the topmost
 * row without one. Not thread-safe.
 *
 * @param <R> what names a row
 */
public final class Digits<R> {
    private final Map<R, Integer> given = new HashMap<>();

    /** A row goes on under another name. */
    void pass(R from, R to) {
        Integer digit = given.remove(from);
        if (digit != null) {
            given.put(to, digit);
        }
    }

    /**
     * The digits of these rows, top first; 0 for a row that must wait for one.
     *
     * @param rows the rows on the board now, top first; digits of rows that are gone become free
     */
    public Map<R, Integer> give(Collection<R> rows) {
        given.keySet().retainAll(rows);
        TreeSet<Integer> free = new TreeSet<>();
        for (int digit = 1; digit <= Limits.BOARD_DIGITS_MAX; digit++) {
            free.add(digit);
        }
        free.removeAll(given.values());
        Map<R, Integer> digits = new LinkedHashMap<>();
        for (R row : rows) {
            Integer digit = given.get(row);
            if (digit == null && !free.isEmpty()) {
                digit = free.pollFirst();
                given.put(row, digit);
            }
            digits.put(row, digit == null ? 0 : digit);
        }
        return digits;
    }
}
