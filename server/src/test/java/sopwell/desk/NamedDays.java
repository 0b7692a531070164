package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.money.Discount;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/** A desk on whose days guests and cashiers have names that are found nowhere else. */
public final class NamedDays implements AutoCloseable {
    public static final LocalDate FIRST = LocalDate.of(2026, 1, 14);
    public static final String GUEST = "Xaveria";
    public static final String FRIEND = "Zenobia";
    public static final String CASHIER = "Quirinus";
    public static final String OTHER = "Ottokarla";

    public final Desk desk;
    public final Follower follower;
    private final Menu menu = Script.demoMenu();
    private final Script reader = new Script(Script.SETTINGS, menu);
    private final String run;
    private long nowMs = noon(FIRST);
    private int keys;

    /** A desk over a log. */
    public NamedDays(EventLog log) {
        run = "named " + log.lastSeq() + " ";
        follower = new Follower(log, Script.SETTINGS);
        desk = new Desk(log, Script.SETTINGS, () -> Instant.ofEpochMilli(nowMs), follower::follow);
        must(new StandCommand.AdoptMenu(menu));
    }

    /** Orders of named and nameless guests, paid at the tills of two cashiers. */
    public List<String> day(LocalDate date, boolean close) {
        nowMs = Math.max(nowMs, noon(date));
        till(new TillCommand.OpenTill(CASHIER, 10_000));
        till(new TillCommand.OpenTill(OTHER, 5_000));
        List<String> orders = new ArrayList<>();
        for (String name : List.of(GUEST, "", GUEST + " B.", FRIEND)) {
            nowMs += 60_000;
            orders.add(place(name));
        }
        change(orders.get(0));
        must(new StandCommand.ForOrders(discount(orders.get(2))));
        pay(orders.get(0), CASHIER);
        pay(orders.get(1), OTHER);
        must(
                new StandCommand.ForOrders(
                        new OrderCommand.VoidOrder(orders.get(3), 0, FRIEND + " had it")));
        till(new TillCommand.PayOut(CASHIER, 700, "ice"));
        if (close) {
            cut(date);
        }
        return orders;
    }

    /** A day that is over, on which a till was counted and something was missing from it. */
    public void countedDay(LocalDate date) {
        day(date, false);
        till(new TillCommand.CloseTill(CASHIER, List.of(new TillCommand.Pieces(100, 1))));
        cut(date);
    }

    private void cut(LocalDate date) {
        nowMs = Math.max(nowMs, noon(date) + 17 * 3_600_000L);
        must(new StandCommand.ForOrders(new OrderCommand.CutDay()));
    }

    private static OrderCommand discount(String order) {
        Discount discount = new Discount(Discount.Kind.GUEST, 100, 0, "friend of " + FRIEND);
        return new OrderCommand.SetDiscount(order, 0, discount);
    }

    private String place(String name) {
        List<Recorded> events =
                must(new StandCommand.ForOrders(
                                new OrderCommand.Place(
                                        name, true, reader.asked("2 beef dipped hot, fries"))))
                        .events();
        return events.stream()
                .filter(recorded -> recorded.event() instanceof OrderPlaced)
                .map(recorded -> ((OrderPlaced) recorded.event()).order())
                .findFirst()
                .orElseThrow();
    }

    private void change(String order) {
        must(
                new StandCommand.ForOrders(
                        new OrderCommand.Change(
                                order, 1, GUEST, true, reader.asked("beef dry, fries"), "")));
    }

    private void pay(String order, String cashier) {
        till(new TillCommand.Pay(order, cashier, Means.CARD, 0, 0, 0));
    }

    private void till(TillCommand command) {
        must(new StandCommand.ForTill(command));
    }

    private Answer must(StandCommand command) {
        String key = run + keys++;
        Answer answer = desk.submit(key, key, command).join();
        assertTrue(answer.refusal().isEmpty(), () -> command + ": " + answer.refusal());
        return answer;
    }

    private static long noon(LocalDate date) {
        return date.atTime(12, 0).atZone(Script.SETTINGS.zone()).toInstant().toEpochMilli();
    }

    @Override
    public void close() {
        desk.close();
        follower.close();
    }
}
