package sopwell.boards;

import java.util.List;

/**
 * What guests see: the numbers that are up, the newest or just called first. Immutable.
 *
 * @param below numbers that did not fit
 */
public record ReadyBoard(List<ReadyRow> rows, int below) implements Board {
    public ReadyBoard {
        rows = List.copyOf(rows);
    }
}
