package sopwell.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.kitchen.Cell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.Part;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;
import sopwell.orders.Outs;
import sopwell.till.Till;

/** Draws up the boards that show whole orders: the pass and the counter. Stateless. */
public final class OrderBoards {
    private OrderBoards() {}

    /** The pass: open orders, oldest first, then the last few that were handed. */
    public static PassBoard pass(
            Orders orders, Till till, Kitchen kitchen, Function<String, Menu> menus) {
        List<PassRow> rows = new ArrayList<>();
        orders.open().stream()
                .limit(Limits.BOARD_ROWS_MAX)
                .forEach(order -> rows.add(passRow(order, till.dueCents(order), kitchen, menus)));
        int below = orders.openCount() - rows.size();
        orders.lastHanded()
                .forEach(order -> rows.add(passRow(order, till.dueCents(order), kitchen, menus)));
        return new PassBoard(rows, below);
    }

    /** The counter: open orders, newest first, what is out, and what stations ask. */
    public static CounterBoard counter(
            Orders orders, Till till, Kitchen kitchen, Outs outs, Function<String, Menu> menus) {
        List<CounterRow> rows =
                orders.openNewestFirst().stream()
                        .limit(Limits.BOARD_ROWS_MAX)
                        .map(order -> counterRow(order, till.dueCents(order), kitchen))
                        .toList();
        return new CounterBoard(
                rows,
                orders.openCount() - rows.size(),
                outs.all(),
                CounterQueries.of(orders, kitchen, menus));
    }

    private static CounterRow counterRow(Order order, long dueCents, Kitchen kitchen) {
        return new CounterRow(
                order.id(),
                order.number(),
                order.name(),
                order.toGo(),
                order.version(),
                kitchen.stage(order),
                order.lines(),
                order.totals().totalCents(),
                dueCents,
                order.menuRevision(),
                order.takenAtMs(),
                order.isAtToldPrice());
    }

    private static PassRow passRow(
            Order order, long dueCents, Kitchen kitchen, Function<String, Menu> menus) {
        List<PassRow.PassPart> parts =
                kitchen.parts(order.id()).stream()
                        .sorted(Comparator.comparingInt((Part part) -> part.id().line()))
                        .map(part -> passPart(kitchen, part, menus))
                        .toList();
        OrderStage stage = kitchen.stage(order);
        boolean whole = stage == OrderStage.UP || stage == OrderStage.HANDED;
        long wholeAtMs =
                whole
                        ? kitchen.parts(order.id()).stream()
                                .mapToLong(Part::upAtMs)
                                .reduce(0, Math::max)
                        : 0;
        return new PassRow(
                order.id(),
                order.number(),
                order.name(),
                order.toGo(),
                stage,
                order.lines().stream().mapToInt(OrderLine::quantity).sum(),
                dueCents,
                parts,
                order.takenAtMs(),
                wholeAtMs);
    }

    private static PassRow.PassPart passPart(
            Kitchen kitchen, Part part, Function<String, Menu> menus) {
        Menu menu = menus.apply(part.making().menuRevision());
        List<CellWord> words = new ArrayList<>();
        for (Cell cell : Cells.of(menu, part.making(), part.id().station())) {
            cell.words().stream()
                    .filter(word -> word.tone() != CellWord.Tone.QUIET)
                    .filter(word -> !word.text().equals(itemName(menu, part)))
                    .filter(word -> !word.text().equals(menu.speech().here()))
                    .forEach(words::add);
        }
        return new PassRow.PassPart(
                part.id(),
                menu.station(part.id().station()).name(),
                part.making().quantity(),
                itemName(menu, part),
                words,
                part.state(),
                part.isDone(),
                part.cancelled(),
                kitchen.queries().openOn(part.id()).isPresent());
    }

    private static sopwell.menu.LocalText itemName(Menu menu, Part part) {
        return menu.item(part.making().selection().item()).name();
    }
}
