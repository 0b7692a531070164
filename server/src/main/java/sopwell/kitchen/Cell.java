package sopwell.kitchen;

import java.util.List;

/**
 * What one build step of one part says. Immutable.
 *
 * @param step the step's id
 * @param words in reading order; none when the step has nothing to say
 */
public record Cell(String step, List<CellWord> words) {
    public Cell {
        words = List.copyOf(words);
    }
}
