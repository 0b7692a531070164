package sopwell.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.boards.PassRow;
import sopwell.kitchen.CellWord;
import sopwell.web.T;

/** The pass in one language. Immutable. */
public record PassView(T t) {
    /** Missing parts that a row has room to name; of more, only the stations are named. */
    private static final int MISSING_SHOWN = 2;

    /** Which of the screen's three lists a row belongs to. */
    public String zone(PassRow row) {
        return switch (row.stage()) {
            case HANDED -> "handed";
            case UP -> "whole";
            case WAITING, STARTED, VOID -> "open";
        };
    }

    /** The order's lines: first those that something is missing of. */
    public List<Line> lines(PassRow row) {
        Map<Integer, List<PassRow.PassPart>> byLine = new TreeMap<>();
        for (PassRow.PassPart part : row.parts()) {
            byLine.computeIfAbsent(part.part().line(), line -> new ArrayList<>()).add(part);
        }
        List<Line> lines = new ArrayList<>();
        for (List<PassRow.PassPart> parts : byLine.values()) {
            List<CellWord> words = parts.stream().flatMap(p -> p.words().stream()).toList();
            List<PassRow.PassPart> missing = parts.stream().filter(p -> !p.done()).toList();
            PassRow.PassPart first = parts.get(0);
            lines.add(new Line(first.quantity(), t.local(first.item()), words, missing));
        }
        lines.sort(Comparator.comparing((Line line) -> line.missing().isEmpty()));
        return lines;
    }

    /**
     * One line of an order.
     *
     * @param missing its parts that are not up yet
     */
    public record Line(
            int quantity, String item, List<CellWord> words, List<PassRow.PassPart> missing) {
        public Line {
            words = List.copyOf(words);
            missing = List.copyOf(missing);
        }
    }

    /** The order's lines that something is missing of. */
    public List<Line> missing(PassRow row) {
        return lines(row).stream().filter(line -> !line.missing().isEmpty()).toList();
    }

    /** Whether more is missing of an order than its row can name, so that stations stand for it. */
    public boolean crowded(PassRow row) {
        return row.parts().stream().filter(part -> !part.done()).count() > MISSING_SHOWN;
    }

    /** How many pieces each station still has to put up, in the order of the parts. */
    public Map<String, Integer> missingByStation(PassRow row) {
        Map<String, Integer> pieces = new LinkedHashMap<>();
        row.parts().stream()
                .filter(part -> !part.done())
                .forEach(p -> pieces.merge(t.local(p.station()), p.quantity(), Integer::sum));
        return pieces;
    }

    /** How far a part is, in a word. */
    public String state(PassRow.PassPart part) {
        if (part.cancelled()) {
            return t.get("pass.cancelled");
        }
        if (part.asked()) {
            return t.get("pass.asked");
        }
        return switch (part.state()) {
            case WAITING -> t.get("pass.waiting");
            case STARTED -> t.get("pass.begun");
            case UP -> t.get(part.done() ? "pass.up" : "pass.unseen");
        };
    }

    /** A word as it is read: what is refused says so. */
    public String text(CellWord word) {
        String text = t.local(word.text());
        return word.tone() == CellWord.Tone.NO ? t.get("board.no") + " " + text : text;
    }

    /** In how many bags an order is, or empty when nobody has counted. */
    public String bags(PassRow row) {
        return switch (row.bags()) {
            case 0 -> "";
            case 1 -> t.get("pass.bag");
            default -> t.of("pass.bags", row.bags());
        };
    }

    /** That its number was called, or empty. */
    public String called(PassRow row) {
        return switch (row.calls()) {
            case 0 -> "";
            case 1 -> t.get("pass.called");
            default -> t.of("pass.called.times", row.calls());
        };
    }

    /** Since when what a station still owes is in its state: the longest of its parts. */
    public long sinceMs(PassRow row, String station) {
        return row.parts().stream()
                .filter(part -> !part.done() && t.local(part.station()).equals(station))
                .mapToLong(PassRow.PassPart::sinceMs)
                .min()
                .orElse(row.placedAtMs());
    }

    /** What an order contains, in a short line. */
    public String contains(PassRow row) {
        List<String> names = row.allergens().stream().map(n -> t.under("allergen", n)).toList();
        return t.of("pass.contains", String.join(", ", names));
    }

    /** What is due on an order that is not settled. */
    public String owed(PassRow row) {
        return CounterView.owed(t, row.dueCents());
    }

    /** How many pieces an order has. */
    public String pieces(PassRow row) {
        return row.pieces() == 1 ? t.get("pass.piece") : t.of("pass.pieces", row.pieces());
    }
}
