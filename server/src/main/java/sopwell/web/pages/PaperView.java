package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import sopwell.call.ReadBack;
import sopwell.desk.Stand;
import sopwell.kitchen.Cell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Part;
import sopwell.menu.Allergens;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.web.T;

/**
 * What stands on paper about one order. Immutable.
 *
 * @param copy how many of the same were printed before; 0 for the first
 * @param ready when it should be ready, at the stand's time; empty when it was handed or void
 * @param dueCents what is to be paid; negative when money is due back
 */
public record PaperView(
        Order order,
        int copy,
        String placed,
        String ready,
        List<Line> lines,
        List<String> allergens,
        long dueCents) {
    public PaperView {
        lines = List.copyOf(lines);
        allergens = List.copyOf(allergens);
    }

    /**
     * One line of the order, or one part of it.
     *
     * @param text what it is, in words
     * @param price what it costs, empty on a station's ticket
     * @param steps what to do, in order; empty on a slip
     */
    public record Line(int quantity, String text, String price, List<Step> steps) {
        public Line {
            steps = List.copyOf(steps);
        }
    }

    /** The words of one build step. */
    public record Step(String name, String words) {}

    /**
     * Writes papers about one order.
     *
     * @param copy how many of the same were printed before
     */
    record Writer(Stand stand, Order order, int copy, T t) {
        /** The guest's slip. */
        PaperView slip() {
            Menu menu = stand.menuOf(order.menuRevision());
            List<Line> lines = new ArrayList<>();
            for (OrderLine line : order.lines()) {
                String said = ReadBack.say(menu, t.lang(), 1, line.selection());
                lines.add(new Line(line.quantity(), said, t.money(line.cents()), List.of()));
            }
            return view(lines);
        }

        /** A station's ticket. */
        PaperView ticket(String station) {
            List<Line> lines = new ArrayList<>();
            for (Part part : stand.kitchen().parts(order.id())) {
                if (part.id().station().equals(station) && !part.cancelled()) {
                    lines.add(line(stand.menuOf(part.making().menuRevision()), part));
                }
            }
            return view(lines);
        }

        private PaperView view(List<Line> lines) {
            Menu menu = stand.menuOf(order.menuRevision());
            Set<String> allergens = new LinkedHashSet<>();
            for (OrderLine line : order.lines()) {
                allergens.addAll(Allergens.of(menu, line.selection()));
            }
            return new PaperView(
                    order,
                    copy,
                    time(0),
                    order.isOpen() ? ready() : "",
                    lines,
                    allergens.stream().map(name -> t.under("allergen", name)).toList(),
                    stand.till().dueCents(order));
        }

        private String ready() {
            int from = order.quote().fromSeconds();
            int to = order.quote().toSeconds();
            return t.of("paper.ready", time(from), time(to));
        }

        /** A time of day so many seconds after the order was placed. */
        private String time(int seconds) {
            long atMs = order.placedAtMs() + TimeUnit.SECONDS.toMillis(seconds);
            return t.time(atMs, stand.settings().zone());
        }

        private Line line(Menu menu, Part part) {
            List<Step> steps = new ArrayList<>();
            for (Cell cell : Cells.of(menu, part.making(), part.id().station())) {
                List<String> words = cell.words().stream().map(this::word).toList();
                if (!words.isEmpty()) {
                    String name = t.local(menu.step(cell.step()).name());
                    steps.add(new Step(name, String.join(", ", words)));
                }
            }
            Item item = menu.item(part.making().selection().item());
            return new Line(part.making().quantity(), t.local(item.name()), "", steps);
        }

        /** Paper has no weights that last in a wet hand, so what departs stands in capitals. */
        private String word(CellWord word) {
            String text = t.local(word.text());
            return switch (word.tone()) {
                case QUIET -> text;
                case STRONG -> text.toUpperCase(Locale.ROOT);
                case NO -> t.get("board.no").toUpperCase(Locale.ROOT) + " " + text;
            };
        }
    }
}
