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
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.RemakeReason;
import sopwell.orders.OrderCommand;

/** The mix of a day beside others, of several days, and of parts of them. */
class MixPagesTest {
    private static final long WEEK_SECONDS = 7L * 24 * 3_600;
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    /** Fridays, at noon by the stand's clock: five with two dipped in ten, then eight in ten. */
    private void fridays() {
        for (int week = 0; week < 5; week++) {
            stand.place("20 beef dipped hot, 80 beef dry sweet", "");
            cut();
        }
        stand.place("80 beef dipped hot, 20 beef dry sweet", "");
    }

    private void cut() {
        stand.later(20 * 3_600);
        stand.ask(new StandCommand.ForOrders(new OrderCommand.CutDay()));
        stand.later(WEEK_SECONDS - 20 * 3_600);
    }

    @Test
    void aDaySaysWhatHasMovedAgainstTheSameWeekdays() {
        fridays();
        String page = flat(stand.get("/mix/today").body());
        assertTrue(
                page.contains(
                        "beef, dipped: 80 %, up from 20 % on the 5 Fridays before. That is more"
                                + " than chance."),
                page);
        assertTrue(page.contains("beef, dry: 20 %, down from 80 %"), page);
        assertTrue(page.contains("before 20 %"), page);
        assertTrue(page.contains("on the same weekday before (Fridays: 4)"), page);
        assertTrue(page.contains("71–87 %"), "Wilson of 80 in 100: " + page);
        String spanish = flat(stand.get("/mix/today?lang=es").body());
        assertTrue(
                spanish.contains("res, bañado: 80 %; antes, los 5 viernes anteriores, 20 %."),
                spanish);
    }

    @Test
    void severalDaysAddUpAndLeadToEach() {
        fridays();
        String page = flat(stand.get("/mix?from=2026-11-27&to=2027-01-01").body());
        assertTrue(page.contains("Days with orders: 6"), page);
        assertTrue(page.contains("<dd>600</dd>"), page);
        assertTrue(page.contains("href=\"/mix/2026-12-04\""), page);
        String few = flat(stand.get("/mix?from=2026-11-27&to=2026-12-10&weekday=5").body());
        assertTrue(few.contains("<dd>200</dd>"), few);
        String none = flat(stand.get("/mix?from=2026-11-27&to=2027-01-01&weekday=1").body());
        assertTrue(none.contains("On none of these days"), none);
    }

    @Test
    void aPartOfTheDayIsCountedAlone() {
        fridays();
        String noon = stand.get("/mix?from=2026-11-27&to=2027-01-01&begin=12:00&end=12:30").body();
        assertTrue(flat(noon).contains("<dd>600</dd>"), noon);
        String night = stand.get("/mix?from=2026-11-27&to=2027-01-01&begin=20:00&end=00:00").body();
        assertTrue(flat(night).contains("On none of these days"), night);
        assertTrue(
                flat(stand.get("/mix/today?begin=12:00&end=12:30").body())
                        .contains("<dd>100</dd>"));
    }

