package sopwell.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.access.Desk.value;
import static sopwell.access.Desk.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import sopwell.Limits;

/** What is changed about people, and that no change is without its note. */
class RosterTest {
    private static final Actor OWNER = Actor.ANYBODY;

    private final Desk desk = Desk.closed();
    private final Shown till = desk.paired(Use.COUNTER);
    private final Person ana = desk.person("Ana", Role.COUNTER);
    private final Roster roster = desk.access().roster();

    private static final class NoNote extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** Everything that changes who may do what, by its name. */
    private Map<String, Consumer<Roster>> changes() {
        String old = value(roster.addPerson(OWNER, "Old", Role.LINE)).id();
        value(roster.endPerson(OWNER, old));
        value(roster.makeToken(OWNER, "till", Role.LINE));
        String lead = desk.person("Luz", Role.LEAD).id();
        String code = value(roster.offer("line", Use.LINE)).code();
        Map<String, Consumer<Roster>> changes = new LinkedHashMap<>();
        changes.put("add", r -> value(r.addPerson(OWNER, "New", Role.LINE)));
        changes.put("rename", r -> value(r.rename(OWNER, ana.id(), "Anna")));
        changes.put("role", r -> value(r.setRole(OWNER, ana.id(), Role.LEAD)));
        changes.put("pin", r -> value(r.setPin(OWNER, ana.id(), "998877")));
        changes.put("password", r -> value(r.setPassword(OWNER, lead, "another good one")));
        changes.put("unlock", r -> value(r.unlock(OWNER, ana.id())));
        changes.put("forget", r -> value(r.erasePerson(OWNER, old)));
        changes.put("end", r -> value(r.endPerson(OWNER, ana.id())));
        changes.put("erase", r -> value(r.erasePerson(OWNER, lead)));
        changes.put("pair", r -> value(r.pairByCode(code, "here")));
        changes.put("token", r -> value(r.makeToken(OWNER, "other", Role.LINE)));
        changes.put("end token", r -> value(r.endToken("t1")));
        changes.put("end device", r -> value(r.endDevice("d1")));
        return changes;
    }

    @Test
    void whatCouldNotBeNotedIsNotChanged() {
        changes()
                .forEach(
                        (name, change) -> {
                            AccessState before = desk.access().state();
                            int kept = desk.kept.size();
                            Roster unheard =
                                    roster.noted(
                                            id -> {
                                                throw new NoNote();
                                            });
                            RuntimeException fault =
                                    assertThrows(
                                            RuntimeException.class, () -> change.accept(unheard));
                            assertTrue(
                                    fault instanceof NoNote
                                            || (fault instanceof CompletionException
                                                    && fault.getCause() instanceof NoNote),
                                    () -> name + ": " + fault);
                            assertEquals(before, desk.access().state(), name);
                            assertEquals(kept, desk.kept.size(), name + " was put on the disk");
                        });
    }

    @Test
    void everyChangeIsNotedOnceAndBeforeItIsMade() {
        Map<String, Consumer<Roster>> changes = changes();
        changes.forEach(
                (name, change) -> {
                    AccessState before = desk.access().state();
                    List<String> noted = new ArrayList<>();
                    change.accept(
                            roster.noted(
                                    id -> {
                                        assertEquals(before, desk.access().state(), name);
                                        noted.add(id);
                                    }));
                    assertEquals(1, noted.size(), name);
                });
        assertEquals(13, changes.size());
    }

    @Test
    void whatIsRefusedIsNotNoted() {
        List<String> noted = new ArrayList<>();
        Roster heard = roster.noted(noted::add);
        assertEquals(Refused.Why.NAME_FORM, why(heard.rename(OWNER, ana.id(), "  ")));
        assertEquals(
                Refused.Why.NAME_FORM,
                why(heard.rename(OWNER, ana.id(), "x".repeat(Limits.NAME_CHARS_MAX + 1))));
        assertEquals(Refused.Why.NO_SUCH_PERSON, why(heard.rename(OWNER, "s99", "Bo")));
        assertEquals(Refused.Why.LAST_OWNER, why(heard.setRole(OWNER, "s1", Role.LEAD)));
        assertEquals(Refused.Why.LAST_OWNER, why(heard.erasePerson(OWNER, "s1")));
        assertEquals(Refused.Why.PIN_FORM, why(heard.setPin(OWNER, ana.id(), "123")));
        assertEquals(
                Refused.Why.ROLE_WITHOUT_PASSWORD,
                why(heard.setPassword(OWNER, ana.id(), "a good password")));
        assertEquals(Refused.Why.NO_SUCH_THING, why(heard.endDevice("d99")));
        assertEquals(Refused.Why.NO_SUCH_THING, why(heard.endToken("t99")));
        assertEquals(List.of(), noted);
    }

