package sopwell.orders;

import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.menu.Menu;
import sopwell.money.Discount;

/**
 * When a price that a guest was told holds. Stateless and pure.
 *
 * <p>Nobody chooses a price: what was told must be what a menu that was once in force here comes
 * to, to the cent. What is made, and where, always goes by the menu in force now.
 */
final class Telling {
    private Telling() {}

    /** Why what was told can't stand, if it can't. */
    static Optional<Refusal> fault(OrderCommand.Place place, Deciding with) {
        return place.told().flatMap(told -> fault(told, place.lines(), with));
    }

    private static Optional<Refusal> fault(Told told, List<Asked> lines, Deciding with) {
        long agoMs = with.nowMs() - told.atMs();
        if (agoMs < -Limits.CLOCK_AHEAD_MILLIS_MAX || agoMs > Limits.TAKEN_AGO_MILLIS_MAX) {
            return Optional.of(
                    Refusal.of(Reason.TOLD_TIME, Limits.TAKEN_AGO_MILLIS_MAX / 3_600_000));
        }
        Menu menu = told.menu();
        Selling sold = new Selling(menu, new Outs());
        for (Asked line : lines) {
            if (!sold.isOnMenu(line.selection())) {
                return Optional.of(Refusal.of(Reason.MENU_CHANGED, line.selection().item()));
            }
        }
        long cents =
                OrderRules.totals(Edits.fresh(menu, lines), Discount.NONE, with.settings().tax())
                        .totalCents();
        return cents == told.totalCents()
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.TOLD_PRICE, told.totalCents(), cents));
    }

    /** The event that says so, when what was told differs from an order placed just now. */
    static Optional<OrderEvent> event(String order, OrderCommand.Place place, Deciding with) {
        if (place.told().isEmpty()) {
            return Optional.empty();
        }
        Told told = place.told().get();
        String revision = told.menu().revision();
        String earlier = revision.equals(with.menu().revision()) ? "" : revision;
        long takenAtMs = Math.min(told.atMs(), with.nowMs());
        boolean justNow = with.nowMs() - takenAtMs < Limits.TAKEN_NOW_MILLIS_MAX;
        return earlier.isEmpty() && justNow
                ? Optional.empty()
                : Optional.of(new OrderEvent.OrderTold(order, earlier, takenAtMs));
    }
}
