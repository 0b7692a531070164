package sopwell.till;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.money.Discount;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;

/**
 * The day's report adds up to the log: simulated days are told again from their raw events, by code
 * that shares nothing with the report's. A failure names its seed.
 */
class DayReportLawsTest {
    private static final int DAYS = 250;

    @Test
    void theReportIsWhatTheLogSays() {
        int refunds = 0;
        int goodwill = 0;
        int apart = 0;
        int over = 0;
        for (long seed = 0; seed < DAYS; seed++) {
            SimulatedDay day = new SimulatedDay(seed);
            day.play(160);
            DayReport report = day.report();
            agrees("seed " + seed, report, new Told(day.log()));
            addsUp("seed " + seed, report);
            refunds += report.takings().cardBackCents() > 0 ? 1 : 0;
            goodwill += report.goodwillCents() > 0 ? 1 : 0;
            apart += report.apart().cashCents() > 0 ? 1 : 0;
            over += report.drawers().stream().anyMatch(DayReportLawsTest::isOff) ? 1 : 0;
        }
        assertTrue(refunds > DAYS / 4, "days have refunds");
        assertTrue(goodwill > DAYS / 4, "days have goodwill");
        assertTrue(apart > DAYS / 4, "days have money taken at no till");
        assertTrue(over > DAYS / 4, "days have tills that are over or short");
    }

    private static boolean isOff(Drawer drawer) {
        return drawer.counted().filter(counted -> counted.overCents() != 0).isPresent();
    }

    private static void addsUp(String said, DayReport report) {
        DayReport.Sales sales = report.sales();
        assertEquals(sales.totalCents(), sales.netCents() + sales.taxCents(), said);
        assertEquals(
                sales.totalCents() - report.goodwillCents(),
                report.takings().keptCents() + report.unpaid().cents() - report.dueBack().cents(),
                said);
        Takings parts = report.apart();
        long left = 0;
        long counted = 0;
        long off = 0;
        for (Drawer drawer : report.drawers()) {
            parts = parts.plus(drawer.takings());
            left += drawer.expectedCents();
            counted += drawer.counted().map(Drawer.Counted::countedCents).orElse(0L);
            off += drawer.counted().map(Drawer.Counted::overCents).orElse(0L);
            long should = drawer.counted().map(Drawer.Counted::expectedCents).orElse(0L);
            assertTrue(drawer.isOpen() || should == drawer.expectedCents(), said);
        }
        assertEquals(report.takings(), parts, said);
        long open =
                report.drawers().stream()
                        .filter(Drawer::isOpen)
                        .mapToLong(Drawer::expectedCents)
                        .sum();
        assertEquals(left, open + counted - off, said);
    }

    private static void agrees(String said, DayReport report, Told told) {
        DayReport.Sales sales = report.sales();
        Map<String, Long> found = new TreeMap<>();
        found.put("subtotal", sales.subtotalCents());
        found.put("discount", sales.discountCents());
        found.put("staff", sales.staffMealCents());
        found.put("tax", sales.taxCents());
        found.put("total", sales.totalCents());
        found.put("cash", report.takings().cashCents());
        found.put("card", report.takings().cardCents());
        found.put("tips", report.takings().cashTipCents() + report.takings().cardTipCents());
        found.put("rounding", report.takings().roundingCents());
        found.put("cashBack", report.takings().cashBackCents());
        found.put("cardBack", report.takings().cardBackCents());
        found.put("unpaid", report.unpaid().cents());
        found.put("dueBack", report.dueBack().cents());
        found.put("goodwill", report.goodwillCents());
        assertEquals(told.sums(), found, said);
        assertEquals(told.counts(), Map.of("sold", sales.orders(), "void", sales.voids()), said);
        Map<String, Long> drawers = new LinkedHashMap<>();
        int n = 0;
        for (Drawer drawer : report.drawers()) {
            drawers.put(drawer.cashier() + n++, drawer.expectedCents());
        }
        assertEquals(told.drawers, drawers, said);
        assertEquals(told.moved, report.moves().stream().mapToLong(Move::cents).sum(), said);
    }

