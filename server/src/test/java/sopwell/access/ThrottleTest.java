package sopwell.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.access.Desk.value;
import static sopwell.access.Desk.why;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** How often a secret may be tried. */
class ThrottleTest {
    private final Desk desk = Desk.closed();
    private final Person ana = desk.person("Ana", Role.COUNTER);
    private final Shown till = desk.paired(Use.COUNTER);

    private Refused wrong() {
        return desk.access().byPin(till, ana.id(), "0000").join().refused().orElseThrow();
    }

    @Test
    void noPinIsLookedAtForADeviceThatIsNotPaired() {
        for (int pin = 0; pin < 10_000; pin++) {
            String typed = String.valueOf(10_000 + pin).substring(1);
            Shown stranger = Shown.of("", pin % 2 == 0 ? "" : "guess" + pin, "");
            assertEquals(
                    Refused.Why.NOT_PAIRED, why(desk.access().byPin(stranger, ana.id(), typed)));
        }
        assertEquals(0, desk.looked.get());
    }

    @Test
    void eachTryIsToldByIdsAlone() {
        desk.attempts.clear();
        for (int i = 0; i < 6; i++) {
            assertFalse(wrong().why() == Refused.Why.LOCKED);
        }
        desk.later(1_000_000_000);
        value(desk.access().byPin(till, ana.id(), Desk.PIN));
        assertEquals(Refused.Why.CODE_WRONG, why(desk.access().roster().pairByCode("x", "here")));
        String one = "PIN " + ana.id() + " d1 ";
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            expected.add(one + "Optional[WRONG_SECRET] true");
        }
        expected.add(one + "Optional[WAIT] true");
        expected.add(one + "Optional[WAIT] false");
        expected.add(one + "Optional.empty true");
        expected.add("CODE   Optional[CODE_WRONG] true");
        assertEquals(
                expected,
                desk.attempts.stream()
                        .map(
                                a ->
                                        String.join(
                                                " ",
                                                a.secret().name(),
                                                a.person(),
                                                a.device(),
                                                a.refused().toString(),
                                                "" + a.wasLooked()))
                        .toList());
    }

    @Test
    void fiveAreLookedAtThenOneAfterEachWaitWhichDoubles() {
        List<Long> waits = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            assertEquals(Refused.Why.WRONG_SECRET, wrong().why());
        }
        for (int i = 5; i < 20; i++) {
            Refused refused = wrong();
            assertEquals(Refused.Why.WAIT, refused.why());
            long seconds = Long.parseLong(refused.args().get(0));
            waits.add(seconds);
            desk.later(seconds * 1_000 - 1);
            assertEquals(Refused.Why.WAIT, wrong().why());
            assertEquals(i, desk.looked.get(), "a try during the wait is not looked at");
            desk.later(1);
        }
        assertEquals(
                List.of(
                        30L, 60L, 120L, 240L, 480L, 900L, 900L, 900L, 900L, 900L, 900L, 900L, 900L,
                        900L, 900L),
                waits);
        assertEquals(Refused.Why.LOCKED, wrong().why());
        desk.later(1_000_000_000);
        assertEquals(Refused.Why.LOCKED, why(desk.access().byPin(till, ana.id(), Desk.PIN)));
        assertEquals(20, desk.looked.get());
    }

    @Test
    void somebodyWhoIsLockedIsUnlockedByALead() {
        for (int i = 0; i < 20; i++) {
            wrong();
            desk.later(900_000);
        }
        assertEquals(Refused.Why.LOCKED, wrong().why());
        Actor lead = actor(desk.person("Luz", Role.LEAD));
        value(desk.access().roster().unlock(lead, ana.id()));
        assertEquals(ana.id(), value(desk.access().byPin(till, ana.id(), Desk.PIN)).actor().id());
    }

    @Test
    void theCountSurvivesARestart() {
        for (int i = 0; i < 5; i++) {
            wrong();
        }
        desk.restart();
        assertEquals(Refused.Why.WAIT, wrong().why());
        assertEquals(5, desk.looked.get());
    }

    @Test
    void aBurstHasNoMoreThanFive() throws InterruptedException {
        ExecutorService one = Executors.newSingleThreadExecutor();
        ExecutorService many = Executors.newFixedThreadPool(50);
        Desk busy = Desk.closed(one);
        Person bo = busy.person("Bo", Role.LINE);
        Shown screen = busy.paired(Use.LINE);
        CountDownLatch begin = new CountDownLatch(1);
        List<CompletableFuture<Refused.Why>> all = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            all.add(
                    CompletableFuture.supplyAsync(
                            () -> {
                                await(begin);
                                return why(busy.access().byPin(screen, bo.id(), "0000"));
                            },
                            many));
        }
        begin.countDown();
        long lookedAt = all.stream().map(CompletableFuture::join).filter(w -> w != null).count();
        assertEquals(200, lookedAt);
        assertEquals(5, busy.looked.get());
        one.shutdown();
        many.shutdown();
    }

    @Test
    void othersStillSignInAndSoDoesTheSameAtAnotherDevice() {
        for (int i = 0; i < 20; i++) {
            wrong();
            desk.later(900_000);
        }
        Person bo = desk.person("Bo", Role.COUNTER);
        assertEquals(bo.id(), value(desk.access().byPin(till, bo.id(), Desk.PIN)).actor().id());
        Shown other = desk.paired(Use.COUNTER);
        assertEquals(ana.id(), value(desk.access().byPin(other, ana.id(), Desk.PIN)).actor().id());
    }

    @Test
    void aRightPinForgetsTheWrongOnes() {
        for (int round = 0; round < 3; round++) {
            for (int i = 0; i < 4; i++) {
                wrong();
            }
            assertTrue(desk.access().byPin(till, ana.id(), Desk.PIN).join().isDone());
        }
        assertTrue(desk.access().state().tries().isEmpty());
    }

    @Test
    void theOwnersPasswordIsThrottledForAllStrangersTogether() {
        for (int i = 0; i < 50; i++) {
            assertFalse(owner(Shown.of("", "stranger" + i, ""), "wrong password").isDone());
        }
        assertEquals(5, desk.looked.get());
        Shown office = desk.paired(Use.OFFICE);
        assertTrue(
                desk.access()
                        .byOwner(office, Desk.PASSWORD, owner -> Noting.NOWHERE)
                        .join()
                        .isDone());
    }

    @Test
    void theCommandLineUnlocksTheOwner() {
        for (int i = 0; i < 20; i++) {
            assertFalse(owner(Shown.NOTHING, "wrong password").isDone());
            desk.later(900_000);
        }
        assertEquals(
                Refused.Why.LOCKED,
                why(desk.access().byOwner(Shown.NOTHING, Desk.PASSWORD, owner -> Noting.NOWHERE)));
        value(desk.access().roster().foundOwner("Olga", "another one"));
        assertEquals(
                "s1",
                value(desk.access().byOwner(Shown.NOTHING, "another one", owner -> Noting.NOWHERE))
                        .actor()
                        .id());
    }

    @Test
    void aClockThatIsSetBackGivesNoMoreTriesAndNoLongerWait() {
        for (int i = 0; i < 5; i++) {
            wrong();
        }
        desk.later(-86_400_000);
        assertEquals(List.of("30"), wrong().args());
        desk.later(29_999);
        assertEquals(Refused.Why.WAIT, wrong().why());
        assertEquals(5, desk.looked.get(), "a day back gave a try");
        desk.later(1);
        assertEquals(List.of("60"), wrong().args());
        assertEquals(6, desk.looked.get());
        desk.later(-10_000);
        assertEquals(List.of("70"), wrong().args(), "a little back only makes it longer");
    }

    private Outcome<SignedIn> owner(Shown shown, String password) {
        return desk.access().byOwner(shown, password, owner -> Noting.NOWHERE).join();
    }

    private static Actor actor(Person person) {
        return new Actor(
                Actor.Kind.PERSON,
                person.id(),
                "d1",
                "",
                person.role(),
                AccessRules.rights(person.role()),
                0);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }
}
