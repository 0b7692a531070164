package sopwell;

import java.time.InstantSource;
import java.util.function.LongSupplier;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.StandClock;
import sopwell.desk.StandCommand;
import sopwell.log.EventLog;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;

/** What the clock alone brings about: the day's cut, and what was out for a while. Thread-safe. */
record DayTicks(Desk desk, Follower follower, InstantSource clock, LongSupplier lastSeq) {
    /** No right clock is before the log's last event, or before this was made. */
    static StandClock clock(RunningStand.Clocks clocks, EventLog log) {
        long[] lastAtMs = new long[1];
        log.read(log.lastSeq(), log.lastSeq(), recorded -> lastAtMs[0] = recorded.atMs());
        return new StandClock(
                new StandClock.Clocks(clocks.wall(), clocks.nanos(), clocks.upMillis()),
                Math.max(BuiltAt.millis(), lastAtMs[0]));
    }

    /** Looks whether something is due. */
    void look() {
        cutDay();
        liftOuts();
    }

    /** A day that nobody closed is closed at the cut hour, also when no guest comes. */
    private void cutDay() {
        boolean due =
                follower.ask(
                                stand ->
                                        stand.orders().isDayOpen()
                                                && clock.millis() >= stand.orders().cutAtMs())
                        .join();
        if (due) {
            String key = "cut " + lastSeq.getAsLong();
            desk.submit(key, key, new StandCommand.ForOrders(new OrderCommand.CutDay())).join();
        }
    }

    /** What was out for a while is sold again, also on the screens. */
    private void liftOuts() {
        long nowMs = clock.millis();
        boolean due =
                follower.ask(
                                stand ->
                                        stand.outs().all().stream()
                                                .anyMatch(shortage -> !shortage.holds(nowMs)))
                        .join();
        if (due) {
            String key = "back " + lastSeq.getAsLong();
            desk.submit(key, key, new StandCommand.ForOuts(new OutCommand.LiftDue())).join();
        }
    }
}
