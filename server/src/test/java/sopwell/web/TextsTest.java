package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.call.CallRefusal;
import sopwell.menu.Lang;
import sopwell.orders.Quote;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.pages.PageStand;

class TextsTest {
    private static final Texts TEXTS = Texts.load();
    private static final T EN = TEXTS.in(Lang.EN);
    private static final T ES = TEXTS.in(Lang.ES);

    @Test
    void everyRefusalHasItsSentenceInBothLanguages() {
        Map<Lang, List<String>> seen = new EnumMap<>(Lang.class);
        for (Lang lang : Lang.values()) {
            seen.put(lang, new java.util.ArrayList<>());
            for (Reason reason : Reason.values()) {
                String means = reason == Reason.MORE_THAN_PAID ? "CARD" : "3";
                Refusal refusal = Refusal.of(reason, "12", "34", means, "4");
                String sentence = TEXTS.in(lang).sentence(refusal, PageStand.menu());
                whole(reason.name(), sentence);
                seen.get(lang).add(sentence);
            }
        }
        assertTrue(Collections.disjoint(seen.get(Lang.EN), seen.get(Lang.ES)));
    }

    @Test
    void everyFaultOfACallHasItsSentenceInBothLanguages() {
        for (Lang lang : Lang.values()) {
            for (CallRefusal.Why why : CallRefusal.Why.values()) {
                List<String> args = List.of("beef", "dip", "dip", "9");
                CallRefusal refusal = new CallRefusal(why, 1, 4, args, List.of(), 0, 0);
                String sentence = TEXTS.in(lang).sentence(refusal, PageStand.menu());
                whole(why.name(), sentence);
            }
        }
    }

    private static void whole(String what, String sentence) {
        assertTrue(sentence.length() > 20, what + ": " + sentence);
        assertFalse(sentence.contains("{"), what + ": " + sentence);
        assertTrue(sentence.matches("(?s).*[.?]$"), what + ": " + sentence);
    }

    @Test
    void namesStationsAndItemsAsTheMenuDoes() {
        Refusal notWhole = Refusal.of(Reason.NOT_WHOLE, 214, "fryer", "grill");
        assertTrue(EN.sentence(notWhole, PageStand.menu()).contains("Fryer and Grill"));
        assertTrue(ES.sentence(notWhole, PageStand.menu()).contains("Freidora y Parrilla"));
        Refusal notToday = Refusal.of(Reason.NOT_TODAY, "pepper-egg", "friday");
        assertTrue(EN.sentence(notToday, PageStand.menu()).contains("pepper and egg"));
        assertTrue(ES.sentence(notToday, PageStand.menu()).contains("viernes"));
    }

    @Test
    void writesMoneyWaitsAndLists() {
        assertEquals("$1,230.05", EN.money(123_005));
        assertEquals("-$0.07", EN.money(-7));
        assertEquals("6–9 min", ES.quote(new Quote(400, 540)));
        assertEquals("4:05", EN.minutes(245.2));
        assertEquals("a, b y c", ES.list(List.of("a", "b", "c")));
        assertEquals("", EN.list(List.of()));
        assertEquals("27 %", EN.percent(17, 63));
        assertEquals("–", EN.percent(0, 0));
    }

    @Test
    void putsArgumentsWhereTheyBelongAndLeavesWhatTheySayAlone() {
        assertEquals("Order {1}", EN.of("counter.placed", "{1}"));
        assertEquals("Order ", EN.of("counter.placed"));
    }

    @Test
    void failsOnAKeyThatIsNotThere() {
        assertThrows(Check.Broken.class, () -> EN.get("no.such.key"));
    }
}
