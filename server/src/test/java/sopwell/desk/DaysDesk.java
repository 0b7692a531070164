package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.log.EventLog;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.prep.past.KeepPlan;

/** A desk whose clock goes from day to day. Not thread-safe. */
public final class DaysDesk implements AutoCloseable {
    private static final List<Asked> ASKED = new Script().asked("2 beef dipped hot, fries");

    private final Desk desk;
    private final String run;
    private long nowMs;
    private int keys;

    /** A desk over an empty log, whose stand has the demo's menu from a date on. */
    public DaysDesk(EventLog log, LocalDate from) {
        this.nowMs = noon(from);
        this.run = "days " + log.lastSeq() + " ";
        this.desk = new Desk(log, Script.SETTINGS, () -> at(nowMs), events -> {});
        must(new AdoptMenu(Script.demoMenu()));
    }

    /** A day with so many orders, cut the morning after. */
    public void day(LocalDate date, int orders) {
        nowMs = Math.max(nowMs, noon(date));
        for (int order = 0; order < orders; order++) {
            place();
        }
        nowMs = Math.max(nowMs, noon(date) + 17 * 3_600_000L);
        must(new ForOrders(new OrderCommand.CutDay()));
    }

    /** The date is opened, and a plan without tasks is kept for it. */
    void keptPlan(LocalDate date) {
        nowMs = Math.max(nowMs, noon(date));
        must(new ForOrders(new OrderCommand.OpenDay()));
        must(new StandCommand.ForPlan(new KeepPlan(date, List.of())));
    }

    /** One order that came to nothing, and closed. */
    public void closed(LocalDate date) {
        nowMs = Math.max(nowMs, noon(date));
        String order = place();
        must(new ForOrders(new OrderCommand.VoidOrder(order, 0, "guest left")));
        must(new ForOrders(new OrderCommand.CloseDay()));
    }

    /** The date goes on with a reason, sells one order, and is closed again. */
    public void reopened(LocalDate date) {
        must(new ForOrders(new OrderCommand.ReopenDay(Optional.of(date), "a party came late")));
        String order = place();
        nowMs += 120_000;
        must(new ForKitchen(new KitchenCommand.Up(new PartId(order, 1, "line"))));
        must(new ForKitchen(new KitchenCommand.Up(new PartId(order, 2, "fryer"))));
        must(new ForOrders(new OrderCommand.Hand(order)));
        must(new ForOrders(new OrderCommand.CloseDay()));
    }

    private String place() {
        nowMs += 60_000;
        return must(new ForOrders(new OrderCommand.Place("", true, ASKED))).events().stream()
                .filter(recorded -> recorded.event() instanceof OrderPlaced)
                .map(recorded -> ((OrderPlaced) recorded.event()).order())
                .findFirst()
                .orElseThrow();
    }

    private Answer must(StandCommand command) {
        String key = run + keys++;
        Answer answer = desk.submit(key, key, command).join();
        assertTrue(answer.refusal().isEmpty(), () -> "refused: " + answer.refusal());
        return answer;
    }

    private static Instant at(long ms) {
        return Instant.ofEpochMilli(ms);
    }

    private static long noon(LocalDate date) {
        return date.atTime(12, 0).atZone(Script.SETTINGS.zone()).toInstant().toEpochMilli();
    }

    @Override
    public void close() {
        desk.close();
    }
}
