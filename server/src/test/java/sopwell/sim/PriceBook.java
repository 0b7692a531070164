package sopwell.sim;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import sopwell.log.Recorded;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.StandSettings;
import sopwell.sim.OrderBook.TrueOrder;

/**
 * What orders cost, worked out anew with decimals. Fed before the order book, so that it sees what
 * an order was. Belongs to one thread.
 */
final class PriceBook {
    private static final BigDecimal THOUSANDTHS_OF_PERCENT = BigDecimal.valueOf(100_000);

    private final StandSettings settings;
    private final OrderBook orders;
    private final Complaints complaints;
    private OrderEvent.OrderPlaced untold;

    PriceBook(StandSettings settings, OrderBook orders, Complaints complaints) {
        this.settings = settings;
        this.orders = orders;
        this.complaints = complaints;
    }

    void take(Recorded recorded) {
        OrderEvent.OrderPlaced before = untold;
        untold = null;
        boolean told = recorded.event() instanceof OrderEvent.OrderTold;
        if (before != null) {
            for (OrderLine line : before.lines()) {
                price(line, told ? orders.menus() : menus(before.menuRevision()), before.order());
            }
        }
        if (recorded.event() instanceof OrderEvent.OrderPlaced placed) {
            untold = placed;
            totals(placed.lines(), Discount.NONE, placed.totals(), placed.order());
        } else if (recorded.event() instanceof OrderEvent.OrderChanged changed) {
            changed(orders.about(changed), changed);
        } else if (recorded.event() instanceof OrderEvent.OrderDiscounted less) {
            TrueOrder order = orders.about(less);
            totals(order.lines, less.discount(), less.totals(), less.order());
        }
    }

    private void changed(TrueOrder before, OrderEvent.OrderChanged changed) {
        for (OrderLine line : changed.lines()) {
            OrderLine old =
                    before.lines.stream()
                            .filter(one -> one.line() == line.line())
                            .findFirst()
                            .orElse(null);
            if (old != null && old.selection().equals(line.selection())) {
                complaints.same(
                        old.unitCents(),
                        line.unitCents(),
                        Invariant.PRICES,
                        "the price of a line that stands, on",
                        changed.order());
            } else {
                price(line, menus(changed.menuRevision()), changed.order());
            }
        }
        totals(changed.lines(), before.discount, changed.totals(), changed.order());
    }

    private List<Menu> menus(String revision) {
        return List.of(orders.menuOf(revision));
    }

    private void price(OrderLine line, List<Menu> menus, String order) {
        List<Long> prices = new ArrayList<>();
        for (Menu menu : menus) {
            if (menu.hasItem(line.selection().item())) {
                prices.add(unitCents(menu, line.selection()));
            }
        }
        complaints.that(
                prices.contains(line.unitCents()),
                Invariant.PRICES,
                "",
                List.of(line, "on", order, "should be one of", prices));
    }

    private static long unitCents(Menu menu, Selection selection) {
        Item item = menu.item(selection.item());
        long cents =
                item.sizes().stream()
                        .filter(size -> size.id().equals(selection.size()))
                        .mapToLong(size -> size.priceCents())
                        .findFirst()
                        .orElse(item.priceCents());
        return cents
                + menu.groups().stream()
                        .flatMap(group -> group.options().stream())
                        .filter(option -> selection.options().contains(option.id()))
                        .mapToLong(option -> option.priceCents())
                        .sum();
    }

    private void totals(List<OrderLine> lines, Discount discount, Totals found, String order) {
        long subtotal = lines.stream().mapToLong(l -> l.quantity() * l.unitCents()).sum();
        complaints.same(subtotal, found.subtotalCents(), Invariant.PRICES, "subtotal of", order);
        long off =
                discount.milliPercent() == 0
                        ? Math.min(discount.cents(), subtotal)
                        : BigDecimal.valueOf(subtotal)
                                .multiply(BigDecimal.valueOf(discount.milliPercent()))
                                .divide(THOUSANDTHS_OF_PERCENT, 0, RoundingMode.HALF_UP)
                                .longValueExact();
        complaints.same(off, found.discountCents(), Invariant.PRICES, "discount of", order);
        boolean allTaxed = lines.stream().allMatch(OrderLine::taxed);
        TaxRule tax = settings.tax();
        if (allTaxed && !tax.included() && tax.basis() == TaxRule.Basis.ORDER) {
            BigDecimal exact =
                    BigDecimal.valueOf(subtotal - off)
                            .multiply(BigDecimal.valueOf(tax.rateMilliPercent()))
                            .divide(THOUSANDTHS_OF_PERCENT);
            long expected = exact.setScale(0, RoundingMode.HALF_UP).longValueExact();
            complaints.same(expected, found.taxCents(), Invariant.PRICES, "tax of", order);
        }
        long total = subtotal - off + (tax.included() ? 0 : found.taxCents());
        complaints.same(total, found.totalCents(), Invariant.PRICES, "total of", order);
    }
}
