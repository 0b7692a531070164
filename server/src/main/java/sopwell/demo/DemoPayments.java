package sopwell.demo;

import java.util.List;
import java.util.SplittableRandom;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForTill;
import sopwell.money.CashRule;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/**
 * How the invented guests pay: half by card, half in cash with a note that is large enough, some
 * with a tip, a few not before the order is handed over. Has a source of chance of its own, so that
 * the lunch is the same with and without it. Not thread-safe.
 */
final class DemoPayments {
    private static final long SEED = 20_260_108L;
    private static final long TIP_CENTS = 100;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final CashRule cash;
    private final String cashier;

    /** A command and when it comes. */
    record Planned(long atMs, StandCommand command) {}

    DemoPayments(CashRule cash, String cashier) {
        this.cash = cash;
        this.cashier = cashier;
    }

    /** What comes of an order's money; nothing of one that is not paid yet. */
    List<Planned> plan(OrderPlaced placed, int guest, long atMs) {
        boolean later = guest % 9 == 0;
        boolean card = random.nextBoolean();
        boolean tips = random.nextInt(4) == 0;
        int note = random.nextInt(3);
        if (later || placed.totals().totalCents() == 0) {
            return List.of();
        }
        long tipCents = tips ? TIP_CENTS : 0;
        long dueCents = placed.totals().totalCents();
        TillCommand.Pay pay =
                card
                        ? pay(placed, Means.CARD, 0, tipCents)
                        : pay(placed, Means.CASH, tendered(dueCents + tipCents, note), tipCents);
        return List.of(new Planned(atMs + 4_000 + random.nextInt(9_000), new ForTill(pay)));
    }

    private TillCommand.Pay pay(OrderPlaced placed, Means means, long tendered, long tip) {
        return new TillCommand.Pay(placed.order(), cashier, means, 0, tendered, tip);
    }

    private long tendered(long cents, int note) {
        List<Long> tenders = cash.units().tendersCents(cash.rounding().roundCents(cents));
        return tenders.isEmpty() ? 0 : tenders.get(Math.min(note, tenders.size() - 1));
    }
}
