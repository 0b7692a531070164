package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
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

    @Test
    void readingWhatWasPrintedGivesTheOrder() {
        Seeds.each(
                3000,
                seed -> {
                    List<Counted> order = new RandomCalls(DEMO, seed).order(8);
                    assertRoundTrip(PARSER, order);
                    return true;
                });
    }

    @Test
    void readingWhatWasPrintedGivesTheOrderOnAnyMenu() {
        Seeds.each(
                300,
                seed -> {
                    Menu menu = RandomMenus.menu(seed);
                    CallParser parser = new CallParser(menu);
                    RandomCalls calls = new RandomCalls(menu, seed);
                    for (int i = 0; i < ORDERS_PER_MENU; i++) {
                        assertRoundTrip(parser, calls.order(4));
                    }
                    return true;
                });
    }

    @Test
    void printingIsTheSameAfterReading() {
        Seeds.each(
                500,
                seed -> {
                    String text = PRINTER.print(new RandomCalls(DEMO, seed).order(8));
                    assertEquals(text, PRINTER.print(PARSER.read(text).counted()));
                    return true;
                });
    }

    @Test
    void anyTextAtAllIsReadOrRefused() {
        Seeds.each(
                3000,
                seed -> {
                    SplittableRandom random = new SplittableRandom(seed);
                    StringBuilder text = new StringBuilder();
                    int length = random.nextInt(300);
                    for (int i = 0; i < length; i++) {
                        int below = random.nextInt(3) == 0 ? 0x110000 : 0x250;
                        text.appendCodePoint(random.nextInt(below));
                    }
                    Readings.check(PARSER, text.toString());
                    return true;
                });
    }

    @Test
    void anyMixtureOfTheMenusWordsIsReadOrRefused() {
        Seeds.each(
                3000,
                seed -> {
                    Readings.check(PARSER, new RandomCalls(DEMO, seed).mixture(40));
                    return true;
                });
    }

    @Test
    void anyMixtureIsReadOrRefusedOnAnyMenu() {
        Seeds.each(
                300,
                seed -> {
                    Menu menu = RandomMenus.menu(seed);
                    CallParser parser = new CallParser(menu);
                    RandomCalls calls = new RandomCalls(menu, seed);
                    for (int i = 0; i < ORDERS_PER_MENU; i++) {
                        Readings.check(parser, calls.mixture(20));
                    }
                    return true;
                });
    }

    @Test
    void longTextsAreReadOrRefused() {
        Seeds.each(
                50,
                seed -> {
                    String text = new RandomCalls(DEMO, seed).mixture(2000);
                    Readings.check(PARSER, text);
                    String cut = text.substring(0, Math.min(text.length(), Limits.CALL_CHARS_MAX));
                    Readings.check(PARSER, cut);
                    return true;
                });
    }

    @Test
    void capitalsAndSpacesChangeNothing() {
        Seeds.each(
                2000,
                seed -> {
                    String text = new RandomCalls(DEMO, seed).mixture(12);
                    Reading plain = PARSER.read(text);
                    String wide = "  " + text.replace(" ", " \t ").toUpperCase(Locale.ROOT) + " ";
                    Reading loud = PARSER.read(wide);
                    assertEquals(plain.counted(), loud.counted());
                    assertEquals(
                            plain.refusal().map(CallRefusal::why),
                            loud.refusal().map(CallRefusal::why),
                            text);
                    assertEquals(
                            plain.refusal().map(CallRefusal::suggestions).map(CallLaws::small),
                            loud.refusal().map(CallRefusal::suggestions).map(CallLaws::small),
                            text);
                    return true;
                });
    }

    @Test
    void everyOrderCanBeReadBackInEveryLanguage() {
        Seeds.each(
                1000,
                seed -> {
                    for (Counted line : new RandomCalls(DEMO, seed).order(4)) {
                        for (Lang lang : Lang.values()) {
                            String said =
                                    ReadBack.say(DEMO, lang, line.quantity(), line.selection());
                            String name = DEMO.item(line.selection().item()).name().in(lang);
                            assertTrue(said.contains(name), said);
                        }
                    }
                    return true;
                });
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
