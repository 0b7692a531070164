package sopwell.web.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sopwell.boards.PanRows;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenRules;
import sopwell.menu.Menu;
import sopwell.menu.Shortage;
import sopwell.orders.Order;
import sopwell.orders.Orders;
import sopwell.stock.PanLeft;
import sopwell.till.Drawer;
import sopwell.web.DayFigures;
import sopwell.web.T;

/**
 * The close of day in one language: what is still open, what is left, and what the day came to.
 * Immutable.
 *
 * @param keys makes the idempotency key of each form
 * @param sentence why a press was refused, or empty
 * @param reason what was typed as the reason to reopen
 * @param stock what shelves and batches want, in words
 * @param moved shares that differ from the same weekdays before by more than chance, in words
 * @param words who somebody was
 */
public record CloseView(
        T t,
        State state,
        Supplier<String> keys,
        String sentence,
        String reason,
        CloseStockView stock,
        List<String> moved,
        WhoWords words) {
    public CloseView {
        moved = List.copyOf(moved);
    }

    /**
     * How the newest day stands. Immutable.
     *
     * @param date its date; empty when there never was a day
     * @param open whether it is open
     * @param reopens whether it may still be reopened
     * @param orders those that guests wait for, oldest first
     * @param drawers its tills
     * @param unsettled orders that are over and not paid
     * @param figures what it came to
     * @param stock what shelves and batches want
     */
    public record State(
            Optional<LocalDate> date,
            boolean open,
            boolean reopens,
            long closedAtMs,
            List<Waiting> orders,
            List<Drawer> drawers,
            List<TillView.Unsettled> unsettled,
            List<PanLeft> pans,
            List<Shortage> shortages,
            List<Orders.Reopening> reopenings,
            Optional<DayFigures> figures,
            CloseStock stock,
            Menu menu,
            ZoneId zone) {
        static State of(Stand stand, long nowMs) {
            Orders orders = stand.orders();
            return new State(
                    orders.date(),
                    orders.isDayOpen(),
                    !orders.isDayOpen() && orders.date().isPresent() && nowMs < orders.cutAtMs(),
                    orders.closedAtMs(),
                    orders.open().stream().map(order -> Waiting.of(stand, order)).toList(),
                    stand.till().drawers(),
                    TillView.Unsettled.of(stand),
                    PanRows.all(stand.menu(), stand.kitchen(), stand.pans(), nowMs),
                    stand.outs().all().stream().filter(shortage -> shortage.holds(nowMs)).toList(),
                    orders.reopenings(),
                    orders.date().map(date -> DayFigures.of(stand)),
                    CloseStock.of(stand, nowMs),
                    stand.menu(),
                    stand.settings().zone());
        }
    }

    /**
     * An order that a guest waits for.
     *
     * @param whole whether everything of it is up, so that it can be handed over
     */
    public record Waiting(String id, int number, String name, boolean whole, long takenAtMs) {
        static Waiting of(Stand stand, Order order) {
            return new Waiting(
                    order.id(),
                    order.number(),
                    order.name(),
                    KitchenRules.notWhole(stand.kitchen(), order).isEmpty(),
                    order.takenAtMs());
        }
    }

    /** The day's date in words, or nothing. */
    public String date() {
        return state.date().map(t::date).orElse("");
    }

    /** The day's date as a form's field, or nothing. */
    public String written() {
        return state.date().map(LocalDate::toString).orElse("");
    }

    /** The tills that were not counted yet. */
    public List<Drawer> uncounted() {
        return state.drawers().stream().filter(Drawer::isOpen).toList();
    }

    /** The tills that were counted. */
    public List<Drawer> counted() {
        return state.drawers().stream().filter(drawer -> !drawer.isOpen()).toList();
    }

    /** Over, short or right, in words. */
    public String verdict(Drawer drawer) {
        return TillView.verdict(t, drawer.counted().orElseThrow().overCents());
    }

    /** Whether nothing stands in the way of closing. */
    public boolean isReady() {
        return state.orders().isEmpty() && uncounted().isEmpty();
    }

    /** What still stands in the way, a sentence. */
    public String stillOpen() {
        if (isReady()) {
            return t.get("close.ready");
        }
        return t.of("close.still", state.orders().size(), uncounted().size());
    }

    /** What is left of a pan, or that nobody knows. */
    public String left(PanLeft pan) {
        return pan.isKnown()
                ? t.of("close.pan", pan.left(), t.local(pan.pan().unit()))
                : t.get("pan.unknown");
    }

    /** What is out, or how many are left. */
    public String left(Shortage shortage) {
        return shortage.isGone() ? t.get("close.gone") : t.of("close.left", shortage.left());
    }

    public String name(Shortage shortage) {
        return t.name(shortage.out(), state.menu());
    }

    /** What is due on an order that is over. */
    public String owed(TillView.Unsettled order) {
        return CounterView.owed(t, order.dueCents());
    }

    /** Why the day went on, and who had it go on if that was noted. */
    public String why(Orders.Reopening again) {
        String reason = t.reason(again.reason());
        return again.by()
                .map(who -> t.of("close.again.by", reason, words.who(who, t)))
                .orElse(reason);
    }

    public String time(long atMs) {
        return t.time(atMs, state.zone());
    }

    public String key() {
        return keys.get();
    }
}
