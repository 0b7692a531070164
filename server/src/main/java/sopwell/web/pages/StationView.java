package sopwell.web.pages;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.boards.Column;
import sopwell.boards.PartRow;
import sopwell.boards.StationBoard;
import sopwell.boards.StepCell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.PartId;
import sopwell.web.T;

/**
 * A station's board in one language. Immutable.
 *
 * @param probes the widest texts of each column, by the step's id
 */
public record StationView(T t, StationBoard board, Map<String, List<Probe>> probes) {
    private static final int COUNTS_SHOWN = 3;

    /** How many letters of a list's row stand on two lines in full size, and in two thirds. */
    private static final int LETTERS_FULL = 44;

    private static final int LETTERS_SMALL = 72;

    public StationView {
        probes = Map.copyOf(probes);
    }

    /**
     * A text that a column must have room for.
     *
     * @param tone how it is set
     */
    public record Probe(String tone, String text) {}

    /** The texts that a step's column must have room for. */
    public List<Probe> probes(String step) {
        return probes.getOrDefault(step, List.of());
    }

    /** Three lines in a cell for two are set smaller. */
    public String crowd(StepCell cell) {
        double lines = cell.changed() ? 0.6 : 0;
        for (CellWord word : cell.words()) {
            boolean breaks = word.tone() != CellWord.Tone.NO && t.local(word.text()).contains(" ");
            lines += breaks ? 2 : 1;
        }
        return lines > 2 ? " crowded" : "";
    }

    /** Many words in a list's row are set smaller. */
    public String crowd(PartRow row) {
        int letters = t.local(row.item()).length();
        for (CellWord word : words(row)) {
            letters += text(word).length() + 2;
        }
        for (CellWord word : wordsBefore(row)) {
            letters += text(word).length() + 2;
        }
        if (letters <= LETTERS_FULL) {
            return "";
        }
        return letters <= LETTERS_SMALL ? " crowded" : " packed";
    }

    /** How a row is called when it is read out. */
    public String spoken(PartRow row) {
        String who = row.name().isEmpty() ? "" : " " + row.name();
        return row.number() + who + ", " + row.quantity() + " × " + t.local(row.item());
    }

    /** What the station has asked, or was answered, in words. */
    public QueryView queries() {
        return new QueryView(t);
    }

    /** The class of a row with a line of words under its cells, or nothing. */
    public String noted(PartRow row) {
        if (row.query().isPresent()) {
            return " noted";
        }
        return row.again().isPresent() || !row.waits().isEmpty() ? " noted waits" : "";
    }

    /** Where it is asked what of a row is made again. */
    public String remake(PartRow row) {
        String others =
                row.parts().stream().skip(1).map(PartId::toString).collect(Collectors.joining("+"));
        return address(row, "remake") + (others.isEmpty() ? "" : "?with=" + others);
    }

    /** The station that a row's part goes on to, or empty when it goes to the guest. */
    public String feeds(PartRow row) {
        return board.loads()
                .map(loads -> loads.feeds().get(row.part()))
                .map(to -> t.of("load.feeds", t.local(to)))
                .orElse("");
    }

    /** The classes of a cell that is changed, asked about, or crowded. */
    public String marks(StepCell cell) {
        return (cell.changed() ? " changed" : "") + (cell.asked() ? " asked" : "") + crowd(cell);
    }

    /** Where a press on a row is sent. */
    public String address(PartRow row, String what) {
        return "/boards/" + board.station() + "/parts/" + row.rowId() + "/" + what;
    }

    /** What a press on a row of several parts is sent with, or nothing. */
    public String with(PartRow row) {
        if (row.parts().size() == 1) {
            return null;
        }
        String others =
                row.parts().stream().skip(1).map(PartId::toString).collect(Collectors.joining(" "));
        return "{\"with\":\"" + others + "\"}";
    }

    /** What the row's main key does now: a change is seen first, then what goes into it is had. */
    public String main(PartRow row) {
        if (row.unseen()) {
            return "seen";
        }
        return row.waits().isEmpty() ? "up" : "have";
    }

    /** What the station must read first, or empty. */
    public String notice(PartRow row) {
        if (!row.unseen()) {
            return "";
        }
        String key = "board.changed";
        if (row.cancelled()) {
            key = "board.cancelled";
        } else if (row.query().isPresent() && !row.query().get().query().changed()) {
            key = "board.answered";
        }
        return row.digit() == 0 ? t.get(key + ".tap") : t.of(key, row.digit());
    }

    /** How loud a word is, as a class. */
    public String tone(CellWord word) {
        return tone(word.tone());
    }

    static String tone(CellWord.Tone tone) {
        return switch (tone) {
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
