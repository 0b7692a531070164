package sopwell.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.call.ManyCalls;
import sopwell.menu.Lang;
import sopwell.money.CashRule;
import sopwell.money.TaxRule;

/** What travels to the page arrives there whole. */
class KitLaws {
    private static final Phrases PHRASES =
            new Phrases(
                    Lang.ES,
                    Map.of("call.EMPTY", "Dos\nlíneas, una \\ y \r", "counter.total", "Total"));

    @Test
    void readingWhatWasWrittenGivesTheMenuOfAnyStand() {
        for (long seed = 0; seed < 300; seed++) {
            Kit kit =
                    new Kit(
                            ManyCalls.other(seed, 1).menu(),
                            new TaxRule(8_250),
                            CashRule.USUAL,
                            PHRASES);
            Kit back = Kit.read(kit.written());
            assertEquals(kit.menu().parts(), back.menu().parts(), "seed " + seed);
            assertEquals(kit.menu().revision(), back.menu().revision());
            assertEquals(kit.tax(), back.tax());
            assertEquals(kit.cash(), back.cash());
        }
    }

    @Test
    void textsWithLineBreaksAndBackslashesArriveAsTheyWere() {
        Kit kit = new Kit(ManyCalls.demo(1, 1).menu(), new TaxRule(0), CashRule.USUAL, PHRASES);
        Phrases back = Kit.read(kit.written()).phrases();
        assertEquals(PHRASES.get("call.EMPTY"), back.get("call.EMPTY"));
        assertEquals(Lang.ES, back.lang());
    }

    @Test
    void aCutKitIsAFaultAndNoHalfMenu() {
        String whole =
                new Kit(ManyCalls.demo(1, 1).menu(), new TaxRule(0), CashRule.USUAL, PHRASES)
                        .written();
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            String cut = whole.substring(0, random.nextInt(whole.length()));
            RuntimeException fault = assertThrows(RuntimeException.class, () -> Kit.read(cut));
            assertTrue(
                    fault instanceof Check.Broken || fault instanceof NumberFormatException,
                    fault.toString());
        }
    }

    @Test
    void takesOnlyTheTextsThatACounterSays() {
        Map<String, String> all =
                Map.of("call.EMPTY", "a", "quote", "b", "mix.title", "c", "outbox.one", "d");
        Kit kit =
                Kit.of(
                        ManyCalls.demo(1, 1).menu(),
                        new TaxRule(0),
                        CashRule.USUAL,
                        new Phrases(Lang.EN, all));
        assertTrue(kit.phrases().has("outbox.one") && kit.phrases().has("quote"));
        assertTrue(!kit.phrases().has("mix.title"));
    }

    @Test
    void moneyStandsInGroupsOfThree() {
        Map<Long, String> money =
                Map.of(
                        0L, "$0.00",
                        5L, "$0.05",
                        -5L, "-$0.05",
                        99L, "$0.99",
                        100L, "$1.00",
                        123_456L, "$1,234.56",
                        100_000_000L, "$1,000,000.00",
                        -99_999_900L, "-$999,999.00");
        money.forEach((cents, text) -> assertEquals(text, PHRASES.money(cents)));
    }
}
