package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sopwell.call.ReadBack;
import sopwell.menu.Menu;
import sopwell.orders.Meanwhile;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.web.T;

/**
 * What somebody else changed while an order was being edited, in words. Immutable.
 *
 * @param version the version that an edit must name now
 */
public record MeanwhileView(String order, int number, int version, List<Change> changes) {
    public MeanwhileView {
        changes = List.copyOf(changes);
    }

    /**
     * One thing that is not as it was.
     *
     * @param what the line, or the field
     * @param before empty when it is new
     * @param after empty when it is gone
     */
    public record Change(String what, String before, String after) {}

    static MeanwhileView of(Meanwhile meanwhile, Function<String, Menu> menus, T t) {
        Order seen = meanwhile.seen();
        Order now = meanwhile.now();
        List<Change> changes = new ArrayList<>();
        for (Meanwhile.LineChange line : meanwhile.lines()) {
            changes.add(
                    new Change(
                            t.of("meanwhile.line", line.number()),
                            said(menus.apply(seen.menuRevision()), line.before(), t),
                            said(menus.apply(now.menuRevision()), line.after(), t)));
        }
        if (!seen.name().equals(now.name())) {
            changes.add(new Change(t.get("counter.name"), seen.name(), now.name()));
        }
        if (seen.toGo() != now.toGo()) {
            changes.add(new Change(t.get("counter.service"), service(seen, t), service(now, t)));
        }
        if (!seen.discount().equals(now.discount())) {
            String what = t.get("meanwhile.discount");
            changes.add(
                    new Change(
                            what,
                            t.money(seen.totals().discountCents()),
                            t.money(now.totals().discountCents())));
        }
        return new MeanwhileView(now.id(), now.number(), now.version(), changes);
    }

    private static String said(Menu menu, Optional<OrderLine> line, T t) {
        return line.map(l -> ReadBack.say(menu, t.lang(), l.quantity(), l.selection())).orElse("");
    }

    private static String service(Order order, T t) {
        return t.get(order.toGo() ? "counter.to-go" : "counter.here");
    }
}
