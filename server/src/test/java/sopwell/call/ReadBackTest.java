package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.menu.Lang;

class ReadBackTest {
    private static final CallParser PARSER = new CallParser(DemoMenu.read());

    @Test
    void theSizeAndTheDipAreAlwaysSaid() {
        assertSaid("beef", "regular beef, wet", "res mediano, jugoso");
        assertSaid("combo", "combo, wet", "combinado, jugoso");
        assertSaid("fries", "fries", "papas fritas");
    }

    @Test
    void departuresAreSaidWithTheQuantityInDigits() {
        assertSaid(
                "2 beef dipped hot",
                "2 \u00d7 regular beef, dipped, hot",
                "2 \u00d7 res mediano, bañado, picante");
        assertSaid(
                "12 large beef twice extra prov",
                "12 \u00d7 large beef, dipped twice, provolone, extra",
                "12 \u00d7 res grande, doble baño, provolone, más carne");
    }

    @Test
    void whatAChoiceRefusesByItselfIsSaid() {
        assertSaid(
                "beef dry sweet",
                "regular beef, dry, sweet, no hot",
                "res mediano, seco, dulce, sin picante");
        assertSaid(
                "beef both",
                "regular beef, wet, hot and sweet",
                "res mediano, jugoso, picante y dulce");
    }

    @Test
    void refusalsAreSaid() {
        assertSaid(
                "hot dog everything no onion",
                "hot dog, with everything, no onion",
                "perro caliente, con todo, sin cebolla");
        assertSaid("beef no hot", "regular beef, wet, no hot", "res mediano, jugoso, sin picante");
    }

    @Test
    void noneOfADefaultIsSaid() {
        CallParser flowers = new CallParser(Menus.flowers());
        Counted line = flowers.read("grand bunch no card").counted().get(0);
        assertEquals(
                "grand bunch, red, rose, lily, no card",
                ReadBack.say(flowers.menu(), Lang.EN, 1, line.selection()));
    }

    private static void assertSaid(String call, String english, String spanish) {
        List<Counted> lines = PARSER.read(call).counted();
        assertEquals(1, lines.size(), call);
        Counted line = lines.get(0);
        assertEquals(english, say(Lang.EN, line));
        assertEquals(spanish, say(Lang.ES, line));
    }

    private static String say(Lang lang, Counted line) {
        return ReadBack.say(PARSER.menu(), lang, line.quantity(), line.selection());
    }
}
