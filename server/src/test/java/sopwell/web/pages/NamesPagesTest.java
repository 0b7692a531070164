package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.desk.AuditTrail;
import sopwell.desk.NamesKept;
import sopwell.desk.StandCommand.By;
import sopwell.desk.StandCommand.ForAccess;
import sopwell.desk.SureDate;
import sopwell.desk.TroubledLog;

/** A guest's name is taken out while the stand runs, and the page says what came of it. */
class NamesPagesTest {
    private static final String PATH = "/settings/names";
    private static final String DATE = "2026-11-27";
    private static final String GUEST = "Xaveria";

    private PageStand stand;

    @BeforeEach
    void anOrderOfSomebody() throws Exception {
        stand = new PageStand();
        assertTrue(stand.place("fries", GUEST).endsWith("-0001"));
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private HttpResponse<String> erase(String date, String number) {
        return stand.post(PATH, Map.of("date", date, "number", number));
    }

    @Test
    void theNameGoesAndTheSecondTimeItSaysThatThereIsNone() {
        assertTrue(stand.get("/orders").body().contains(GUEST));
        HttpResponse<String> erased = erase(DATE, "1");
        assertEquals(200, erased.statusCode());
        assertTrue(erased.body().contains("The name is erased."), erased.body());
        assertFalse(stand.get("/orders").body().contains(GUEST));
        assertTrue(stand.get("/audit").body().contains("Erased guests’ names of"));
        HttpResponse<String> again = erase(DATE, "1");
        assertEquals(200, again.statusCode());
        assertTrue(again.body().contains("There was no name on this order any more."));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-27, 2, 404",
        "2026-11-27, '', 404",
        "2026-11-27, 01, 404",
        "2026-11-27, -1, 404",
        "2026-11-27, 1e0, 404",
        "2026-11-27, 99999999999999999999, 404",
        "2026-11-26, 1, 404",
        "+999999999-12-31, 1, 404",
        "-999999999-01-01, 1, 404",
        "2026-02-30, 1, 400",
        "27.11.2026, 1, 400",
        "'', 1, 400",
        "<b>, 1, 400"
    })
    void whatIsNoOrderChangesNothing(String date, String number, int status) {
        HttpResponse<String> answer = erase(date, number);
        assertEquals(status, answer.statusCode(), answer.body());
        assertTrue(answer.body().contains("role=\"alert\""), answer.body());
        assertFalse(answer.body().contains("<b>"), answer.body());
        assertTrue(stand.get("/orders").body().contains(GUEST));
    }

    @Test
    void whatTheLogDidNotTakeIsNotSaidToBeErased() {
        stand.log().next(TroubledLog.Trouble.FAILS_BEFORE_KEEPING);
        HttpResponse<String> answer = erase(DATE, "1");
        assertEquals(503, answer.statusCode(), answer.body());
        assertFalse(answer.body().contains("The name is erased."));
        assertTrue(erase(DATE, "1").body().contains("The name is erased."), "pressed again");
    }

    @Test
    void saysHowLongNamesAreKeptAndWhyTheyStayWhileTheDateIsNotSure() {
        stand.namesKept().set(new NamesKept(14, 180, Optional.empty()));
        String page = stand.get(PATH).body();
        assertTrue(page.contains("guests’ names after 14 days"), page);
        assertTrue(page.contains("after 180 days"), page);
        LocalDate sure = LocalDate.of(2026, 11, 20);
        stand.namesKept().set(new NamesKept(30, 90, Optional.of(new SureDate(sure, sure))));
        assertFalse(stand.get(PATH).body().contains("id=\"doubt\""));
        SureDate jumped = new SureDate(LocalDate.of(2099, 3, 1), sure);
        stand.namesKept().set(new NamesKept(30, 90, Optional.of(jumped)));
        String doubt = stand.get(PATH).body();
        assertTrue(doubt.contains("id=\"doubt\""), doubt);
        assertTrue(doubt.contains("2099") && doubt.contains("November 20"), doubt);
        assertTrue(stand.get(PATH + "?lang=es").body().contains("La fecha del puesto es"));
    }

    @Test
    void whomSopwellForgotByItselfStandsInTheAudit() {
        stand.ask(
                new By(
                        AuditTrail.BY_ITSELF,
                        new ForAccess(AccessChanged.ofPerson(Change.PERSON_ERASED, "s3"))));
        stand.ask(
                new By(
                        AuditTrail.BY_ITSELF,
                        new ForAccess(AccessChanged.ofDevice(Change.DEVICE_PAIRED, "d1"))));
        String page = stand.get("/audit").body();
        assertTrue(page.contains("Sopwell, by itself"), page);
        assertTrue(page.contains("Forgot the name of"), page);
        assertTrue(page.contains("Nobody signed in"), "a screen pairs before anybody is known");
    }
}
