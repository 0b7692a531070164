package sopwell.web.pages;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sopwell.Limits;
import sopwell.counter.CashWords;
import sopwell.desk.Stand;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.till.Drawer;
import sopwell.till.Takings;
import sopwell.web.T;

/**
 * The tills in one language. Immutable.
 *
 * @param keys makes the idempotency key of each form
 * @param sentence why a press was refused, or empty
 * @param typed what stands in the fields after a refusal
 */
public record TillView(
        T t, State state, Supplier<String> keys, String sentence, Map<String, String> typed) {
    /**
     * How the tills stand. Immutable.
     *
     * @param drawers the newest day's tills in the order of their opening
     * @param apart what was paid at no open till
     * @param unsettled orders of the day that the guest has, or that are void, and that are not
     *     settled
     * @param chosen whose till this screen takes money for, or empty
     */
    public record State(
            List<Drawer> drawers,
            Takings apart,
            List<Unsettled> unsettled,
            String chosen,
            CashUnits units,
            ZoneId zone) {
        public State {
            drawers = List.copyOf(drawers);
            unsettled = List.copyOf(unsettled);
        }

        static State of(Stand stand, String cashier) {
            return new State(
                    stand.till().drawers(),
                    stand.till().apart(),
                    Unsettled.of(stand),
                    stand.till().open(cashier).map(Drawer::cashier).orElse(""),
                    stand.settings().cash().units(),
                    stand.settings().zone());
        }
    }

    /**
     * An order that is over and not settled.
     *
     * @param dueCents negative when money is due back
     */
    public record Unsettled(String order, int number, String name, long dueCents) {
        static List<Unsettled> of(Stand stand) {
            return stand.orders().all().stream()
                    .filter(order -> !order.isOpen() && stand.till().dueCents(order) != 0)
                    .limit(Limits.BOARD_ROWS_MAX)
                    .map(
                            order ->
                                    new Unsettled(
                                            order.id(),
                                            order.number(),
                                            order.name(),
                                            stand.till().dueCents(order)))
                    .toList();
        }
    }

    /** What is due on an order, in words. */
    public String owed(Unsettled order) {
        return CounterView.owed(t, order.dueCents());
    }

    /** The tills that are open. */
    public List<Drawer> open() {
        return state.drawers().stream().filter(Drawer::isOpen).toList();
    }

    /** The tills that were counted, the last one first. */
    public List<Drawer> counted() {
        List<Drawer> counted =
                new ArrayList<>(
                        state.drawers().stream().filter(drawer -> !drawer.isOpen()).toList());
        Collections.reverse(counted);
        return counted;
    }

    public String key() {
        return keys.get();
    }

    /** What stands in a field of one form of one till after a refusal. */
    public String typed(String cashier, String form, String field) {
        return isUnfolded(cashier, form) ? typed.getOrDefault(field, "") : "";
    }

    /** What stands in a field of the form that opens a till. */
    public String typed(String field) {
        return typed.getOrDefault("form", "").equals("open") ? typed.getOrDefault(field, "") : "";
    }

    /** Whether the form of this name was refused for this till, so that it stays unfolded. */
    public boolean isUnfolded(String cashier, String form) {
        return typed.getOrDefault("form", "").equals(form)
                && typed.getOrDefault("cashier", "").equals(cashier);
    }

    public String unit(CashUnit unit) {
        return CashWords.name(unit, t.phrases());
    }

    public String time(long atMs) {
        return t.time(atMs, state.zone());
    }

    /** Over, short or right, in words. */
    public String verdict(Drawer drawer) {
        return verdict(t, drawer.counted().orElseThrow().overCents());
    }

    static String verdict(T t, long overCents) {
        if (overCents == 0) {
            return t.get("till.right");
        }
        return t.of(overCents > 0 ? "till.over" : "till.short", t.money(Math.abs(overCents)));
    }
}
