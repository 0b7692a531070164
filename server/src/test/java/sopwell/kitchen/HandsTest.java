package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.Script;
import sopwell.kitchen.StationCommand.SetHands;
import sopwell.menu.Station;
import sopwell.orders.Reason;

/** Who is on duty where, and for how long that holds. */
class HandsTest {
    private final Script script = new Script();
    private final Kitchen kitchen = script.stand().kitchen();
    private final Station line = script.menu().station("line");

    @Test
    void theMenusHandsHoldUntilOthersAreSaid() {
        assertEquals(line.hands(), kitchen.hands(line));
        assertFalse(script.decide(new SetHands("line", line.hands() + 2)).isRefused());
        assertEquals(line.hands() + 2, kitchen.hands(line));
        Station grill = script.menu().station("grill");
        assertEquals(grill.hands(), kitchen.hands(grill), "only the one that was named");
    }

    @Test
    void handsBeforeTheFirstGuestOpenTheDay() {
        assertFalse(script.stand().orders().isDayOpen());
        script.decide(new SetHands("line", 5));
        assertTrue(script.stand().orders().isDayOpen());
        script.place("beef");
        assertEquals(5, kitchen.hands(line), "the first order opens no other day");
    }

    @Test
    void anotherDateBeginsWithTheMenusHands() {
        script.place("beef");
        script.decide(new SetHands("line", 5));
        script.later((int) TimeUnit.DAYS.toSeconds(1));
        script.place("beef");
        assertEquals(line.hands(), kitchen.hands(line));
    }

    @Test
    void noSuchStationAndNoSuchNumberAreRefused() {
        assertEquals(Reason.UNKNOWN_STATION, reason(script.decide(new SetHands("roof", 1))));
        for (int hands : List.of(-1, 0, Limits.STATION_HANDS_MAX + 1)) {
            assertEquals(Reason.HANDS_RANGE, reason(script.decide(new SetHands("line", hands))));
        }
        assertTrue(script.log().stream().noneMatch(e -> e.event() instanceof StationEvent));
    }
}
