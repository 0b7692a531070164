package sopwell.web.pages;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import sopwell.boards.CounterBoard;
import sopwell.boards.CounterRow;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.orders.OrderLine;
import sopwell.web.T;

/**
 * The open orders at the counter in one language. Immutable.
 *
 * @param menu the menu in force, for names; an item that it no longer has keeps its id
 */
public record CounterView(T t, Menu menu, ZoneId zone) {
    /** What stations ask, in words. */
    public QueryView queries() {
        return new QueryView(t);
    }

    /** What is out, in words, for the strip above the open orders. */
    public List<OutWord> outs(CounterBoard board) {
        return board.outs().stream()
                .filter(shortage -> shortage.out().isOn(menu))
                .map(this::out)
                .toList();
    }

    /**
     * One thing that is out.
     *
     * @param word the word of the word board that stands for it alone, or empty
     * @param gone whether none is left
     * @param known what it is, how many are left and until when, for the page's own reader
     */
    public record OutWord(String word, String name, String state, boolean gone, String known) {}

    private OutWord out(Shortage shortage) {
        Out out = shortage.out();
        String word =
                switch (out.kind()) {
                    case ITEM -> "i." + out.item();
                    case OPTION -> "o." + out.id();
                    case SIZE -> "";
                };
        String state = OutView.state(shortage, zone, t);
        String known = out + " " + shortage.left() + " " + shortage.untilMs();
        return new OutWord(word, t.name(out, menu), state, shortage.isGone(), known);
    }

    /** What an order has on it, short. */
    public String summary(CounterRow row) {
        return row.lines().stream().map(this::line).collect(Collectors.joining(", "));
    }

    /** What is due on an order that is not settled. */
    public String owed(CounterRow row) {
        return owed(t, row.dueCents());
    }

    static String owed(T t, long dueCents) {
        return dueCents > 0
                ? t.of("owed.unpaid", t.money(dueCents))
                : t.of("owed.back", t.money(-dueCents));
    }

    private String line(OrderLine line) {
        String id = line.selection().item();
        String name = menu.hasItem(id) ? t.local(menu.item(id).name()) : id;
        return line.quantity() == 1 ? name : line.quantity() + " " + name;
    }
}
