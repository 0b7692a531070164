package sopwell.boards;

import java.util.List;
import sopwell.kitchen.CellWord;
import sopwell.menu.LocalText;

/**
 * One column of a station's board: a build step. Immutable.
 *
 * @param total pieces in sight that have this step
 * @param counts pieces in sight by what their cell says, most first; what says nothing is left out
 */
public record Column(String step, LocalText name, int total, List<Count> counts) {
    public Column {
        counts = List.copyOf(counts);
    }

    /** So many pieces whose cell says this. */
    public record Count(CellWord word, int pieces) {}
}
