package sopwell.web.pages;

import java.util.List;
import java.util.Map;
import sopwell.boards.Column;
import sopwell.boards.PartRow;
import sopwell.boards.StationBoard;
import sopwell.kitchen.CellWord;
import sopwell.web.T;

/**
 * A station's board in one language. Immutable.
 *
 * @param widths the class that gives a step's column its width, by the step's id
 */
public record StationView(T t, StationBoard board, Map<String, String> widths) {
    private static final int COUNTS_SHOWN = 3;

    public StationView {
        widths = Map.copyOf(widths);
    }

    /** The class of a step's column. */
    public String width(String step) {
        return widths.getOrDefault(step, "");
    }

    /** How a row is called when it is read out. */
    public String spoken(PartRow row) {
        String who = row.name().isEmpty() ? "" : " " + row.name();
        return row.number() + who + ", " + row.quantity() + " × " + t.local(row.item());
    }

    /** Where a press on a row is sent. */
    public String address(PartRow row, String what) {
        return "/boards/" + board.station() + "/parts/" + row.rowId() + "/" + what;
    }

    /** What the row's main key does now: a change is seen before anything else. */
    public String main(PartRow row) {
        return row.unseen() ? "seen" : "up";
    }

    /** What the station must read first, or empty. */
    public String notice(PartRow row) {
        if (!row.unseen()) {
            return "";
        }
        String key = row.cancelled() ? "board.cancelled" : "board.changed";
        return row.digit() == 0 ? t.get(key + ".tap") : t.of(key, row.digit());
    }

    /** How loud a word is, as a class. */
    public String tone(CellWord word) {
        return switch (word.tone()) {
            case QUIET -> "quiet";
            case STRONG -> "strong";
            case NO -> "refused";
        };
    }

    /** A word as it is read: what is refused says so. */
    public String text(CellWord word) {
        String text = t.local(word.text());
        return word.tone() == CellWord.Tone.NO ? t.get("board.no") + " " + text : text;
    }

    /** Words of a list row: the item stands before them already. */
    public List<CellWord> words(PartRow row) {
        return row.cells().stream()
                .flatMap(cell -> cell.words().stream())
                .filter(word -> !word.text().equals(row.item()))
                .distinct()
                .toList();
    }

    /** Words of a list row that a change took away. */
    public List<CellWord> wordsBefore(PartRow row) {
        List<CellWord> now = words(row);
        return row.cells().stream()
                .flatMap(cell -> cell.before().stream())
                .filter(word -> !word.text().equals(row.item()) && !now.contains(word))
                .distinct()
                .toList();
    }

    /** The counts that the foot of a column has room for. */
    public List<Column.Count> counts(Column column) {
        return column.counts().stream().limit(COUNTS_SHOWN).toList();
    }
}
