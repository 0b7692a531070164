package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Selection;

class CallPrinterTest {
    @Test
    void onlyDeparturesAreWritten() {
        Menu menu = DemoMenu.read();
        Selection house = new Selection("beef", "regular", List.of("wet"), List.of());
        Selection other = new Selection("beef", "large", List.of("dry", "hot", "sweet"), List.of());
        List<Counted> lines = List.of(new Counted(1, house), new Counted(3, other));
        assertEquals("beef, 3 large beef dry both", CallPrinter.print(menu, lines));
    }

    @Test
    void nothingIsWrittenForNoLines() {
        assertEquals("", CallPrinter.print(DemoMenu.read(), List.of()));
    }

    @Test
    void phrasesThatWouldRunTogetherAreKeptApart() {
        Group tops =
                Menus.group("tops", new int[] {0, 3}, List.of())
                        .with(Menus.option("red"), Menus.option("hot-sauce"), Menus.option("sea"))
                        .done();
        Group more =
                Menus.group("more", new int[] {0, 2}, List.of())
                        .with(Menus.option("red-hot"), Menus.option("sauce"))
                        .done();
        Item pot = Menus.item("pot", List.of("tops", "more"));
        CallParser parser = new CallParser(Menus.checked(List.of(tops, more), List.of(pot)));
        Selection both = new Selection("pot", "", List.of("red", "hot-sauce"), List.of());
        List<Counted> lines = List.of(new Counted(2, both));
        assertEquals("2 / pot / red / hot sauce", new CallPrinter(parser).print(lines));
        assertEquals(lines, parser.read("2 / pot / red / hot sauce").counted());
        assertEquals(
                List.of("red-hot", "sauce"),
                parser.read("pot red hot sauce").lines().get(0).selection().options());
    }
}