    @Test
    void aPartOfOneDayStandsBesideTheSamePartOfOthers() {
        fridays();
        String part = flat(stand.get("/mix/2027-01-01?begin=12:00&end=12:30").body());
        assertTrue(part.contains("January 1, 2027, 12:00 to 12:30"), part);
        assertTrue(part.contains("80 %, up from 20 % on the 5 Fridays before"), part);
        assertFalse(part.contains("placed to whole"), "waits are of whole days: " + part);
        String live = stand.get("/mix/today?begin=12:00&end=12:30").body();
        assertTrue(live.contains("hx-get=\"/mix/today?begin=12:00&amp;end=12:30\""), live);
        assertTrue(
                flat(stand.get("/mix/today?begin=20:00&end=21:00").body())
                        .contains("Nothing was ordered in that part of the day."));
        HttpResponse<String> unclear = stand.get("/mix/today?begin=noon");
        assertEquals(422, unclear.statusCode());
        assertTrue(unclear.body().contains("“noon” is not a time"), unclear.body());
        HttpResponse<String> alone =
                stand.get("/mix?from=2026-12-04&to=2026-12-04&weekday=&begin=12:00&end=12:30");
        assertEquals(
                "/mix/2026-12-04?begin=12:00&end=12:30",
                alone.headers().firstValue("Location").orElse(alone.body()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from=2026-11-27&to=2026-11-20 | end before they begin",
                "from=2030-01-01&to=2030-01-02 | has not begun",
                "from=1926-11-27&to=2026-11-27 | more than 3660 days",
                "from=yesterday&to=2026-11-27 | “yesterday” is not a date",
                "from=2026-11-27&to=2026-11-27&begin=14:00&end=11:00 | ends before it begins",
                "from=2026-11-27&to=2026-11-27&begin=noon | “noon” is not a time",
                "from=2026-11-27&to=2026-11-27&weekday=9 | “9” is not a weekday"
            })
    void whatCannotBeAskedIsSaidAndCanBeMended(String query, String sentence) {
        HttpResponse<String> page = stand.get("/mix?" + query);
        assertEquals(422, page.statusCode());
        assertTrue(flat(page.body()).contains(sentence), page.body());
        assertTrue(page.body().contains("name=\"from\""), "the form is there to mend it");
    }

    @Test
    void aStandThatNeverSoldSaysSo() {
        assertTrue(flat(stand.get("/mix/today").body()).contains("Nothing was sold yet."));
        assertTrue(
                flat(stand.get("/mix?from=2026-11-01&to=2026-11-27").body())
                        .contains("On none of these days"));
    }

    @Test
    void aFirstFridayIsComparedWithNothing() {
        stand.place("beef dipped", "");
        String page = flat(stand.get("/mix/today").body());
        assertFalse(page.contains("more than chance"), page);
        assertFalse(page.contains("“Before”"), page);
    }

    private static String flat(String html) {
        return html.replaceAll("\\s+", " ");
    }

    @Test
    void whatIsMadeAgainIsSaidAndNeverCountsAsSold() {
        String order = stand.place("2 beef dipped hot", "");
        PartId part = new PartId(order, 1, "line");
        stand.ask(new StandCommand.ForKitchen(new KitchenCommand.Up(part)));
        String before = flat(stand.get("/mix/today").body());
        assertFalse(before.contains("Pieces made again, not counted"), before);
        stand.ask(
                new StandCommand.ForKitchen(
                        new KitchenCommand.Remake(List.of(part), 1, RemakeReason.DROPPED, "")));
        String after = flat(stand.get("/mix/today").body());
        assertTrue(after.contains("Pieces made again, not counted here: 1"), after);
        assertTrue(after.contains("<dt>pieces</dt><dd>2</dd>"), "sold as before: " + after);
    }

    @Test
    void cellsAreShadedByHowFullTheyAreAndSaySoWithoutColour() {
        stand.place("9 beef dipped hot, 3 beef dry hot", "");
        String page = flat(stand.get("/mix/today").body());
        assertTrue(page.contains("<td class=\"heat h5 heavy\">9<svg"), page);
        assertTrue(page.contains("<td class=\"heat h2 heavy\">3<svg"), page);
        assertTrue(page.contains("width=\"33%\"></rect>"), page);
    }

    @Test
    void aStandOfThingsWithoutChoicesHasAPlainMix() {
        stand.place("4 fries", "");
        String page = flat(stand.get("/mix/today").body());
        assertTrue(page.contains("Most sold: fries, 4 of 4 pieces (100 %)."), page);
        assertTrue(page.contains("data-chart=\"columns\""), page);
        assertFalse(page.contains("class=\"cross\""), "nothing to cross: " + page);
        assertFalse(page.contains("data-chart=\"lines\""), "no share to follow: " + page);
        assertFalse(page.contains("Small figures beside a share"), page);
    }
}
