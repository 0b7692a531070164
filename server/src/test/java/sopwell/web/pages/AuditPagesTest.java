package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.desk.StandCommand.By;
import sopwell.desk.StandCommand.ForAccess;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.orders.OrderCommand;
import sopwell.till.Means;
import sopwell.till.TillCommand;

class AuditPagesTest {
    private static final Who LEAD = new Who("s2", "d1", "", "lead");

    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void saysNewestFirstWhoDidWhatToWhichOrder() {
        assertTrue(stand.get("/audit").body().contains("Nothing was done on this day"));
        String order = stand.place("2 beef dipped hot", "Ana");
        refund(order);
        stand.later(60);
        String other = stand.place("fries", "");
        Map<String, String> fields = Map.of("version", "1", "reason", "guest-left");
        stand.press("/counter/orders/" + other + "/voids", "void", fields);
        String page = stand.get("/audit").body();
        List<String> rows = rows(page);
        assertEquals(2, rows.size(), page);
        assertTrue(
                rows.get(0).contains("12:01 Owner, at this machine Voided order 2 $"), rows.get(0));
        assertTrue(rows.get(1).contains("12:00 Somebody who has left, lead"), rows.get(1));
        assertTrue(rows.get(1).contains("d1, no longer here"), rows.get(1));
        assertTrue(rows.get(1).contains("Gave money back order 1 $1.00 cold"), rows.get(1));
    }

    @Test
    void showsOneKindAndOneDate() {
        refund(stand.place("2 beef dipped hot", ""));
        stand.ask(new By(LEAD, new ForAccess(AccessChanged.ofPerson(Change.PIN_SET, "s3"))));
        assertEquals(2, rows(stand.get("/audit").body()).size());
        List<String> money = rows(stand.get("/audit?kind=money").body());
        assertEquals(1, money.size());
        assertTrue(money.get(0).contains("$1.00"), money.get(0));
        List<String> access = rows(stand.get("/audit?kind=access&lang=es").body());
        assertEquals(1, access.size());
        assertTrue(access.get(0).contains("Dio otro PIN a Alguien que ya no está"), access.get(0));
        assertEquals(List.of(), rows(stand.get("/audit/2026-11-26").body()));
        assertEquals(404, stand.get("/audit/2030-01-01").statusCode());
        HttpResponse<String> wrong = stand.get("/audit/soon");
        assertEquals(404, wrong.statusCode());
        assertTrue(wrong.body().contains("soon"), wrong.body());
        stand.later(86_400);
        assertEquals(List.of(), rows(stand.get("/audit").body()));
        assertEquals(2, rows(stand.get("/audit/2026-11-27").body()).size());
    }

    @Test
    void namesWhoIsKnownAlsoAfterTheyLeft() {
        refund(stand.place("2 beef dipped hot", ""));
        stand.access().roster().addPerson(Actor.ANYBODY, "Beto", Role.LINE);
        stand.access().roster().addPerson(Actor.ANYBODY, "Ana <b>", Role.LEAD);
        assertTrue(stand.access().roster().endPerson(Actor.ANYBODY, "s2").isDone());
        String page = stand.get("/audit").body();
        assertTrue(page.contains("Ana &lt;b&gt;, lead"), page);
        assertFalse(page.contains("Somebody who has left"), page);
    }

    @Test
    void theCloseAndTheTillSayWhoReopenedTheDay() {
        stand.ask(new By(LEAD, new ForOrders(new OrderCommand.OpenDay())));
        stand.ask(new By(LEAD, new ForOrders(new OrderCommand.CloseDay())));
        stand.ask(
                new By(
                        LEAD,
                        new ForOrders(new OrderCommand.ReopenDay(Optional.empty(), "late party"))));
        assertTrue(
                stand.get("/close").body().contains("late party, by Somebody who has left, lead"));
        assertTrue(
                stand.get("/till/today")
                        .body()
                        .contains("Reopened at 12:00 by Somebody who has left, lead: late party"));
        assertTrue(rows(stand.get("/audit?kind=day").body()).get(0).contains("Reopened the day"));
    }

    private void refund(String order) {
        stand.ask(new ForTill(new TillCommand.Pay(order, "", Means.CASH, 0, 0, 0)));
        stand.ask(
                new By(
                        LEAD,
                        new ForTill(
                                new TillCommand.Refund(
                                        order, "", Means.CASH, 100, false, "cold"))));
    }

    /** The rows of the table as text, without the marks. */
    private static List<String> rows(String page) {
        int begin = page.indexOf("<tbody>");
        if (begin < 0) {
            return List.of();
        }
        String body = page.substring(begin, page.indexOf("</tbody>"));
        return List.of(body.split("</tr>")).stream()
                .map(row -> row.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip())
                .filter(row -> !row.isEmpty())
                .toList();
    }
}
