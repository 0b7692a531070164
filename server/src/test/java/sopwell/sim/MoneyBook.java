package sopwell.sim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.sim.OrderBook.TrueOrder;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.TillEvent;

/** Money as the raw events tell it. Belongs to one thread; fed after the order book. */
final class MoneyBook {
    private final OrderBook orders;
    private final Complaints complaints;
    private final Map<String, Long> kept = new HashMap<>();
    private final Map<String, Long> goodwill = new HashMap<>();
    private final List<TrueTill> tills = new ArrayList<>();
    private LocalDate date;
    private long cash;
    private long card;
    private long tips;

    MoneyBook(OrderBook orders, Complaints complaints) {
        this.orders = orders;
        this.complaints = complaints;
    }

    /** One till and what should be in it. */
    private static final class TrueTill {
        private final String cashier;
        private long cents;
        private boolean open = true;

        private TrueTill(String cashier, long cents) {
            this.cashier = cashier.toLowerCase(Locale.ROOT);
            this.cents = cents;
        }
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof OrderEvent.DayOpened opened) {
            begin(opened.date());
        } else if (recorded.event() instanceof TillEvent event) {
            take(event);
        }
    }

    private void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            kept.clear();
            goodwill.clear();
            tills.clear();
            cash = 0;
            card = 0;
            tips = 0;
        }
        date = opened;
    }

    private void take(TillEvent event) {
        switch (event.kind()) {
            case PAID -> pay((TillEvent.OrderPaid) event);
            case REFUNDED -> refund((TillEvent.OrderRefunded) event);
            case OPENED -> {
                TillEvent.TillOpened opened = (TillEvent.TillOpened) event;
                tills.add(new TrueTill(opened.cashier(), opened.floatCents()));
            }
            case PAID_IN -> into(event.cashier(), ((TillEvent.PaidIn) event).cents());
            case PAID_OUT -> into(event.cashier(), -((TillEvent.PaidOut) event).cents());
            case CLOSED -> {
                TillEvent.TillClosed closed = (TillEvent.TillClosed) event;
                for (TrueTill till : tills) {
                    if (till.open && till.cashier.equalsIgnoreCase(closed.cashier())) {
                        complaints.same(
                                till.cents,
                                closed.expectedCents(),
                                Invariant.TILLS,
                                "what is expected of",
                                closed.cashier());
                        till.open = false;
                    }
                }
            }
        }
    }

    private void pay(TillEvent.OrderPaid paid) {
        long cents = paid.payment().cents();
        long dueBefore = dueCents(paid.order());
        complaints.that(
                cents > 0 && cents <= dueBefore,
                Invariant.DUES,
                "",
                List.of(paid, "of", dueBefore));
        kept.merge(paid.order(), cents, Long::sum);
        complaints.same(
                dueCents(paid.order()), paid.leftCents(), Invariant.DUES, "left after", paid);
        tips += paid.payment().tipCents();
        if (paid.means() == Means.CARD) {
            card += cents;
            return;
        }
        cash += cents;
        into(paid.cashier(), paid.payment().tenderedCents() - paid.payment().changeCents());
    }

    private void refund(TillEvent.OrderRefunded back) {
        kept.merge(back.order(), -back.cents(), Long::sum);
        complaints.that(kept.get(back.order()) >= 0, Invariant.DUES, "more back than paid:", back);
        goodwill.merge(back.order(), back.goodwillCents(), Long::sum);
        complaints.same(
                dueCents(back.order()), back.leftCents(), Invariant.DUES, "left after", back);
        if (back.means() == Means.CARD) {
            card -= back.cents();
            return;
        }
        cash -= back.cents();
        into(back.cashier(), -back.cents() - back.roundingCents());
    }

    private void into(String cashier, long cents) {
        for (TrueTill till : tills) {
            if (till.open && till.cashier.equalsIgnoreCase(cashier)) {
                till.cents += cents;
            }
        }
    }

    private long dueCents(String id) {
        TrueOrder order = orders.find(id).orElseThrow();
        return costCents(order) - kept.getOrDefault(id, 0L);
    }

    private long costCents(TrueOrder order) {
        long total = order.isVoid() ? 0 : order.totals.totalCents();
        return Math.max(0, total - goodwill.getOrDefault(order.id, 0L));
    }

    void check(Stand stand) {
        for (Order order : stand.orders().all()) {
            if (orders.find(order.id()).isPresent()) {
                complaints.same(
                        dueCents(order.id()),
                        stand.till().dueCents(order),
                        Invariant.DUES,
                        "what is due on",
                        order.id());
            }
        }
        List<Long> expected = new ArrayList<>();
        tills.forEach(till -> expected.add(till.cents));
        List<Long> found = stand.till().drawers().stream().map(Drawer::expectedCents).toList();
        complaints.same(expected, found, Invariant.TILLS, "what should be in the tills", "");
        if (stand.orders().date().isPresent()) {
            report(DayReport.of(stand.orders(), stand.till()));
        }
    }

    private void report(DayReport report) {
        complaints.same(cash, report.takings().keptCents(Means.CASH), Invariant.REPORT, "cash", "");
        complaints.same(
                card, report.takings().keptCents(Means.CARD), Invariant.REPORT, "cards", "");
        complaints.same(
                tips,
                report.takings().cashTipCents() + report.takings().cardTipCents(),
                Invariant.REPORT,
                "tips",
                "");
        long total = 0;
        long unpaid = 0;
        long dueBack = 0;
        for (TrueOrder order : orders.all()) {
            total += order.isVoid() ? 0 : order.totals.totalCents();
            unpaid += Math.max(0, dueCents(order.id));
            dueBack += Math.max(0, -dueCents(order.id));
        }
        complaints.same(total, report.sales().totalCents(), Invariant.REPORT, "sales", "");
        complaints.same(unpaid, report.unpaid().cents(), Invariant.REPORT, "what is unpaid", "");
        complaints.same(
                dueBack, report.dueBack().cents(), Invariant.REPORT, "what is due back", "");
        complaints.same(
                report.sales().totalCents() - report.goodwillCents(),
                cash + card + unpaid - dueBack,
                Invariant.REPORT,
                "what was settled and is unpaid, less what is due back,",
                "");
    }
}
