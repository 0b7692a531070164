package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.boards.Column;
import sopwell.boards.StationBoard;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Step;
import sopwell.web.T;

/**
 * How wide each column of a build board must be so that none of its menu's words is cut: columns
 * keep their width whatever rows come and go. Stateless.
 *
 * <p>Widths are in quarters of the size of the letters, by rough widths of letters in a sans serif;
 * words break at spaces.
 */
final class ColumnWidths {
    private static final int QUARTERS = 4;
    private static final int QUARTERS_MIN = 8;
    private static final int QUARTERS_MAX = 40;

    /** How large quiet words and refusals stand against strong ones; see {@code rows.css}. */
    private static final double QUIET = 0.74;

    private static final double REFUSED = 0.86;

    /** The frame around a refusal. */
    private static final double REFUSED_EDGE_EM = 0.3;

    private ColumnWidths() {}

    /** The classes of a board's columns, by step. */
    static Map<String, String> of(StationBoard board, Menu menu, T t) {
        Map<String, String> widths = new LinkedHashMap<>();
        for (Column column : board.columns()) {
            double em = em(t.local(column.name())) * 0.4;
            for (Item item : menu.items()) {
                if (item.steps().contains(column.step())) {
                    em = Math.max(em, widest(menu, menu.step(column.step()), item, t));
                }
            }
            int quarters = (int) Math.ceil((em + 0.3) * QUARTERS);
            widths.put(
                    column.step(),
                    "w" + Math.min(QUARTERS_MAX, Math.max(QUARTERS_MIN, quarters)));
        }
        return widths;
    }

    private static double widest(Menu menu, Step step, Item item, T t) {
        double widest = 0;
        for (Step.Show show : step.shows()) {
            double em =
                    switch (show.what()) {
                        case ITEM -> longest(List.of(item.name()), t);
                        case SIZE -> sizes(item, t);
                        case SERVICE -> longest(List.of(menu.speech().here()), t);
                        case GROUP ->
                                item.groups().contains(show.group())
                                        ? group(menu.group(show.group()), t)
                                        : 0;
                    };
            widest = Math.max(widest, em);
        }
        return widest;
    }

    private static double sizes(Item item, T t) {
        double widest = 0;
        for (Size size : item.sizes()) {
            double em = longest(List.of(size.name()), t);
            boolean house = size.id().equals(item.defaultSize());
            widest = Math.max(widest, house ? em * QUIET : em);
        }
        return widest;
    }

    private static double group(Group group, T t) {
        List<LocalText> names = new ArrayList<>();
        group.options().forEach(option -> names.add(option.name()));
        double widest = longest(names, t);
        for (Option option : group.options()) {
            if (group.options().stream().anyMatch(o -> o.insteadOf().equals(option.id()))) {
                double no = em(t.get("board.no") + " " + t.local(option.name()));
                widest = Math.max(widest, no * REFUSED + REFUSED_EDGE_EM);
            }
        }
        return widest;
    }

    private static double longest(List<LocalText> names, T t) {
        double widest = 0;
        for (LocalText name : names) {
            for (String word : t.local(name).split(" ", -1)) {
                widest = Math.max(widest, em(word));
            }
        }
        return widest;
    }

    private static double em(String text) {
        double em = 0;
        for (char letter : text.toCharArray()) {
            if ("iljtfr.,'- ".indexOf(letter) >= 0) {
                em += 0.34;
            } else {
                em += "mwMW".indexOf(letter) >= 0 ? 0.88 : 0.59;
            }
        }
        return em;
    }
}
