package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.orders.Asked;

/** The house's way is quiet, a departure is strong, a refusal is spelled out. */
class CellsTest {
    private final Script script = new Script();

    @Test
    void theHousesWayIsQuiet() {
        assertEquals("roll:regular | filling:beef | dip:wet | wrap:to go", line("beef", true));
    }

    @Test
    void departuresAreStrong() {
        assertEquals(
                "roll:LARGE | cheese:PROVOLONE | filling:beef EXTRA | peppers:HOT"
                        + " | dip:DIPPED TWICE | wrap:HERE",
                line("large beef provolone extra hot twice", false));
    }

    @Test
    void sweetInsteadOfHotSaysNoHot() {
        assertEquals(
                "roll:regular | filling:beef | peppers:SWEET NO-hot | dip:DRY | wrap:to go",
                line("beef dry sweet", true));
    }

    @Test
    void bothPeppersSayBothAndNoRefusal() {
        assertEquals(
                "roll:regular | filling:beef | peppers:HOT AND SWEET | dip:wet | wrap:to go",
                line("beef both", true));
    }

    @Test
    void aRefusalStandsEvenWhenNothingElseOfItsGroupIsChosen() {
        assertEquals(
                "roll:regular | filling:beef | peppers:NO-hot | dip:wet | wrap:to go",
                line("beef no hot", true));
    }

    @Test
    void anotherItemThanTheFirstOfTheMenuIsStrong() {
        assertEquals(
                "filling:COMBO | dip:wet | wrap:to go",
                line("combo", true).replace("roll: | ", ""));
    }

    private String line(String call, boolean toGo) {
        Asked asked = script.asked(call).get(0);
        Making making =
                new Making(asked.selection(), asked.quantity(), toGo, script.menu().revision());
        return Cells.of(script.menu(), making, "line").stream()
                .map(cell -> cell.step() + ":" + words(cell))
                .collect(Collectors.joining(" | "));
    }

    private static String words(Cell cell) {
        return cell.words().stream()
                .map(
                        word ->
                                switch (word.tone()) {
                                    case QUIET -> word.text().en();
                                    case STRONG ->
                                            word.text().en().toUpperCase(java.util.Locale.ROOT);
                                    case NO -> "NO-" + word.text().en();
                                })
                .collect(Collectors.joining(" "));
    }
}
