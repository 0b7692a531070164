package sopwell.till;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sopwell.Check;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;

/**
 * The money of the newest business day. Not thread-safe: its owner is one thread.
 *
 * <p>What is paid at no open till is kept apart, so that it is neither refused nor lost.
 */
public final class Till {
    private final Map<String, Takings> byOrder = new HashMap<>();
    private final List<Drawer> drawers = new ArrayList<>();
    private final List<Move> moves = new ArrayList<>();
    private Takings apart = Takings.NONE;
    private LocalDate date;

    /** Takes in what happened to the day; never refuses. */
    public void apply(OrderEvent event) {
        if (event instanceof OrderEvent.DayOpened opened && !opened.date().equals(date)) {
            date = opened.date();
            byOrder.clear();
            drawers.clear();
            moves.clear();
            apart = Takings.NONE;
        }
    }

    /** Takes in what happened to money; never refuses. */
    public void apply(TillEvent event, long atMs) {
        switch (event.kind()) {
            case PAID -> {
                TillEvent.OrderPaid paid = (TillEvent.OrderPaid) event;
                take(paid.order(), paid.cashier(), takings -> takings.with(paid));
            }
            case REFUNDED -> {
                TillEvent.OrderRefunded back = (TillEvent.OrderRefunded) event;
                take(back.order(), back.cashier(), takings -> takings.with(back));
                moves.add(
                        new Move(
                                back.kind(),
                                atMs,
                                back.cashier(),
                                back.order(),
                                back.means(),
                                back.cents(),
                                back.reason()));
            }
            case OPENED -> {
                Check.that(open(event.cashier()).isEmpty(), "a cashier has one till open");
                drawers.add(Drawer.opened((TillEvent.TillOpened) event, atMs));
            }
            case PAID_IN -> {
                TillEvent.PaidIn in = (TillEvent.PaidIn) event;
                move(in, atMs, in.cents(), in.reason());
                change(in.cashier(), drawer -> drawer.moved(in.cents(), 0));
            }
            case PAID_OUT -> {
                TillEvent.PaidOut out = (TillEvent.PaidOut) event;
                move(out, atMs, out.cents(), out.reason());
                change(out.cashier(), drawer -> drawer.moved(0, out.cents()));
            }
            case CLOSED -> {
                TillEvent.TillClosed closed = (TillEvent.TillClosed) event;
                change(closed.cashier(), drawer -> drawer.closed(closed, atMs));
            }
        }
    }

    /** The day's tills in the order in which they were opened. */
    public List<Drawer> drawers() {
        return Collections.unmodifiableList(drawers);
    }

    /** The tills that are open. */
    public List<Drawer> open() {
        return drawers.stream().filter(Drawer::isOpen).toList();
    }

    /** A cashier's open till; capitals make no other cashier. */
    public Optional<Drawer> open(String cashier) {
        return drawers.stream()
                .filter(drawer -> drawer.isOpen() && drawer.cashier().equalsIgnoreCase(cashier))
                .findFirst();
    }

    /**
     * The open till that somebody means: the one of this cashier, or without a name the only one.
     */
    public Optional<Drawer> meant(String cashier) {
        if (!cashier.isBlank()) {
            return open(cashier);
        }
        return open().size() == 1 ? Optional.of(open().get(0)) : Optional.empty();
    }

    /** What was paid at no open till. */
    public Takings apart() {
        return apart;
    }

    /** What was paid in, paid out and given back, in the order in which it happened. */
    public List<Move> moves() {
        return Collections.unmodifiableList(moves);
    }

    /** What was paid for an order and given back on it. */
    public Takings of(String order) {
        return byOrder.getOrDefault(order, Takings.NONE);
    }

    /**
     * What is due on an order, in cents: 0 when it is paid, negative when money is due back. A void
     * order costs nothing; what was given back as goodwill is not due again.
     */
    public long dueCents(Order order) {
        return costCents(order) - of(order.id()).keptCents();
    }

    /** What an order is to cost its guest in the end, goodwill taken off. */
    long costCents(Order order) {
        long totalCents = order.isVoid() ? 0 : order.totals().totalCents();
        return Math.max(0, totalCents - of(order.id()).goodwillCents());
    }

    private void take(String order, String cashier, UnaryOperator<Takings> more) {
        byOrder.merge(order, more.apply(Takings.NONE), Takings::plus);
        if (open(cashier).isEmpty()) {
            apart = more.apply(apart);
        } else {
            change(cashier, drawer -> drawer.with(more.apply(drawer.takings())));
        }
    }

    private void move(TillEvent event, long atMs, long cents, String reason) {
        moves.add(new Move(event.kind(), atMs, event.cashier(), "", Means.CASH, cents, reason));
    }

    private void change(String cashier, UnaryOperator<Drawer> change) {
        Optional<Drawer> drawer = open(cashier);
        Check.that(drawer.isPresent(), "money moves in open tills");
        drawers.set(drawers.indexOf(drawer.get()), change.apply(drawer.get()));
    }
}