    /** A day told from its raw events alone. */
    private static final class Told {
        private final Map<String, Totals> totals = new HashMap<>();
        private final Map<String, Discount.Kind> kinds = new HashMap<>();
        private final Set<String> voids = new HashSet<>();
        private final Map<String, Long> kept = new HashMap<>();
        private final Map<String, Long> goodwill = new HashMap<>();
        private final Map<String, Long> sums = new TreeMap<>();
        private final Map<String, Long> drawers = new LinkedHashMap<>();
        private final Map<String, String> open = new HashMap<>();
        private long moved;

        Told(List<Recorded> log) {
            for (String sum : List.of("cash", "card", "tips", "rounding", "cashBack", "cardBack")) {
                sums.put(sum, 0L);
            }
            log.forEach(recorded -> tell(recorded.event()));
        }

        private void tell(Event event) {
            if (event instanceof OrderEvent.OrderPlaced placed) {
                totals.put(placed.order(), placed.totals());
            } else if (event instanceof OrderEvent.OrderChanged changed) {
                totals.put(changed.order(), changed.totals());
            } else if (event instanceof OrderEvent.OrderDiscounted less) {
                totals.put(less.order(), less.totals());
                kinds.put(less.order(), less.discount().kind());
            } else if (event instanceof OrderEvent.OrderVoided voided) {
                voids.add(voided.order());
            } else if (event instanceof TillEvent.OrderPaid paid) {
                boolean cash = paid.means() == Means.CASH;
                Payment payment = paid.payment();
                add(cash ? "cash" : "card", payment.cents());
                add("tips", payment.tipCents());
                add("rounding", payment.roundingCents());
                kept.merge(paid.order(), payment.cents(), Long::sum);
                inDrawer(paid, cash ? payment.tenderedCents() - payment.changeCents() : 0);
            } else if (event instanceof TillEvent.OrderRefunded back) {
                boolean cash = back.means() == Means.CASH;
                add(cash ? "cashBack" : "cardBack", back.cents());
                add("rounding", -back.roundingCents());
                kept.merge(back.order(), -back.cents(), Long::sum);
                goodwill.merge(back.order(), back.goodwillCents(), Long::sum);
                inDrawer(back, cash ? -back.cents() - back.roundingCents() : 0);
                moved += back.cents();
            } else if (event instanceof TillEvent money) {
                tellTill(money);
            }
        }

        private void tellTill(TillEvent event) {
            if (event instanceof TillEvent.TillOpened opened) {
                String drawer = opened.cashier() + drawers.size();
                open.put(opened.cashier(), drawer);
                drawers.put(drawer, opened.floatCents());
            } else if (event instanceof TillEvent.PaidIn in) {
                inDrawer(in, in.cents());
                moved += in.cents();
            } else if (event instanceof TillEvent.PaidOut out) {
                inDrawer(out, -out.cents());
                moved += out.cents();
            } else {
                open.remove(event.cashier());
            }
        }

        private void add(String sum, long cents) {
            sums.merge(sum, cents, Long::sum);
        }

        private void inDrawer(TillEvent event, long cents) {
            if (open.containsKey(event.cashier())) {
                drawers.merge(open.get(event.cashier()), cents, Long::sum);
            }
        }

        Map<String, Integer> counts() {
            return Map.of("sold", totals.size() - voids.size(), "void", voids.size());
        }

        Map<String, Long> sums() {
            Map<String, Long> all = new TreeMap<>(sums);
            for (String sum :
                    List.of(
                            "subtotal",
                            "discount",
                            "staff",
                            "tax",
                            "total",
                            "unpaid",
                            "dueBack",
                            "goodwill")) {
                all.put(sum, 0L);
            }
            totals.forEach(
                    (order, total) -> {
                        boolean sold = !voids.contains(order);
                        long cost = sold ? total.totalCents() : 0;
                        long given = Math.min(cost, goodwill.getOrDefault(order, 0L));
                        long due = cost - given - kept.getOrDefault(order, 0L);
                        all.merge(due > 0 ? "unpaid" : "dueBack", Math.abs(due), Long::sum);
                        all.merge("goodwill", given, Long::sum);
                        if (sold) {
                            boolean staff = kinds.get(order) == Discount.Kind.STAFF_MEAL;
                            all.merge("subtotal", total.subtotalCents(), Long::sum);
                            all.merge(
                                    staff ? "staff" : "discount", total.discountCents(), Long::sum);
                            all.merge("tax", total.taxCents(), Long::sum);
                            all.merge("total", total.totalCents(), Long::sum);
                        }
                    });
            return all;
        }
    }
}
