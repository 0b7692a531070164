package sopwell.till;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.desk.Script;
import sopwell.log.Recorded;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.money.Discount;
import sopwell.money.Rounding;
import sopwell.money.TaxRule;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Safety;
import sopwell.orders.StandSettings;

/**
 * A day of guests and cashiers who do anything at all; what is refused changes nothing. The same
 * seed gives the same day.
 */
final class SimulatedDay {
    private static final List<String> CALLS =
            List.of("beef", "2 beef, fries", "fries", "hot dog, cola", "3 jus cup", "water");
    private static final List<String> CASHIERS = List.of("Ana", "Theo", "Ines", "");
    private static final List<String> REASONS = List.of("cold", "mistake", "ice", "");

    private final SplittableRandom random;
    private final Script script;

    SimulatedDay(long seed) {
        random = new SplittableRandom(seed);
        script = new Script(settings());
    }

    private StandSettings settings() {
        CashRule cash =
                switch (random.nextInt(3)) {
                    case 0 -> CashRule.USUAL;
                    case 1 ->
                            new CashRule(
                                    new CashRounding(5, CashRounding.Tie.DOWN),
                                    CashUnits.of(List.of(1_000L, 500L), List.of(25L, 10L, 5L)));
                    default ->
                            new CashRule(
                                    new CashRounding(10, CashRounding.Tie.UP),
                                    CashUnits.of(List.of(1_000L, 500L), List.of(50L, 20L, 10L)));
                };
        TaxRule tax =
                new TaxRule(
                        random.nextInt(20_000),
                        random.nextBoolean() ? TaxRule.Basis.ORDER : TaxRule.Basis.LINE,
                        Rounding.HALF_UP,
                        random.nextInt(3) == 0);
        return new StandSettings(
                "s", "S", Script.SETTINGS.zone(), 4, tax, 360, 999, cash, Safety.USUAL);
    }

    void play(int steps) {
        script.place("beef");
        for (int i = 0; i < steps; i++) {
            script.later(random.nextInt(90));
            step();
        }
    }

    List<Recorded> log() {
        return script.log();
    }

    DayReport report() {
        return DayReport.of(script.stand().orders(), script.stand().till());
    }

    private void step() {
        List<Order> orders = new ArrayList<>(script.stand().orders().all());
        Order order = orders.get(random.nextInt(orders.size()));
        switch (random.nextInt(12)) {
            case 0, 1 -> script.place(any(CALLS));
            case 2 -> script.change(order, any(CALLS));
            case 3 ->
                    script.decide(
                            new OrderCommand.SetDiscount(order.id(), 0, discount(any(REASONS))));
            case 4 -> {
                if (random.nextInt(3) == 0) {
                    script.decide(new OrderCommand.VoidOrder(order.id(), 0, any(REASONS)));
                }
            }
            case 5, 6, 7 ->
                    script.decide(
                            new TillCommand.Pay(
                                    order.id(),
                                    any(CASHIERS),
                                    means(),
                                    random.nextBoolean() ? 0 : random.nextLong(600),
                                    random.nextBoolean() ? 0 : 100 * random.nextLong(40),
                                    random.nextInt(3) > 0 ? 0 : 10 * random.nextLong(20)));
            case 8 ->
                    script.decide(
                            new TillCommand.Refund(
                                    order.id(),
                                    any(CASHIERS),
                                    means(),
                                    random.nextBoolean() ? 0 : random.nextLong(500),
                                    random.nextInt(4) == 0,
                                    any(REASONS)));
            case 9 ->
                    script.decide(
                            new TillCommand.OpenTill(any(CASHIERS), 100 * random.nextLong(60)));
            case 10 -> move();
            default -> close();
        }
    }

    private void move() {
        long cents = 50 * random.nextLong(40);
        script.decide(
                random.nextBoolean()
                        ? new TillCommand.PayIn(any(CASHIERS), cents, any(REASONS))
                        : new TillCommand.PayOut(any(CASHIERS), cents, any(REASONS)));
    }

    /** Mostly counted right, sometimes a coin off. */
    private void close() {
        if (random.nextInt(3) > 0) {
            return;
        }
        String cashier = any(CASHIERS);
        CashUnits units = script.stand().settings().cash().units();
        long expected = script.stand().till().open(cashier).map(Drawer::expectedCents).orElse(0L);
        List<TillCommand.Pieces> counts = new ArrayList<>();
        units.change(Math.max(0, expected))
                .forEach(c -> counts.add(new TillCommand.Pieces(c.unit().cents(), c.pieces())));
        if (random.nextInt(3) == 0) {
            CashUnit unit = units.units().get(random.nextInt(units.units().size()));
            counts.add(new TillCommand.Pieces(unit.cents(), 1));
        }
        script.decide(new TillCommand.CloseTill(cashier, counts));
    }

    private Discount discount(String reason) {
        Discount.Kind kind = random.nextBoolean() ? Discount.Kind.GUEST : Discount.Kind.STAFF_MEAL;
        return switch (random.nextInt(3)) {
            case 0 -> Discount.NONE;
            case 1 -> new Discount(kind, 1 + random.nextLong(400), 0, reason);
            default -> new Discount(kind, 0, 1 + random.nextInt(100_000), reason);
        };
    }

    private Means means() {
        return random.nextBoolean() ? Means.CASH : Means.CARD;
    }

    private <A> A any(List<A> list) {
        return list.get(random.nextInt(list.size()));
    }
}
