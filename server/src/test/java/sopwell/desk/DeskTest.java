package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Answer.Outcome;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.TroubledLog.Trouble;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.log.LogFault;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.Reason;
import sopwell.storage.MemoryLog;

/** The one writer: durable before answered, once per key, and well again after trouble. */
class DeskTest {
    private final Script script = new Script();
    private final TroubledLog log = new TroubledLog(new MemoryLog("test"));
    private final List<Recorded> shown = Collections.synchronizedList(new ArrayList<>());
    private Follower follower;
    private Desk desk;

    @BeforeEach
    void open() {
        follower = new Follower(log, Script.SETTINGS);
        desk =
                new Desk(
                        log,
                        Script.SETTINGS,
                        () -> Instant.ofEpochMilli(script.nowMs()),
                        events -> {
                            shown.addAll(events);
                            follower.follow(events);
                        });
        ask("menu", new AdoptMenu(script.menu()));
    }

    @AfterEach
    void close() {
        desk.close();
        follower.close();
    }

    @Test
    void anAnswerMeansThatTheLogHasIt() {
        Answer answer = ask("k1", place("beef"));
        assertEquals(Outcome.DONE, answer.outcome());
        assertEquals(log.lastSeq(), last(answer).seq());
        assertEquals(2, answer.events().size(), "the day opens, the order is placed");
        assertEquals(answer.events(), log.find("k1").orElseThrow().events());
    }

    @Test
    void aRepeatGetsTheFirstAnswerAndAddsNothing() {
        Answer first = ask("k1", place("beef"));
        Answer second = ask("k1", place("beef"));
        assertEquals(Outcome.REPEATED, second.outcome());
        assertEquals(first.events(), second.events());
        assertEquals(first.events().get(1).seq(), log.lastSeq());
    }

    @Test
    void aRepeatOfSomethingThatCouldNotBeDoneTwiceGetsTheFirstAnswerToo() {
        Answer placed = ask("k1", place("beef"));
        StandCommand up = new ForKitchen(new KitchenCommand.Up(part(placed)));
        Answer first = ask("k2", up);
        assertEquals(Outcome.REPEATED, ask("k2", up).outcome());
        assertEquals(first.events(), ask("k2", up).events());
        assertEquals(Reason.ALREADY_UP, ask("k3", up).refusal().orElseThrow().reason());
    }

    @Test
    void aKeyForAnotherCommandIsSaid() {
        ask("k1", place("beef"));
        CompletableFuture<Answer> other = desk.submit("k1", "another body", place("fries"));
        assertEquals(Outcome.KEY_REUSED, other.join().outcome());
        assertEquals(1, orders());
    }

