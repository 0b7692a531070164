package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Answer.Outcome;
import sopwell.desk.DiskState.Kind;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.desk.TroubledLog.Trouble;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.log.LogFault;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.Reason;
import sopwell.storage.MemoryLog;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/** A disk that is nearly full, or that fails: what is kept all the same, and when it is over. */
class DiskGuardTest {
    private static final long WARN_BYTES = 500;
    private static final long RESERVE_BYTES = 50;
    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);

    private final Script script = new Script();
    private final TroubledLog log = new TroubledLog(new MemoryLog("test"));
    private long freeBytes = 1_000;
    private long nowNanos;
    private final DiskGuard guard =
            new DiskGuard(
                    () -> {
                        if (freeBytes < 0) {
                            throw new IOException("no answer");
                        }
                        return freeBytes;
                    },
                    new DiskGuard.Terms(WARN_BYTES, RESERVE_BYTES, 3, 60 * SECOND),
                    () -> nowNanos);
    private Desk desk;

    @BeforeEach
    void open() {
        desk =
                new Desk(
                        log,
                        Script.SETTINGS,
                        () -> Instant.ofEpochMilli(script.nowMs()),
                        events -> {},
                        guard);
        ask("menu", new AdoptMenu(script.menu()));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void theStandWarnsBelowOneLimitAndTakesNoOrderBelowTheOther() {
        for (long free : new long[] {1_000, 500, 499, 50, 49, 0}) {
            free(free);
            Kind due = free >= 500 ? Kind.WELL : free >= 50 ? Kind.LOW : Kind.NO_ROOM;
            assertEquals(new DiskState(due, OptionalLong.of(free)), guard.state());
            assertEquals(due == Kind.NO_ROOM, refusedFor(Reason.NO_ROOM, "k" + free));
        }
        freeBytes = 50;
        assertEquals(Outcome.DONE, ask("k49", beef()).outcome(), "at once, and by itself");
    }

    @Test
    void whatWasBegunIsFinishedOnANearlyFullDisk() {
        Answer placed = ask("k1", beef());
        OrderPlaced order = (OrderPlaced) placed.events().get(1).event();
        free(10);
        assertTrue(refusedFor(Reason.NO_ROOM, "k2"));
        assertEquals(Outcome.REPEATED, ask("k1", beef()).outcome(), "an answer that was lost");
        PartId part = new PartId(order.order(), 1, "line");
        assertEquals(
                Outcome.DONE, ask("k3", new ForKitchen(new KitchenCommand.Up(part))).outcome());
        long due = order.totals().totalCents();
        StandCommand paid =
                new ForTill(new TillCommand.Pay(order.order(), "", Means.CARD, due, due, 0));
        assertEquals(Outcome.DONE, ask("k4", paid).outcome());
        assertEquals(
                Outcome.DONE,
                ask("k5", new ForOrders(new OrderCommand.Hand(order.order()))).outcome());
        assertEquals(Outcome.DONE, ask("k6", new ForOrders(new OrderCommand.CloseDay())).outcome());
        Answer opened = ask("k7", new ForOrders(new OrderCommand.OpenDay()));
        assertEquals(Reason.NO_ROOM, opened.refusal().orElseThrow().reason(), "no new day");
    }

    @Test
    void aDiskThatDoesNotSayWhatIsFreeIsWrittenTo() {
        free(-1);
        assertEquals(new DiskState(Kind.WELL, OptionalLong.empty()), guard.state());
        assertEquals(Outcome.DONE, ask("k1", beef()).outcome());
    }

    @Test
    void threeFailuresWithinAMinuteAreReadingOnlyUntilATrySucceeds() {
        ask("k1", beef());
        for (int failures = 0; failures < 3; failures++) {
            assertEquals(Kind.WELL, guard.state().kind(), "after " + failures);
            fails("k2", Trouble.FAILS_BEFORE_KEEPING);
            nowNanos += 29 * SECOND;
        }
        log.next(Trouble.STAYS_BROKEN);
        assertEquals(Kind.READING_ONLY, guard.state().kind());
        assertTrue(refusedFor(Reason.READING_ONLY, "k2"));
        Answer up = ask("k4", new ForOrders(new OrderCommand.CloseDay()));
        assertEquals(Reason.READING_ONLY, up.refusal().orElseThrow().reason(), "nothing at all");
        nowNanos += 3_600 * SECOND;
        guard.look(log::probe);
        assertEquals(Kind.READING_ONLY, guard.state().kind(), "time alone mends no disk");
        log.next(Trouble.NONE);
        assertTrue(refusedFor(Reason.READING_ONLY, "k2"), "not before it was looked at");
        guard.look(log::probe);
        assertEquals(Kind.WELL, guard.state().kind());
        assertEquals(Outcome.DONE, ask("k2", beef()).outcome());
        fails("k5", Trouble.FAILS_BEFORE_KEEPING);
        assertEquals(Kind.READING_ONLY, guard.state().kind(), "it was on trial");
        guard.look(log::probe);
        nowNanos += 61 * SECOND;
        fails("k5", Trouble.FAILS_BEFORE_KEEPING);
        assertEquals(Kind.WELL, guard.state().kind(), "after a minute the count begins anew");
    }

    @Test
    void failuresThatAreFarApartAreNone() {
        for (int i = 0; i < 9; i++) {
            fails("k" + i, Trouble.FAILS_BEFORE_KEEPING);
            nowNanos += 31 * SECOND;
            assertEquals(Kind.WELL, guard.state().kind());
        }
        fails("k10", Trouble.FAILS_BEFORE_KEEPING);
        fails("k11", Trouble.FAILS_BEFORE_KEEPING);
        assertEquals(Kind.READING_ONLY, guard.state().kind());
    }

    private void free(long bytes) {
        freeBytes = bytes;
        guard.look(log::probe);
    }

    private Answer ask(String key, StandCommand command) {
        return desk.submit(key, "body of " + key, command).join();
    }

    private void fails(String key, Trouble trouble) {
        log.next(trouble);
        CompletionException failed =
                assertThrows(CompletionException.class, () -> ask(key, beef()));
        assertTrue(failed.getCause() instanceof LogFault, failed::toString);
    }

    private boolean refusedFor(Reason reason, String key) {
        long before = log.lastSeq();
        Answer answer = ask(key, beef());
        boolean refused = answer.outcome() == Outcome.REFUSED;
        if (refused) {
            assertEquals(reason, answer.refusal().orElseThrow().reason());
            assertEquals(before, log.lastSeq(), "nothing was written");
        }
        return refused;
    }

    private StandCommand beef() {
        return new StandCommand.ForOrders(new OrderCommand.Place("", true, script.asked("beef")));
    }
}
