package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.orders.OrderCommand;

class WhatIfPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    /** Twenty at once; nothing but the first is ever put up, and its start is not tapped. */
    private void rush() {
        String first = stand.place("4 beef", "");
        for (int n = 1; n < 20; n++) {
            stand.place("4 beef", "");
        }
        stand.later(120);
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(first, 1, "line"))));
    }

    @Test
    void anotherPairOfHandsIsASentenceFirstAndThenATable() {
        rush();
        String page = flat(stand.get("/what-if/2026-11-27?hands-line=1").body());
        assertTrue(page.contains("With another pair of hands (Line), nine of ten would"), page);
        assertTrue(page.contains("between 12:00 and 12:30."), page);
        assertTrue(page.contains("0 of 20 pieces of work take as long as was measured"), page);
        assertTrue(page.contains("2:00"), "what was measured that day: " + page);
        assertTrue(page.contains("<option value=\"1\" selected"), page);
        assertTrue(page.contains("<figure class=\"chart\" data-chart=\"lines\""), page);
        assertTrue(page.contains("Longest from 12:00: nine of ten wait at most"), page);
        String spanish = flat(stand.get("/what-if/today?hands-line=2&lang=es").body());
        assertTrue(spanish.contains("Con 2 pares de manos más (Línea), nueve de cada"), spanish);
        String basket = flat(stand.get("/what-if/today?hands-fryer=1&guests=20").body());
        assertTrue(basket.contains("With another load at a time (Fryer) and 20 % more"), basket);
    }

    @Test
    void theUnchangedDayStandsBesideWhatWasMeasured() {
        rush();
        String page = flat(stand.get("/what-if/today").body());
        assertTrue(page.contains("The day again, with nothing changed: nine of ten wait"), page);
        assertTrue(page.contains("Measured that day: 2 min."), page);
        assertFalse(page.contains("With "), page);
        assertEquals(303, stand.get("/what-if").statusCode());
    }

    @Test
    void whatIsMoreThanTheHandsCanDoHasNoSteadyWait() {
        rush();
        for (int n = 0; n < 20; n++) {
            stand.place("9 beef", "");
        }
        String page = flat(stand.get("/what-if/today?hands-line=-1").body());
        assertTrue(page.contains("Line: asked for as much as these hands can do"), page);
        assertTrue(page.contains("there is no steady wait"), page);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "today?guests=101 | 422 | “101” is not a number of guests more or fewer in percent",
                "today?guests=-51 | 422 | Write a whole number from -50 to 100",
                "today?guests=many | 422 | “many” is not a number of guests",
                "today?hands-line=3 | 422 | Line: “3” is not a number of hands more or fewer",
                "today?hands-line=x | 422 | Write a whole number from -2 to 2",
                "today?hands-roof=1 | 422 | There is no station called “roof”",
                "2026-11-20 | 404 | There is no business day",
                "2030-01-01 | 404 | has not begun. It can be tried again",
                "soon | 404 | “soon” is not a date"
            })
    void whatCannotBeTriedIsSaid(String path, int status, String sentence) {
        rush();
        HttpResponse<String> page = stand.get("/what-if/" + path);
        assertEquals(status, page.statusCode(), page.body());
        assertTrue(flat(page.body()).contains(sentence), page.body());
    }

    @Test
    void aDayOnWhichNobodyCameOrAllWasVoidSaysSo() {
        assertTrue(stand.get("/what-if/today").body().contains("Nothing was sold yet."));
        String order = stand.place("beef", "");
        stand.ask(new ForOrders(new OrderCommand.VoidOrder(order, 1, "mistake")));
        String page = flat(stand.get("/what-if/today").body());
        assertTrue(page.contains("so there is nothing to try again"), page);
    }

    private static String flat(String html) {
        return html.replaceAll("\\s+", " ");
    }
}
