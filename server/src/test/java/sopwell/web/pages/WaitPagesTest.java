package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Out;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;
import sopwell.orders.StandSettings;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/** The waits of a day, a part of it, and several days. */
class WaitPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    /** One order, whole after three minutes, one of them until somebody began. */
    private void order() {
        String order = stand.place("2 beef dipped hot, fries", "");
        PartId beef = new PartId(order, 1, "line");
        stand.later(60);
        stand.ask(new ForKitchen(new KitchenCommand.Start(beef)));
        stand.later(90);
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, 2, "fryer"))));
        stand.later(30);
        stand.ask(new ForKitchen(new KitchenCommand.Up(beef)));
        stand.later(20);
        stand.ask(new ForOrders(new OrderCommand.Hand(order)));
    }

    private void cut() {
        stand.later(20 * 3_600);
        stand.ask(new StandCommand.ForOrders(new OrderCommand.CutDay()));
        stand.later(4 * 3_600);
    }

    @Test
    void todayShowsWaitsByHalfHourStationAndItemAndStaysLive() {
        order();
        String page = flat(stand.get("/waits/today").body());
        assertTrue(page.contains("1 of 1 whole within 6 min (100 %)"), page);
        assertTrue(
                page.contains(
                        "<tr><th scope=\"row\">placed to first started</th><td>1:00</td>"
                                + "<td>1:00</td><td>1</td></tr>"),
                page);
        assertTrue(page.contains("<tr><th scope=\"row\">12:00</th><td>1</td>"), page);
        assertTrue(
                page.contains("<td>30 %</td><td>60 %</td><td>0 %</td><td>10 %</td>"),
                "the line: one minute waited, two made, twenty seconds on the pass: " + page);
        assertTrue(page.contains("what nobody tapped as started (Fryer)"), page);
        assertTrue(page.contains("hx-get=\"/waits/today\" hx-trigger=\"every 10s\""), page);
        String part = stand.get("/waits/today", "HX-Request", "true").body();
        assertTrue(!part.contains("<html") && part.contains("1 of 1 whole"), part);
        String spanish = flat(stand.get("/waits/today?lang=es").body());
        assertTrue(spanish.contains("esperando manos"), spanish);
    }

    @Test
    void theMixLeadsToTheWaitsAndBack() {
        order();
        assertTrue(stand.get("/mix/today").body().contains("href=\"/waits/2026-11-27\""));
        String page = stand.get("/waits/2026-11-27").body();
        assertTrue(page.contains("href=\"/mix/2026-11-27\""), page);
        assertFalse(page.contains("hx-get"), page);
        assertEquals(303, stand.get("/waits").statusCode());
        assertTrue(stand.get("/").body().contains("href=\"/waits/today\""));
    }

    @Test
    void severalDaysAndPartsOfThemAreCountedTogether() {
        order();
        cut();
        order();
        String two = flat(stand.get("/waits?from=2026-11-27&to=2026-11-28").body());
        assertTrue(two.contains("Days with orders: 2"), two);
        assertTrue(two.contains("2 of 2 whole"), two);
        assertTrue(two.contains("data-chart=\"stack\""), two);
        assertTrue(two.contains("Most waiting for hands: Line, 30 % of the time"), two);
        assertFalse(two.contains("data-chart=\"lines\""), "one half hour is no line: " + two);
        String friday = flat(stand.get("/waits?from=2026-11-27&to=2026-11-28&weekday=5").body());
        assertTrue(friday.contains("1 of 1 whole"), friday);
        String evening =
                flat(
                        stand.get("/waits?from=2026-11-27&to=2026-11-28&begin=20:00&end=00:00")
                                .body());
        assertTrue(evening.contains("On none of these days"), evening);
        stand.later(3_600);
        order();
        String day = flat(stand.get("/waits/today").body());
        assertTrue(day.contains("data-chart=\"lines\""), day);
        assertTrue(day.contains("nine of ten orders were whole within 3:00"), day);
        assertTrue(day.contains("data-target=\"6\""), day);
        String noon = flat(stand.get("/waits/2026-11-27?begin=12:00&end=12:30").body());
        assertTrue(noon.contains("1 of 1 whole"), noon);
        assertTrue(
                flat(stand.get("/waits/2026-11-27?begin=20:00&end=21:00").body())
                        .contains("Nothing was ordered in that part of the day."));
        HttpResponse<String> unclear = stand.get("/waits/today?begin=noon");
        assertEquals(422, unclear.statusCode());
        assertTrue(unclear.body().contains("“noon” is not a time"), unclear.body());
    }

    @Test
    void theSlowestOrdersAreToldStepByStepAndReachedFromTheWaits() {
        order();
        assertTrue(stand.get("/waits/today").body().contains("/waits/2026-11-27/slowest"));
        String page = flat(stand.get("/waits/2026-11-27/slowest").body());
        assertTrue(page.contains("Order 1: 3:00"), page);
        assertTrue(page.contains("<time>12:01</time><small>1:00</small>"), page);
        assertTrue(page.contains("<span>Line began beef</span>"), page);
        assertTrue(page.contains("<span>Fryer put up fries</span>"), page);
        assertTrue(page.contains("called; told "), page);
        String spanish = flat(stand.get("/waits/today/slowest?lang=es").body());
        assertTrue(spanish.contains("<span>Línea empezó res</span>"), spanish);
        assertEquals(404, stand.get("/waits/2026-11-20/slowest").statusCode());
        assertEquals(404, stand.get("/waits/soon/slowest").statusCode());
    }

    @Test
    void saysWhatWasOutWhatThatCostAndWhatWasGivenBack() {
        for (int week = 0; week < 2; week++) {
            stand.place("10 fries", "");
            cut();
            stand.later(6L * 24 * 3_600);
        }
        String order = stand.place("beef", "");
        stand.ask(new StandCommand.ForTill(new TillCommand.Pay(order, "", Means.CARD, 500, 0, 0)));
        stand.ask(new ForOrders(new OrderCommand.VoidOrder(order, 0, "gone")));
        stand.ask(
                new StandCommand.ForTill(
                        new TillCommand.Refund(order, "", Means.CARD, 500, false, "gone")));
        stand.ask(new StandCommand.ForOuts(new OutCommand.Mark(Out.item("fries"), 0, 0)));
        stand.later(15 * 60);
        stand.place("beef", "");
        String page = flat(stand.get("/waits/today").body());
        assertTrue(page.contains("What was out"), page);
        assertTrue(
                page.contains("<th scope=\"row\">fries</th><td>12:00</td><td>still out</td>"),
                page);
        assertTrue(page.contains("<td>5</td><td>0</td><td>about 5</td>"), page);
        assertTrue(page.contains("same weekday before (Fridays: 2)"), page);
        assertTrue(page.contains("refund: Guest is gone"), page);
        String spanish = flat(stand.get("/waits/today?lang=es").body());
        assertTrue(spanish.contains("unos 5"), spanish);
    }

    @Test
    void whatDidNotGoStraightIsAddedUpOverDays() {
        for (int day = 0; day < 2; day++) {
            order();
            String gone = stand.place("beef", "");
            stand.ask(new ForOrders(new OrderCommand.VoidOrder(gone, 0, "gone")));
            cut();
        }
        String days = "/waits?from=2026-11-27&to=2026-11-28";
        String both = flat(stand.get(days).body());
        assertTrue(both.contains("Guest is gone</th><td>2</td>"), both);
        String first = flat(stand.get("/waits/2026-11-27").body());
        assertTrue(first.contains("Guest is gone</th><td>1</td>"), first);
        String part = flat(stand.get(days + "&begin=00:00&end=23:30").body());
        assertFalse(part.contains("Guest is gone"), "it has no time of day");
    }

    @Test
    void aTargetOfNoWholeMinutesIsToldToTheSecond() throws Exception {
        StandSettings six = PageStand.settings();
        StandSettings quick =
                new StandSettings(
                        six.stand(),
                        six.name(),
                        six.zone(),
                        six.cutHour(),
                        six.tax(),
                        90,
                        six.numberMax(),
                        six.cash(),
                        six.safety());
        stand.close();
        stand = new PageStand(quick, PageStand.menu());
        order();
        for (String page : List.of("/waits/today", "/mix/today")) {
            String body = flat(stand.get(page).body());
            assertTrue(body.contains("0 of 1 whole within 1:30 min (0 %)"), body);
        }
        assertTrue(flat(stand.get("/boards/line").body()).contains("target 1:30 min"));
        String again = flat(stand.get("/what-if/2026-11-27").body());
        assertTrue(again.contains("in 1:30 min"), again);
    }

    @Test
    void saysWhichTillsWereOverOrShort() {
        till("Ines", 95);
        till("Theo", 102);
        till("Walt", 100);
        stand.place("beef", "");
        String page = flat(stand.get("/waits/today").body());
        assertTrue(page.contains("till of Ines: short</th><td>1</td><td>$5.00</td>"), page);
        assertTrue(page.contains("till of Theo: over</th><td>1</td><td>$2.00</td>"), page);
        assertFalse(page.contains("till of Walt"), "what is right is no exception");
        assertTrue(stand.get("/waits/today?lang=es").body().contains("caja de Ines: falta"));
    }

    /** A till that began with $100 and was counted, in dollar bills. */
    private void till(String cashier, int dollars) {
        stand.ask(new StandCommand.ForTill(new TillCommand.OpenTill(cashier, 10_000)));
        stand.ask(
                new StandCommand.ForTill(
                        new TillCommand.CloseTill(
                                cashier, List.of(new TillCommand.Pieces(100, dollars)))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "?from=2026-11-27&to=2026-11-20 | 422 | end before they begin",
                "?from=2030-01-01&to=2030-01-02 | 422 | has not begun",
                "?from=1926-11-27&to=2026-11-27 | 422 | more than 3660 days",
                "?from=yesterday&to=2026-11-27 | 422 | “yesterday” is not a date",
                "?from=2026-11-27&to=2026-11-28&weekday=9 | 422 | “9” is not a weekday",
                "?from=2026-11-01&to=2026-11-27 | 200 | On none of these days",
                "/today | 200 | Nothing was sold yet.",
                "/2026-11-20 | 404 | There is no business day",
                "/2030-01-01 | 404 | has not begun",
                "/soon | 404 | “soon” is not a date"
            })
    void whatCannotBeShownIsSaidAndCanBeMended(String query, int status, String sentence) {
        HttpResponse<String> page = stand.get("/waits" + query);
        assertEquals(status, page.statusCode());
        assertTrue(flat(page.body()).contains(sentence), page.body());
        assertTrue(page.body().contains("action=\"/waits\""), "the form is there to mend it");
    }

    private static String flat(String html) {
        return html.replaceAll("\\s+", " ").replace("> <", "><");
    }
}
