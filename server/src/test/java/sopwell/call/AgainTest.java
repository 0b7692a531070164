package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.call.Again.Wanted;

class AgainTest {
    private static final CallParser PARSER = new CallParser(DemoMenu.read());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "again | 0 | ''",
                "  SAME   again  | 0 | ''",
                "same again but dry | 0 | dry",
                "again 214 | 214 | ''",
                "again #7, but sweet | 7 | sweet",
                "same dry no hot | 0 | dry no hot",
                "otra vez 12 pero seco | 12 | seco",
            })
    void readsWhatIsToBeHadAgain(String text, String number, String but) {
        Wanted wanted = new Wanted(Integer.parseInt(number), but);
        assertEquals(Optional.of(wanted), Again.read(text));
    }

    @Test
    void takesNoOtherCallForIt() {
        for (String text : List.of("", "beef", "sameness", "2 beef again", "againbeef")) {
            assertTrue(Again.read(text).isEmpty(), text);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 beef dipped hot, fries | | 2 beef dipped hot, fries",
                "2 beef dipped hot, fries | dry | 2 beef dry hot, fries",
                "beef dipped hot provolone | sweet | beef dipped sweet provolone",
                "beef dipped hot provolone | no cheese | beef dipped hot",
                "beef, large beef dry hot | large twice | large beef twice, large beef twice hot",
                "beef dipped no hot | sweet | beef dipped sweet",
                "combo dipped hot, cola | extra | combo dipped hot extra, cola",
            })
    void changesOnlyWhatIsSpokenOf(String call, String but, String expected) {
        Again.Outcome outcome = again(call, but == null ? "" : but);
        assertEquals(Optional.empty(), outcome.refusal());
        assertEquals(lines(expected), lines(outcome.call()), outcome.call());
    }

    @Test
    void refusesChangesThatNoLineTakes() {
        assertEquals(CallRefusal.Why.UNKNOWN_WORD, why("beef dipped", "purple"));
        assertEquals(CallRefusal.Why.NOT_FOR_ITEM, why("fries", "dipped"));
        assertEquals(CallRefusal.Why.CLASH, why("beef dipped", "dry twice"));
        CallRefusal refusal = again("beef", "dry purple").refusal().orElseThrow();
        assertEquals(5, refusal.column());
    }

    /** The law: an order again is the same order, whatever it was. */
    @Test
    void againWithoutChangesIsTheSame() {
        int said = 0;
        for (long seed = 0; seed < 300; seed++) {
            Reading reading = PARSER.read(new RandomCalls(DemoMenu.read(), seed).mixture(200));
            if (reading.refusal().isEmpty()) {
                Again.Outcome outcome = Again.with(PARSER, reading.counted(), "");
                assertEquals(reading.counted(), lines(outcome.call()), "seed " + seed);
                said++;
            }
        }
        for (String item : List.of("beef", "combo", "hot dog")) {
            for (String words : List.of("", "extra", "no onion", "hot", "everything")) {
                Reading reading = PARSER.read("3 " + item + " " + words);
                if (reading.refusal().isEmpty()) {
                    String call = Again.with(PARSER, reading.counted(), "").call();
                    assertEquals(reading.counted(), lines(call), item + " " + words);
                    said++;
                }
            }
        }
        assertTrue(said >= 8, said + " calls could be read");
    }

    private static CallRefusal.Why why(String call, String but) {
        return again(call, but).refusal().orElseThrow().why();
    }

    private static Again.Outcome again(String call, String but) {
        return Again.with(PARSER, lines(call), but);
    }

    private static List<Counted> lines(String call) {
        Reading reading = PARSER.read(call);
        assertEquals(Optional.empty(), reading.refusal(), call);
        return reading.counted();
    }
}