    @Test
    void anotherRoleHoldsAtOnceAlsoForWhoIsSignedIn() {
        Shown in = Desk.after(till, value(desk.access().byPin(till, ana.id(), Desk.PIN)));
        assertFalse(desk.access().who(in).may(Right.SEE_MONEY));
        value(roster.setRole(OWNER, ana.id(), Role.LEAD));
        assertTrue(desk.access().who(in).may(Right.SEE_MONEY));
        value(roster.setPassword(OWNER, ana.id(), Desk.PASSWORD));
        value(roster.setRole(OWNER, ana.id(), Role.LINE));
        assertFalse(desk.access().state().person(ana.id()).orElseThrow().hasPassword());
    }

    @Test
    void aNewPinLetsInWhoWasLockedAndEndsTheOldOnesSessions() {
        Shown in = Desk.after(till, value(desk.access().byPin(till, ana.id(), Desk.PIN)));
        for (int i = 0; i < AccessLimits.SECRET_TRIES_HARD_MAX; i++) {
            desk.access().byPin(till, ana.id(), "0000").join();
            desk.later(AccessLimits.SECRET_WAIT_MILLIS_MAX);
        }
        assertEquals(Refused.Why.LOCKED, why(desk.access().byPin(till, ana.id(), Desk.PIN)));
        value(roster.setPin(OWNER, ana.id(), "998877"));
        assertEquals(Actor.Kind.DEVICE, desk.access().who(in).kind());
        assertEquals(Refused.Why.WRONG_SECRET, why(desk.access().byPin(till, ana.id(), Desk.PIN)));
        assertEquals(ana.id(), value(desk.access().byPin(till, ana.id(), "998877")).actor().id());
    }

    @Test
    void whoIsErasedLeavesTheIdAlone() {
        Shown in = Desk.after(till, value(desk.access().byPin(till, ana.id(), Desk.PIN)));
        value(roster.erasePerson(OWNER, ana.id()));
        assertEquals(Actor.Kind.DEVICE, desk.access().who(in).kind());
        Person gone = desk.kept.get(desk.kept.size() - 1).people().get(1);
        assertEquals(new Person(ana.id(), "", Role.COUNTER, "", "", true, gone.endedAtMs()), gone);
        assertEquals(Refused.Why.NO_SUCH_PERSON, why(roster.erasePerson(OWNER, ana.id())));
        assertFalse(ana.id().equals(desk.person("Bo", Role.LINE).id()), "no id is given twice");
    }

    @Test
    void aLeadForgetsNoOwnersName() {
        Person second = value(roster.addPerson(OWNER, "Second", Role.OWNER));
        value(roster.endPerson(OWNER, second.id()));
        Shown luz = Desk.after(till, value(desk.access().byPin(till, lead(), Desk.PIN)));
        assertEquals(
                Refused.Why.OWNERS_ONLY,
                why(roster.erasePerson(desk.access().who(luz), second.id())));
    }

    private String lead() {
        return desk.person("Luz", Role.LEAD).id();
    }

    @Test
    void aRightPasswordForgetsTheTriesOfItsOwnPlaceAlone() {
        for (int i = 0; i < 9; i++) {
            desk.paired(Use.OFFICE);
        }
        Shown tenth = desk.paired(Use.OFFICE);
        Noting none = Noting.NOWHERE;
        desk.access().byOwner(tenth, "wrong password", owner -> none).join();
        value(desk.access().byOwner(till, Desk.PASSWORD, owner -> none));
        assertEquals(1, desk.access().state().tries().size(), "d1 is not d11");
    }
}