    @Test
    void repeatsThatArriveTogetherAreOneOrder() {
        CountDownLatch gate = new CountDownLatch(1);
        log.holdAt(gate);
        List<CompletableFuture<Answer>> answers = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            answers.add(desk.submit("same", "same", place("beef")));
        }
        gate.countDown();
        List<Answer> all = answers.stream().map(CompletableFuture::join).toList();
        assertEquals(1, orders());
        assertEquals(1, all.stream().filter(a -> a.outcome() == Outcome.DONE).count());
        assertEquals(1, all.stream().map(Answer::events).distinct().count());
    }

    @Test
    void aRepeatIsKnownAfterARestart() {
        Answer first = ask("k1", place("beef"));
        desk.close();
        desk =
                new Desk(
                        log,
                        Script.SETTINGS,
                        () -> Instant.ofEpochMilli(script.nowMs()),
                        follower::follow);
        assertEquals(first.events(), ask("k1", place("beef")).events());
    }

    @Test
    void aRepeatFromAnEarlierDayIsKnownToo() {
        Answer first = ask("k1", place("beef"));
        script.at("2026-01-15T12:00");
        ask("k2", place("fries"));
        Answer again = ask("k1", place("beef"));
        assertEquals(Outcome.REPEATED, again.outcome());
        assertEquals(first.events(), again.events());
        assertEquals(1, orders(), "the new day has its own order alone");
        assertEquals(2, ((OrderPlaced) last(ask("k3", place("cola"))).event()).number());
    }

    @Test
    void aFailedAppendFailsItsCommandsAndTheNextOnesWork() {
        ask("k1", place("beef"));
        log.next(Trouble.FAILS_BEFORE_KEEPING);
        assertFails("k2", place("beef"));
        Answer next = ask("k3", place("fries"));
        assertEquals(2, ((OrderPlaced) last(next).event()).number(), "no number was used up");
        assertEquals(2, orders());
    }

    @Test
    void whatWasKeptAlthoughTheAppendFailedIsThereOnceAfterTheRepeat() {
        ask("k1", place("beef"));
        log.next(Trouble.FAILS_AFTER_KEEPING);
        assertFails("k2", place("beef"));
        Answer repeat = ask("k2", place("beef"));
        assertEquals(Outcome.REPEATED, repeat.outcome());
        assertEquals(2, orders(), "the screens learn of it as well");
    }

    @Test
    void aDiskThatComesBackIsUsedAgain() {
        ask("k1", place("beef"));
        log.next(Trouble.STAYS_BROKEN);
        assertFails("k2", place("beef"));
        assertFails("k3", place("beef"));
        log.next(Trouble.NONE);
        assertEquals(Outcome.DONE, ask("k2", place("beef")).outcome());
        assertEquals(2, orders());
    }

    @Test
    void nothingIsShownThatTheLogDoesNotHave() {
        log.next(Trouble.FAILS_BEFORE_KEEPING);
        assertFails("k1", place("beef"));
        ask("k2", place("fries"));
        for (Recorded recorded : shown) {
            List<Recorded> kept = new ArrayList<>();
            log.read(recorded.seq(), recorded.seq(), kept::add);
            assertEquals(List.of(recorded), kept);
        }
        assertInstanceOf(MenuAdopted.class, shown.get(0).event());
    }

    @Test
    void aFullQueueIsSaidAtOnce() {
        CountDownLatch gate = new CountDownLatch(1);
        log.holdAt(gate);
        List<CompletableFuture<Answer>> waiting = new ArrayList<>();
        assertThrows(
                DeskBusy.class,
                () -> {
                    for (int i = 0; i < 20_000; i++) {
                        waiting.add(desk.submit("k" + i, "k" + i, place("cola")));
                    }
                });
        gate.countDown();
        waiting.forEach(CompletableFuture::join);
        assertTrue(orders() > 0);
    }

    @Test
    void theClockSteppingBackNeverMakesTimeRunBackwards() {
        ask("k1", place("beef"));
        long before = script.nowMs();
        script.later(-3600);
        Answer answer = ask("k2", place("beef"));
        assertEquals(before, last(answer).atMs());
    }

    @Test
    void aClosedDeskTakesNothingMore() {
        desk.close();
        assertThrows(DeskBusy.class, () -> desk.submit("k", "k", place("beef")));
    }

    private StandCommand place(String call) {
        return new ForOrders(new OrderCommand.Place("", true, script.asked(call)));
    }

    private Answer ask(String key, StandCommand command) {
        return desk.submit(key, "body of " + key, command).join();
    }

    private void assertFails(String key, StandCommand command) {
        CompletableFuture<Answer> answer = desk.submit(key, "body of " + key, command);
        CompletionException failed = assertThrows(CompletionException.class, answer::join);
        assertInstanceOf(LogFault.class, failed.getCause());
    }

    private int orders() {
        return follower.ask(stand -> stand.orders().all().size()).join();
    }

    private static Recorded last(Answer answer) {
        return answer.events().get(answer.events().size() - 1);
    }

    private static PartId part(Answer placed) {
        OrderPlaced order = (OrderPlaced) last(placed).event();
        return new PartId(order.order(), 1, "line");
    }
}
