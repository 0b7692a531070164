package sopwell.mix;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Size;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;

/**
 * What one business day sold. Immutable.
 *
 * @param orders orders that count, handed or not
 * @param voids orders that were cancelled and don't count
 * @param takenBefore orders that count and were taken while the stand could not be asked
 * @param toldPrices orders that count at the prices of an earlier menu, as their guests were told
 * @param subtotalCents sales before tax
 * @param items pieces by item and size, in the menu's order
 * @param tables one for each item with at least two modifier groups that sold
 */
public record DayMix(
        LocalDate date,
        int orders,
        int voids,
        int pieces,
        int takenBefore,
        int toldPrices,
        long subtotalCents,
        List<ItemCount> items,
        List<MixTable> tables) {
    private static final LocalText NO_TEXT = new LocalText("", "");

    public DayMix {
        items = List.copyOf(items);
        tables = List.copyOf(tables);
    }

    /**
     * The mix of a day's orders.
     *
     * @param menu the menu in force, for names and their order
     * @param menus the menu of a revision, for lines sold from an earlier one
     */
    public static DayMix of(
            LocalDate date, Orders orders, Menu menu, Function<String, Menu> menus) {
        Map<String, ItemCount> counts = new LinkedHashMap<>();
        Map<String, MixTableBuilder> tables = new LinkedHashMap<>();
        menu.items().forEach(item -> startItem(item, counts));
        int counted = 0;
        int voids = 0;
        int pieces = 0;
        int takenBefore = 0;
        int toldPrices = 0;
        long subtotalCents = 0;
        for (Order order : orders.all()) {
            if (order.isVoid()) {
                voids++;
                continue;
            }
            counted++;
            takenBefore += order.isTakenBefore() ? 1 : 0;
            toldPrices += order.isAtToldPrice() ? 1 : 0;
            subtotalCents += order.totals().subtotalCents();
            Menu its = menus.apply(order.menuRevision());
            for (OrderLine line : order.lines()) {
                pieces += line.quantity();
                Item item = its.item(line.selection().item());
                count(item, line, counts);
                if (item.groups().size() >= 2) {
                    tables.computeIfAbsent(item.id(), id -> new MixTableBuilder(its, item))
                            .add(line.selection(), line.quantity());
                }
            }
        }
        List<ItemCount> sold = counts.values().stream().filter(c -> c.pieces() > 0).toList();
        List<MixTable> made = new ArrayList<>();
        for (Item item : menu.items()) {
            MixTableBuilder table = tables.remove(item.id());
            if (table != null) {
                made.add(table.build());
            }
        }
        tables.values().forEach(table -> made.add(table.build()));
        return new DayMix(
                date, counted, voids, pieces, takenBefore, toldPrices, subtotalCents, sold, made);
    }

    private static void startItem(Item item, Map<String, ItemCount> counts) {
        if (item.sizes().isEmpty()) {
            counts.put(
                    key(item.id(), ""), new ItemCount(item.id(), item.name(), "", NO_TEXT, 0, 0));
        }
        for (Size size : item.sizes()) {
            counts.put(
                    key(item.id(), size.id()),
                    new ItemCount(item.id(), item.name(), size.id(), size.name(), 0, 0));
        }
    }

    private static void count(Item item, OrderLine line, Map<String, ItemCount> counts) {
        Selection selection = line.selection();
        LocalText sizeName = item.size(selection.size()).map(Size::name).orElse(NO_TEXT);
        ItemCount more =
                new ItemCount(
                        item.id(),
                        item.name(),
                        selection.size(),
                        sizeName,
                        line.quantity(),
                        line.cents());
        counts.merge(key(item.id(), selection.size()), more, DayMix::sum);
    }

    private static ItemCount sum(ItemCount one, ItemCount other) {
        return new ItemCount(
                one.item(),
                one.name(),
                one.size(),
                one.sizeName(),
                one.pieces() + other.pieces(),
                one.cents() + other.cents());
    }

    private static String key(String item, String size) {
        return item + "/" + size;
    }
}
