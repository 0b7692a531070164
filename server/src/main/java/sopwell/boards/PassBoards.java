package sopwell.boards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.kitchen.Cell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Pass;
import sopwell.menu.Allergens;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;
import sopwell.till.Till;

/** Draws up the boards of orders that are on their way out: the pass and the guests'. Stateless. */
public final class PassBoards {
    private PassBoards() {}

    /**
     * What these boards are drawn from.
     *
     * @param menus the menu of a revision
     */
    public record Sources(
            Orders orders, Till till, Kitchen kitchen, Pass pass, Function<String, Menu> menus) {}

    /**
     * The pass.
     *
     * @param digits the digits of its whole orders
     */
    public static PassBoard pass(Sources from, Digits<String> digits) {
        List<Order> open = new ArrayList<>();
        List<Order> whole = new ArrayList<>();
        for (Order order : from.orders().open()) {
            (from.kitchen().stage(order) == OrderStage.UP ? whole : open).add(order);
        }
        whole.sort(Comparator.comparingLong(order -> from.kitchen().wholeAtMs(order.id())));
        List<PassRow> openShown = rows(from, shown(open));
        List<PassRow> wholeShown = rows(from, shown(whole));
        Map<String, Integer> keys = digits.give(wholeShown.stream().map(PassRow::order).toList());
        return new PassBoard(
                openShown,
                wholeShown.stream().map(row -> row.withDigit(keys.get(row.order()))).toList(),
                rows(from, from.orders().lastHanded()),
                open.size() - openShown.size(),
                whole.size() - wholeShown.size());
    }

    /** The guests' screen: whole orders that nobody has fetched. */
    public static ReadyBoard ready(Orders orders, Kitchen kitchen, Pass pass) {
        List<ReadyRow> rows = new ArrayList<>();
        for (Order order : orders.open()) {
            if (kitchen.stage(order) == OrderStage.UP) {
                long freshAtMs =
                        Math.max(kitchen.wholeAtMs(order.id()), pass.of(order.id()).calledAtMs());
                rows.add(new ReadyRow(order.number(), order.name(), freshAtMs));
            }
        }
        rows.sort(Comparator.comparingLong(ReadyRow::freshAtMs).reversed());
        List<ReadyRow> shown = shown(rows);
        return new ReadyBoard(shown, rows.size() - shown.size());
    }

    private static <R> List<R> shown(List<R> rows) {
        return rows.subList(0, Math.min(rows.size(), Limits.BOARD_ROWS_MAX));
    }

    private static List<PassRow> rows(Sources from, Collection<Order> orders) {
        return orders.stream().map(order -> row(from, order)).toList();
    }

    private static PassRow row(Sources from, Order order) {
        Kitchen kitchen = from.kitchen();
        List<PassRow.PassPart> parts =
                kitchen.parts(order.id()).stream()
                        .sorted(Comparator.comparingInt((Part part) -> part.id().line()))
                        .map(part -> part(kitchen, part, from.menus()))
                        .toList();
        OrderStage stage = kitchen.stage(order);
        boolean whole = stage == OrderStage.UP || stage == OrderStage.HANDED;
        long wholeAtMs = whole ? kitchen.wholeAtMs(order.id()) : 0;
        Pass.Standing standing = from.pass().of(order.id());
        return new PassRow(
                order.id(),
                0,
                order.number(),
                order.name(),
                order.toGo(),
                stage,
                order.lines().stream().mapToInt(OrderLine::quantity).sum(),
                from.till().dueCents(order),
                parts,
                order.takenAtMs(),
                wholeAtMs,
                whole ? standing.callsSince(wholeAtMs) : 0,
                standing.calledAtMs(),
                standing.bags(),
                allergens(order, from.menus().apply(order.menuRevision())));
    }

    private static List<String> allergens(Order order, Menu menu) {
        Set<String> allergens = new LinkedHashSet<>();
        for (OrderLine line : order.lines()) {
            allergens.addAll(Allergens.of(menu, line.selection()));
        }
        return List.copyOf(allergens);
    }

    private static PassRow.PassPart part(Kitchen kitchen, Part part, Function<String, Menu> menus) {
        Menu menu = menus.apply(part.making().menuRevision());
        LocalText item = menu.item(part.making().selection().item()).name();
        List<CellWord> words = new ArrayList<>();
        for (Cell cell : Cells.of(menu, part.making(), part.id().station())) {
            cell.words().stream()
                    .filter(word -> word.tone() != CellWord.Tone.QUIET)
                    .filter(word -> !word.text().equals(item))
                    .filter(word -> !word.text().equals(menu.speech().here()))
                    .forEach(words::add);
        }
        return new PassRow.PassPart(
                part.id(),
                menu.station(part.id().station()).name(),
                part.making().quantity(),
                item,
                words,
                part.state(),
                part.isDone(),
                part.cancelled(),
                kitchen.queries().openOn(part.id()).isPresent(),
                sinceMs(part));
    }

    private static long sinceMs(Part part) {
        return part.state() == PartState.WAITING
                ? part.placedAtMs()
                : Math.max(part.startedAtMs(), part.upAtMs());
    }
}
