package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.menu.Menu;
import sopwell.menu.MenuFault;
import sopwell.menu.Selection;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;

class MenuReaderTest {
    @Test
    void readsTheDemosMenu() {
        MenuReading reading = MenuReader.read(Samples.demoMenuBytes());
        assertEquals(List.of(), reading.faults());
        Menu menu = reading.menu().orElseThrow();
        assertEquals(4, menu.stations().size());
        assertEquals("beef", menu.items().get(0).id());
        assertEquals(List.of("wet"), menu.group("dip").defaults());
        assertEquals("hot", menu.option("sweet").insteadOf());
        assertTrue(menu.item("beef").words().contains("bf"), "short forms stand behind words");
    }

    @Test
    void readsWhatItWrote() {
        for (Menu menu : List.of(Samples.demoMenu(), Samples.smallMenu())) {
            byte[] written = text(MenuWriter.tree(menu.parts()).toString());
            Menu again = MenuReader.read(written).menu().orElseThrow();
            assertEquals(menu.parts(), again.parts());
            assertEquals(menu.revision(), again.revision());
        }
    }

    @Test
    void anItemIsTaxedUnlessTheMenuSaysNot() {
        Menu menu =
                MenuReader.read(MenuEdit.demo().set("/items/0/taxed", "false").bytes())
                        .menu()
                        .orElseThrow();
        assertFalse(menu.items().get(0).taxed());
        assertTrue(menu.items().get(1).taxed());
        byte[] written = text(MenuWriter.tree(menu.parts()).toString());
        assertEquals(menu.parts(), MenuReader.read(written).menu().orElseThrow().parts());
        String item = menu.items().get(0).id();
        String size = menu.items().get(0).defaultSize();
        Asked asked = new Asked(2, new Selection(item, size, List.of(), List.of()));
        OrderLine line = OrderLine.priced(menu, 1, asked);
        assertEquals(
                0, OrderRules.totals(List.of(line), Discount.NONE, new TaxRule(8_250)).taxCents());
        MenuFault fault =
                MenuReader.read(MenuEdit.demo().set("/items/0/taxed", "'no'").bytes())
                        .faults()
                        .get(0);
        assertEquals("/items/0/taxed", fault.place());
    }

    @Test
    void namesEveryContentByARevisionOfItsOwn() {
        Menu menu = Samples.demoMenu();
        assertTrue(menu.revision().matches("[0-9a-f]{16}"), menu.revision());
        byte[] dearer = MenuEdit.demo().set("/items/0/sizes/0/priceCents", "646").bytes();
        Menu other = MenuReader.read(dearer).menu().orElseThrow();
        assertNotEquals(menu.revision(), other.revision());
        byte[] spaced = text(MenuEdit.demo().root().toPrettyString());
        assertEquals(menu.revision(), MenuReader.read(spaced).menu().orElseThrow().revision());
    }

    @Test
    void saysWhereAFileIsNoJson() {
        MenuFault fault = only("{\n  \"speech\": {,}\n}");
        assertEquals("", fault.place());
        assertTrue(fault.wrong().contains("line 2, column "), fault.wrong());
        assertTrue(only("").wrong().contains("empty"));
        String two = new String(Samples.demoMenuBytes(), StandardCharsets.UTF_8) + "{}";
        assertTrue(only(two).wrong().contains("follows the end"));
        assertTrue(only("[".repeat(300)).wrong().contains("nested too deeply"));
        assertTrue(only("[\"" + "x".repeat(5_000) + "\"]").wrong().contains("too long"));
        assertTrue(only("\"\\ud800").wrong().contains("no JSON"));
    }

    @Test
    void refusesAFileThatIsTooLong() {
        assertTrue(only(" ".repeat(1_100_000)).wrong().contains("1100000 bytes"));
    }

    @Test
    void findsEveryStructuralFaultAtOnce() {
        byte[] json =
                MenuEdit.demo()
                        .remove("/stations/0/hands")
                        .set("/stations/1/hands", "'two'")
                        .set("/stations/2/bilds", "true")
                        .set("/steps/0/name/es", "' '")
                        .set("/steps/1/shows/0", "'itm'")
                        .set("/groups/0/options/0/priceCents", "1.5")
                        .set("/groups/1/choose", "[]")
                        .set("/items/0/words", "'beef'")
                        .set("/items/3/days/0", "'fryday'")
                        .set("/items/5/priceCents", "null")
                        .set("/items/6/name/en", "'" + "x".repeat(61) + "'")
                        .set("/speech/numbers/two", "true")
                        .bytes();
        List<String> places =
                MenuReader.read(json).faults().stream().map(MenuFault::place).toList();
        assertEquals(
                List.of(
                        "/speech/numbers/two",
                        "/stations/0/hands",
                        "/stations/1/hands",
                        "/stations/2/bilds",
                        "/steps/0/name/es",
                        "/steps/1/shows/0",
                        "/groups/0/options/0/priceCents",
                        "/groups/1/choose",
                        "/items/0/words",
                        "/items/3/days/0",
                        "/items/5/priceCents",
                        "/items/6/name/en"),
                places);
    }

    @Test
    void namesTheNearestKnownName() {
        byte[] json =
                MenuEdit.demo()
                        .set("/stations/2/bilds", "true")
                        .set("/items/3/days/0", "'fryday'")
                        .bytes();
        List<MenuFault> faults = MenuReader.read(json).faults();
        assertEquals("Perhaps \"builds\" is meant.", faults.get(0).right());
        assertEquals("Perhaps \"friday\" is meant.", faults.get(1).right());
    }

    @Test
    void refusesAFieldThatIsThereTwice() {
        String demo = new String(Samples.demoMenuBytes(), StandardCharsets.UTF_8);
        String twice = demo.replaceFirst("\"hands\": 2", "\"hands\": 2, \"hands\": 3");
        MenuFault fault = only(twice);
        assertEquals("/stations/0/hands", fault.place());
        assertTrue(fault.wrong().contains("twice"), fault.wrong());
    }

    @Test
    void survivesWhateverIsDoneToAFile() {
        SplittableRandom random = new SplittableRandom(20250503);
        byte[] demo = Samples.demoMenuBytes();
        int refused = 0;
        for (int n = 0; n < 500; n++) {
            byte[] spoilt = demo.clone();
            for (int times = random.nextInt(1, 4); times > 0; times--) {
                spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(32, 127);
            }
            MenuReading reading = MenuReader.read(spoilt);
            assertEquals(reading.faults().isEmpty(), reading.menu().isPresent());
            refused += reading.menu().isPresent() ? 0 : 1;
            reading.menu()
                    .ifPresent(
                            menu -> {
                                byte[] again = text(MenuWriter.tree(menu.parts()).toString());
                                MenuReading reread = MenuReader.read(again);
                                assertEquals(menu.parts(), reread.menu().orElseThrow().parts());
                            });
        }
        assertTrue(refused > 150, "most of them are faults, " + refused);
    }

    private static MenuFault only(String json) {
        List<MenuFault> faults = MenuReader.read(text(json)).faults();
        assertEquals(1, faults.size(), faults.toString());
        return faults.get(0);
    }

    private static byte[] text(String json) {
        return json.getBytes(StandardCharsets.UTF_8);
    }
}
