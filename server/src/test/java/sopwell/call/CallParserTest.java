package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.call.CallRefusal.Why;
import sopwell.call.Span.Role;
import sopwell.menu.Selection;

class CallParserTest {
    private static final CallParser PARSER = new CallParser(DemoMenu.read());

    @Test
    void aLineKnowsItsPlaceAndWhatWasSaid() {
        Reading reading = PARSER.read("fries, 2 beef large both no hot ");
        assertEquals(2, reading.lines().size());
        CallLine beef = reading.lines().get(1);
        Selection selection = new Selection("beef", "large", List.of("wet", "sweet"), List.of());
        assertEquals(new CallLine(2, selection, 8, 24, beef.said()), beef);
        assertEquals(List.of("large", "both-peppers", "hot"), beef.said());
    }

    @Test
    void everyPieceOfTheTextHasASpan() {
        List<Span> spans = PARSER.read("Two lg béef no hot, zz hs with").spans();
        List<Span> expected =
                List.of(
                        new Span(1, 3, Role.QUANTITY, ""),
                        new Span(5, 2, Role.SIZE, "large"),
                        new Span(8, 4, Role.ITEM, "beef"),
                        new Span(13, 2, Role.NO, ""),
                        new Span(16, 3, Role.OPTION, "hot"),
                        new Span(19, 1, Role.SEPARATOR, ""),
                        new Span(21, 2, Role.UNKNOWN, ""),
                        new Span(24, 2, Role.BUNDLE, "both-peppers"),
                        new Span(27, 4, Role.SKIP, ""));
        assertEquals(expected, spans);
    }

    @Test
    void columnsCountUtf16UnitsOfTheTextAsTyped() {
        CallRefusal refusal = PARSER.read("te\u0301 helado, \ud83d\ude00").refusal().get();
        assertEquals(Why.UNKNOWN_WORD, refusal.why());
        assertEquals(13, refusal.column());
        assertEquals(2, refusal.length());
    }

    @Test
    void linesBeforeAFaultAreKept() {
        Reading reading = PARSER.read("2 fries, beef dry dipped, cola");
        assertEquals(Why.CLASH, reading.refusal().get().why());
        assertEquals(List.of("fries"), items(reading));
        assertEquals(Role.ITEM, reading.spans().get(reading.spans().size() - 1).role());
    }

    @Test
    void aClashNamesBothWordsAndTheGroup() {
        CallRefusal refusal = PARSER.read("beef Seco BAÑADO").refusal().get();
        assertEquals(List.of("BAÑADO", "Seco", "dip"), refusal.args());
        assertEquals(6, refusal.otherColumn());
        assertEquals(4, refusal.otherLength());
    }

    @Test
    void atTheBeginningEveryItemIsLive() {
        LiveWords live = PARSER.read("").live();
        assertEquals(PARSER.menu().items().size(), live.items().size());
        assertTrue(live.quantity());
        assertFalse(live.separator());
        assertEquals(1, live.column());
        assertEquals(live.items(), PARSER.read("beef, ").live().items());
        assertEquals(live.items(), PARSER.read("beef and").live().items());
    }

    @Test
    void beforeTheItemOnlyItemsThatTakeWhatWasSaidAreLive() {
        assertEquals(List.of("beef", "combo"), PARSER.read("extra").live().items());
        assertEquals(List.of("beef"), PARSER.read("large dry").live().items());
        LiveWords counted = PARSER.read("2").live();
        assertFalse(counted.quantity());
        assertTrue(counted.items().contains("fries"));
    }

    @Test
    void onALineWhatIsSaidOrFullIsNotLive() {
        LiveWords live = PARSER.read("large beef dipped prov mozz sweet no hot").live();
        assertEquals("beef", live.item());
        assertEquals(List.of(), live.items());
        assertEquals(List.of(), live.sizes());
        assertEquals(List.of("easy", "extra"), live.options());
        assertEquals(List.of("house-amount"), live.bundles());
        assertTrue(live.no());
        assertTrue(live.separator());
    }

    @Test
    void afterNoOnlyWhatCanBeRefusedIsLive() {
        LiveWords live = PARSER.read("hot dog everything onion no").live();
        List<String> open = List.of("mustard", "relish", "tomato", "pickle", "sport-peppers");
        assertEquals(open, live.options());
        assertEquals(List.of(), live.bundles());
        assertFalse(live.no());
        assertFalse(live.separator());
    }

    @Test
    void aWordThatIsBeingTypedDoesNotCount() {
        LiveWords live = PARSER.read("beef dry moz").live();
        assertEquals(10, live.column());
        assertTrue(live.options().contains("mozzarella"));
        assertFalse(live.options().contains("dipped"));
        assertEquals(13, PARSER.read("beef dry zz ").live().column());
    }

    @Test
    void nothingIsLiveAfterTheLastLineThatAnOrderMayHave() {
        String full = "fries, ".repeat(Limits.ORDER_LINES_MAX);
        assertTrue(PARSER.read(full).refusal().isEmpty());
        assertEquals(LiveWords.none(full.length() + 1), PARSER.read(full).live());
        assertFalse(PARSER.read(full.substring(0, full.length() - 2)).live().separator());
    }

    @Test
    void aHugeTextIsRefusedUnread() {
        Reading reading = PARSER.read("beef, ".repeat(1_000_000));
        assertEquals(Why.TOO_LONG, reading.refusal().get().why());
        assertEquals(List.of("" + Limits.CALL_CHARS_MAX), reading.refusal().get().args());
        assertEquals(List.of(), reading.spans());
    }

    private static List<String> items(Reading reading) {
        return reading.lines().stream().map(line -> line.selection().item()).toList();
    }
}
