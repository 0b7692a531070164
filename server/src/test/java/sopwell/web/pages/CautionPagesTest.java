package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.orders.FoodLimits;
import sopwell.orders.Safety;
import sopwell.web.Texts;

/** What can hurt is said where it is worked with, and what an order contains where it leaves. */
class CautionPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private String flat(String path) {
        return stand.get(path).body().replaceAll("\\s+", " ");
    }

    @Test
    void everyStationSaysItsOwnCautionsInBothLanguages() {
        String fryer = flat("/boards/fryer");
        assertTrue(fryer.contains("Hot fat: lower the basket slowly"), fryer);
        assertFalse(fryer.contains("Slicer"), fryer);
        String line = flat("/boards/line");
        assertTrue(line.contains("Hot jus: dip with tongs"), line);
        assertTrue(line.contains("Reheat to 165 °F (74 °C) for 15 s, within 2 h"), line);
        assertTrue(line.contains("hold at 135 °F (57 °C) or hotter"), line);
        assertTrue(line.contains("Slicer: 18 and over only; unplug it"), line);
        assertTrue(line.contains("FDA Food Code 2022, 3-403.11 and 3-501.16."), line);
        assertTrue(line.contains("at least every 4 h"), line);
        assertTrue(flat("/boards/line?lang=es").contains("Rebanadora: solo de 18 años"));
        assertTrue(flat("/boards/fryer?lang=es").contains("Aceite caliente"));
        assertFalse(flat("/boards/drinks").contains("class=\"cautions\""));
    }

    @Test
    void theLimitsAreTheStandsOwn() {
        Menu menu = PageStand.menu();
        Safety other =
                new Safety("Tarn County 2019", 170, 20, 1, 140, 140, 21, 3, FoodLimits.USUAL);
        CautionView view = CautionView.of(Texts.load().in(Lang.EN), other, menu, "line");
        List<String> lines = view.cautions().stream().map(view::line).toList();
        assertEquals(3, lines.size(), lines.toString());
        assertTrue(lines.get(1).contains("170 °F (77 °C) for 20 s, within 1 h"), lines.get(1));
        assertTrue(lines.get(2).contains("21 and over"), lines.get(2));
        String more = view.more(view.cautions().get(1));
        assertTrue(more.contains("Tarn County 2019") && more.contains("140 °F (60 °C)"), more);
    }

    @Test
    void whatAnOrderContainsStandsOnItsTicketAndAtThePass() {
        String order = stand.place("beef provolone, fries", "");
        for (String paper : List.of("line", "fryer")) {
            String ticket =
                    stand.press("/orders/" + order + "/papers", paper, Map.of("paper", paper))
                            .body();
            assertTrue(ticket.contains("Contains: wheat, soy, celery and milk."), ticket);
        }
        assertFalse(flat("/pass").contains("Contains: "), "it is not whole yet");
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, 1, "line"))));
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, 2, "fryer"))));
        assertTrue(flat("/pass").contains("Contains: wheat, soy, celery, milk"), flat("/pass"));
        assertTrue(flat("/pass?lang=es").contains("Contiene: trigo, soya, apio, leche"));
    }
}
