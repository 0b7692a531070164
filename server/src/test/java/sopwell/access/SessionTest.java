package sopwell.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static sopwell.access.Desk.value;
import static sopwell.access.Desk.why;

import org.junit.jupiter.api.Test;

/** How sessions begin and end, and devices are let in. */
class SessionTest {
    private static final long MINUTE = 60_000;
    private static final long HOUR = 60 * MINUTE;

    private final Desk desk = Desk.closed();
    private final Shown till = desk.paired(Use.COUNTER);

    private Shown in(Person person) {
        return Desk.after(till, value(desk.access().byPin(till, person.id(), Desk.PIN)));
    }

    private Actor.Kind kind(Shown shown) {
        return desk.access().who(shown).kind();
    }

    @Test
    void aLeadsSessionEndsAfterFifteenIdleMinutes() {
        Shown lead = in(desk.person("Luz", Role.LEAD));
        desk.later(15 * MINUTE - 1);
        assertEquals(Actor.Kind.PERSON, kind(lead));
        desk.later(15 * MINUTE);
        assertEquals(Actor.Kind.DEVICE, kind(lead));
    }

    @Test
    void anothersEndsAfterTwelveIdleHoursAndAllAfterADay() {
        Person ana = desk.person("Ana", Role.COUNTER);
        Shown idle = in(ana);
        desk.later(12 * HOUR);
        assertEquals(Actor.Kind.DEVICE, kind(idle));
        Shown busy = in(ana);
        for (int i = 0; i < 23; i++) {
            desk.later(HOUR);
            assertEquals(Actor.Kind.PERSON, kind(busy), "hour " + i);
        }
        desk.later(HOUR);
        assertEquals(Actor.Kind.DEVICE, kind(busy));
    }

    @Test
    void whatOnlyLooksOnDoesNotKeepASessionAlive() {
        Shown lead = in(desk.person("Luz", Role.LEAD));
        for (int i = 0; i < 14; i++) {
            desk.later(MINUTE);
            assertEquals(Actor.Kind.PERSON, desk.access().stillWho(lead).kind());
        }
        desk.later(MINUTE);
        assertEquals(Actor.Kind.DEVICE, desk.access().stillWho(lead).kind());
    }

    @Test
    void typingThePasswordGivesAnotherTokenThatIsFreshForFiveMinutes() {
        Person olga = value(desk.access().roster().setPin(Actor.ANYBODY, "s1", Desk.PIN));
        Shown before = in(olga);
        assertEquals(true, desk.access().who(before).mustProve(Right.REFUND, desk.nowMs.get()));
        Shown after = Desk.after(till, value(desk.access().prove(before, Desk.PASSWORD)));
        assertNotEquals(before.session(), after.session());
        assertEquals(Actor.Kind.DEVICE, kind(before));
        desk.later(5 * MINUTE - 1);
        assertEquals(false, desk.access().who(after).mustProve(Right.REFUND, desk.nowMs.get()));
        desk.later(1);
        assertEquals(true, desk.access().who(after).mustProve(Right.REFUND, desk.nowMs.get()));
    }

    @Test
    void sessionsEndWithTheirPersonAndDeviceAndBySigningOut() {
        Person ana = desk.person("Ana", Role.COUNTER);
        Shown first = in(ana);
        desk.access().signOut(first);
        assertEquals(Actor.Kind.DEVICE, kind(first));
        Shown second = in(ana);
        value(desk.access().roster().endPerson(Actor.ANYBODY, ana.id()));
        assertEquals(Actor.Kind.DEVICE, kind(second));
        Shown third = in(desk.person("Bo", Role.COUNTER));
        value(desk.access().roster().endDevice("d1"));
        assertEquals(Actor.Kind.NOBODY, kind(third));
    }

    @Test
    void sessionsSurviveARestartWithTheirEnds() {
        Shown ana = in(desk.person("Ana", Role.COUNTER));
        desk.access().tick();
        desk.restart();
        assertEquals(Actor.Kind.PERSON, kind(ana));
        desk.later(12 * HOUR);
        desk.restart();
        assertEquals(Actor.Kind.DEVICE, kind(ana));
    }

    @Test
    void theOwnersPasswordLetsANewDeviceIn() {
        SignedIn in =
                value(desk.access().byOwner(Shown.NOTHING, Desk.PASSWORD, owner -> Noting.NOWHERE));
        Shown later = Desk.after(Shown.NOTHING, in);
        assertEquals(Role.OWNER, desk.access().who(later).role());
        assertEquals(Use.OFFICE, desk.access().state().device("d2").orElseThrow().use());
    }

    @Test
    void aPairingCodeIsGoodOnceAndForTwoMinutes() {
        Roster roster = desk.access().roster();
        String code = value(roster.offer("line", Use.LINE)).code();
        assertEquals(8, code.length());
        value(roster.pairByCode(code.toLowerCase(java.util.Locale.ROOT), "a"));
        assertEquals(Refused.Why.CODE_WRONG, why(roster.pairByCode(code, "b")));
        String late = value(roster.offer("line", Use.LINE)).code();
        desk.later(2 * MINUTE);
        assertEquals(Refused.Why.CODE_WRONG, why(roster.pairByCode(late, "a")));
    }

    @Test
    void anAddressHasFiveWrongCodes() {
        Roster roster = desk.access().roster();
        String code = value(roster.offer("line", Use.LINE)).code();
        for (int i = 0; i < 5; i++) {
            assertEquals(Refused.Why.CODE_WRONG, why(roster.pairByCode("0000000" + i, "a")));
        }
        assertEquals(Refused.Why.CODE_TRIES, why(roster.pairByCode(code, "a")));
        value(roster.pairByCode(code, "b"));
    }

    @Test
    void aClockThatIsSetBackKeepsNothingOpenForLonger() {
        value(desk.access().roster().setPin(Actor.ANYBODY, "s1", Desk.PIN));
        Shown owner = Desk.after(till, value(desk.access().byPassword(till, "s1", Desk.PASSWORD)));
        assertEquals(false, desk.access().who(owner).mustProve(Right.REFUND, desk.nowMs.get()));
        desk.later(-1_000);
        assertEquals(true, desk.access().who(owner).mustProve(Right.REFUND, desk.nowMs.get()));
        assertEquals(Actor.Kind.PERSON, kind(owner));
        desk.later(-15 * MINUTE);
        assertEquals(Actor.Kind.DEVICE, kind(owner));
        desk.access().tick();
        desk.later(15 * MINUTE);
        assertEquals(Actor.Kind.DEVICE, kind(owner), "what is over stays over");
    }

    @Test
    void aLeadMakesNoOwnerAndTheLastOwnerStays() {
        Actor lead = desk.access().who(in(desk.person("Luz", Role.LEAD)));
        Roster roster = desk.access().roster();
        assertEquals(Refused.Why.OWNERS_ONLY, why(roster.addPerson(lead, "Eve", Role.OWNER)));
        assertEquals(Refused.Why.OWNERS_ONLY, why(roster.setRole(lead, "s2", Role.OWNER)));
        assertEquals(Refused.Why.OWNERS_ONLY, why(roster.setPassword(lead, "s1", "my own one")));
        assertEquals(Refused.Why.OWNERS_ONLY, why(roster.makeToken(lead, "x", Role.OWNER)));
        assertEquals(Refused.Why.LAST_OWNER, why(roster.endPerson(Actor.ANYBODY, "s1")));
        assertEquals(Refused.Why.LAST_OWNER, why(roster.setRole(Actor.ANYBODY, "s1", Role.LINE)));
    }
}
