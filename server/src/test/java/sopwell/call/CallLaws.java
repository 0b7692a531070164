package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import sopwell.Limits;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.menu.Words;

/** What holds for every call and every order. */
class CallLaws {
    private static final int ORDERS_PER_MENU = 20;
    private static final Menu DEMO = DemoMenu.read();
    private static final CallParser PARSER = new CallParser(DEMO);
    private static final CallPrinter PRINTER = new CallPrinter(PARSER);

    @Property(tries = 3000)
    void readingWhatWasPrintedGivesTheOrder(@ForAll long seed) {
        List<Counted> order = new RandomCalls(DEMO, seed).order(8);
        assertRoundTrip(PARSER, order);
    }

    @Property(tries = 300)
    void readingWhatWasPrintedGivesTheOrderOnAnyMenu(@ForAll long seed) {
        Menu menu = RandomMenus.menu(seed);
        CallParser parser = new CallParser(menu);
        RandomCalls calls = new RandomCalls(menu, seed);
        for (int i = 0; i < ORDERS_PER_MENU; i++) {
            assertRoundTrip(parser, calls.order(4));
        }
    }

    @Property(tries = 500)
    void printingIsTheSameAfterReading(@ForAll long seed) {
        String text = PRINTER.print(new RandomCalls(DEMO, seed).order(8));
        assertEquals(text, PRINTER.print(PARSER.read(text).counted()));
    }

    @Property(tries = 3000)
    void anyTextAtAllIsReadOrRefused(@ForAll @StringLength(max = 300) String text) {
        Readings.check(PARSER, text);
    }

    @Property(tries = 3000)
    void anyMixtureOfTheMenusWordsIsReadOrRefused(@ForAll long seed) {
        Readings.check(PARSER, new RandomCalls(DEMO, seed).mixture(40));
    }

    @Property(tries = 300)
    void anyMixtureIsReadOrRefusedOnAnyMenu(@ForAll long seed) {
        Menu menu = RandomMenus.menu(seed);
        CallParser parser = new CallParser(menu);
        RandomCalls calls = new RandomCalls(menu, seed);
        for (int i = 0; i < ORDERS_PER_MENU; i++) {
            Readings.check(parser, calls.mixture(20));
        }
    }

    @Property(tries = 50)
    void longTextsAreReadOrRefused(@ForAll long seed) {
        String text = new RandomCalls(DEMO, seed).mixture(2000);
        Readings.check(PARSER, text);
        String cut = text.substring(0, Math.min(text.length(), Limits.CALL_CHARS_MAX));
        Readings.check(PARSER, cut);
    }

    @Property(tries = 2000)
    void capitalsAndSpacesChangeNothing(@ForAll long seed) {
        String text = new RandomCalls(DEMO, seed).mixture(12);
        Reading plain = PARSER.read(text);
        String wide = "  " + text.replace(" ", " \t ").toUpperCase(Locale.ROOT) + " ";
        Reading loud = PARSER.read(wide);
        assertEquals(plain.counted(), loud.counted());
        assertEquals(
                plain.refusal().map(CallRefusal::why), loud.refusal().map(CallRefusal::why), text);
        assertEquals(
                plain.refusal().map(CallRefusal::suggestions).map(CallLaws::small),
                loud.refusal().map(CallRefusal::suggestions).map(CallLaws::small),
                text);
    }

    @Property(tries = 1000)
    void everyOrderCanBeReadBackInEveryLanguage(@ForAll long seed) {
        for (Counted line : new RandomCalls(DEMO, seed).order(4)) {
            for (Lang lang : Lang.values()) {
                String said = ReadBack.say(DEMO, lang, line.quantity(), line.selection());
                String name = DEMO.item(line.selection().item()).name().in(lang);
                assertTrue(said.contains(name), said);
            }
        }
    }

    private static void assertRoundTrip(CallParser parser, List<Counted> order) {
        String text = new CallPrinter(parser).print(order);
        Reading reading = parser.read(text);
        assertEquals(java.util.Optional.empty(), reading.refusal(), text);
        assertEquals(order, reading.counted(), text);
    }

    private static List<String> small(List<String> texts) {
        return texts.stream().map(Words::normal).toList();
    }
}
