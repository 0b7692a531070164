package sopwell.web.pages;

import java.util.List;
import sopwell.boards.PassRow;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.OrderStage;
import sopwell.web.T;

/** The pass in one language. Immutable. */
public record PassView(T t) {
    /** Which of the screen's two lists a row belongs to. */
    public String zone(PassRow row) {
        return row.stage() == OrderStage.HANDED ? "handed" : "open";
    }

    /** Whether everything is up. */
    public boolean whole(PassRow row) {
        return row.stage() == OrderStage.UP;
    }

    /** What is not up yet, which is what the pass asks for. */
    public List<PassRow.PassPart> missing(PassRow row) {
        return row.parts().stream().filter(part -> !part.done()).toList();
    }

    /** What is up. */
    public List<PassRow.PassPart> made(PassRow row) {
        return row.parts().stream().filter(PassRow.PassPart::done).toList();
    }

    /** How far a part is, in a word. */
    public String state(PassRow.PassPart part) {
        if (part.cancelled()) {
            return t.get("pass.cancelled");
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

    /** How many pieces an order has. */
    public String pieces(PassRow row) {
        return row.pieces() == 1 ? t.get("pass.piece") : t.of("pass.pieces", row.pieces());
    }
}
