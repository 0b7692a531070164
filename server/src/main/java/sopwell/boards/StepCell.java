package sopwell.boards;

import java.util.List;
import sopwell.kitchen.CellWord;

/**
 * One column of one row. Immutable.
 *
 * @param step the build step's id
 * @param applies whether the row has this step at all
 * @param words what it says now
 * @param changed whether it said something else before a change that is not seen yet
 * @param before what it said before, when changed
 * @param asked whether the station asks about it and waits for an answer
 */
public record StepCell(
        String step,
        boolean applies,
        List<CellWord> words,
        boolean changed,
        List<CellWord> before,
        boolean asked) {
    public StepCell {
        words = List.copyOf(words);
        before = List.copyOf(before);
    }
}
