package sopwell.web.pages;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.counter.CashWords;
import sopwell.desk.Stand;
import sopwell.money.CashCount;
import sopwell.money.CashRule;
import sopwell.money.CashUnit;
import sopwell.orders.Order;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.Takings;
import sopwell.till.TillEvent.OrderPaid;
import sopwell.till.TillEvent.OrderRefunded;
import sopwell.web.T;

/**
 * An order's money as the counter shows it. Immutable.
 *
 * @param key the idempotency key of the next press
 * @param said what the last press came to
 * @param typed what stands in the fields after a refusal
 */
public record PayView(T t, State state, String key, Said said, Map<String, String> typed) {
    /**
     * How the order's money stands. Immutable.
     *
     * @param dueCents what is due; negative when money is due back
     * @param cashier whose till takes the money; empty when it will be noted apart
     * @param tills how many tills are open
     */
    public record State(
            Order order, long dueCents, Takings takings, String cashier, int tills, CashRule cash) {
        static State of(Stand stand, Order order, String cashier) {
            // A screen may still name the cashier of a till that was closed since.
            String named = stand.till().open(cashier).isPresent() ? cashier : "";
            String meant = stand.till().meant(named).map(Drawer::cashier).orElse("");
            return new State(
                    order,
                    stand.till().dueCents(order),
                    stand.till().of(order.id()),
                    meant,
                    stand.till().open().size(),
                    stand.settings().cash());
        }
    }

    /**
     * What a press came to.
     *
     * @param paid what was paid, or null
     * @param refunded what goes back, or null
     * @param sentence why it was refused, or what was done; empty for nothing
     * @param refused whether the sentence says why not
     */
    public record Said(OrderPaid paid, OrderRefunded refunded, String sentence, boolean refused) {
        static final Said NOTHING = new Said(null, null, "", false);

        static Said no(String sentence) {
            return new Said(null, null, sentence, true);
        }

        static Said done(String sentence) {
            return new Said(null, null, sentence, false);
        }
    }

    public Order order() {
        return state.order();
    }

    public long dueCents() {
        return state.dueCents();
    }

    /** What is due when it is paid in cash. */
    public long cashCents() {
        return state.cash().rounding().roundCents(Math.max(0, dueCents()));
    }

    /** What a guest may hand over, the exact amount left out. */
    public List<Long> tenders() {
        return state.cash().units().tendersCents(cashCents());
    }

    /** The tenders as they are typed, parted by spaces. */
    public String typedTenders() {
        return tenders().stream().map(CashWords::typed).collect(Collectors.joining(" "));
    }

    public String exact() {
        return CashWords.typed(cashCents());
    }

    /** Where something is sent. */
    public String address(String what) {
        return "/counter/orders/" + order().id() + "/" + what;
    }

    /** What stands in a field. */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    /** The notes and coins to give back after a payment. */
    public List<CashCount> change() {
        return state.cash().units().change(said.paid().payment().changeCents());
    }

    /** What goes back to the guest, as it is handed over. */
    public long backCents() {
        OrderRefunded back = said.refunded();
        return back.means() == Means.CASH ? back.cents() + back.roundingCents() : back.cents();
    }

    /** The notes and coins to give for a refund; none for a card. */
    public List<CashCount> give() {
        return said.refunded().means() == Means.CASH
                ? state.cash().units().change(backCents())
                : List.of();
    }

    /** What was handed over less the change: what the drawer got. */
    public long takenCents() {
        return said.paid().payment().tenderedCents() - said.paid().payment().changeCents();
    }

    /** Whether it paid a part without change, so that what is still due is what matters. */
    public boolean isPart() {
        return dueCents() > 0 && said.paid().payment().changeCents() == 0;
    }

    /** What is due back, for the field that gives it back. */
    public String backHint() {
        return dueCents() < 0 ? t.money(-dueCents()) : "";
    }

    public boolean isCash() {
        return said.paid() != null && said.paid().means() == Means.CASH;
    }

    /** Whether money that was just taken is in nobody's till. */
    public boolean isApart() {
        return isCash() && state.cashier().isEmpty();
    }

    /** What can be given back by these means. */
    public long keptCents(Means means) {
        return state.takings().keptCents(means);
    }

    /** Whether a refund goes to a card unless told otherwise: where most of the money came from. */
    public boolean isCardMostly() {
        return keptCents(Means.CARD) > keptCents(Means.CASH);
    }

    /** What a note or coin is called. */
    public String unit(CashUnit unit) {
        return CashWords.name(unit, t.phrases());
    }

    /** An amount without hundredths that say nothing. */
    public String amount(long cents) {
        return CashWords.round(cents, t.phrases());
    }

    /** What was paid so far, in words. */
    public String paidSoFar() {
        return List.of(Means.CASH, Means.CARD).stream()
                .filter(means -> keptCents(means) > 0)
                .map(
                        means ->
                                t.of(
                                        "pay.so-far",
                                        t.money(keptCents(means)),
                                        t.get("means." + means.name())))
                .collect(Collectors.joining(", "));
    }
}
