package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.access.AccessState;
import sopwell.access.Person;
import sopwell.access.Role;
import sopwell.desk.TroubledLog;

/** People as the page of people and screens has them changed. */
class StaffPagesTest {
    private static final String PEOPLE = "/settings/access/people";
    private static final String ANA = PEOPLE + "/s1";

    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
        press(PEOPLE, "name", "Ana", "role", "counter");
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private HttpResponse<String> press(String path, String... fields) {
        Map<String, String> form = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return stand.post(path, form);
    }

    private Person ana() {
        return stand.access().state().people().get(0);
    }

    /** What the page says after a press that was done. */
    private String said(HttpResponse<String> answer, String lang) {
        assertEquals(303, answer.statusCode(), answer.body());
        String to = answer.headers().firstValue("Location").orElseThrow();
        return stand.get(to + "&lang=" + lang).body();
    }

    private void says(String sentence, String page) {
        assertTrue(page.contains(sentence), sentence + " in " + page);
    }

    @Test
    void somebodyIsRenamedAndGetsAnotherRoleAndAnotherPin() {
        says("Gave Anna another name", said(press(ANA + "/name", "name", " Anna "), "en"));
        says("Cambió lo que hace Anna", said(press(ANA + "/role", "role", "lead"), "es"));
        says("Gave Anna another PIN", said(press(ANA + "/pin", "pin", "271828"), "en"));
        assertEquals(new Person("s1", "Anna", Role.LEAD, "271828", "", false, 0), ana());
        String audit = stand.get("/audit?kind=access").body();
        for (String told :
                List.of(
                        "Added Anna",
                        "Gave Anna another name",
                        "Changed what Anna does",
                        "Gave Anna another PIN")) {
            says(told, audit);
        }
    }

    @Test
    void whoLeftIsListedUntilTheNameIsForgotten() {
        String left = said(press(ANA + "/left"), "en");
        says("<b>Ana</b></p>\n<form method=\"post\" action=\"" + ANA + "/erased\"", left);
        says("Took Ana off the staff", stand.get("/audit").body());
        String erased = said(press(ANA + "/erased"), "es");
        says("Borró el nombre de Alguien que ya no está", erased);
        assertFalse(erased.contains("Ana"), erased);
        assertEquals(new Person("s1", "", Role.COUNTER, "", "", true, ana().endedAtMs()), ana());
        assertTrue(ana().endedAtMs() > 0, "when they left");
        String audit = stand.get("/audit").body();
        says("Took Somebody who has left off the staff", audit);
        assertFalse(audit.contains("Ana"), audit);
        assertEquals(422, press(ANA + "/erased").statusCode());
    }

    @Test
    void whatIsTypedWronglyIsToldInASentenceAndChangesNothing() {
        AccessState before = stand.access().state();
        String audit = stand.get("/audit").body();
        String[][] wrong = {
            {"/name", "name", " ", "Type a name of at most 40 characters."},
            {"/name", "name", "x".repeat(41), "Type a name of at most 40 characters."},
            {"/name", "name", "4111 1111 1111 1111", "card"},
            {"/role", "role", "king", "Choose one from the list."},
            {"/role", "role", "", "Choose one from the list."},
            {"/pin", "pin", "12", "A PIN has 4 to 8 digits."},
            {"/pin", "pin", "12a4", "A PIN has 4 to 8 digits."},
            {"/password", "password", "a good password", "Only leads and owners have a password."},
        };
        for (String[] one : wrong) {
            HttpResponse<String> answer = press(ANA + one[0], one[1], one[2]);
            assertEquals(422, answer.statusCode(), one[2]);
            says(one[3], answer.body());
            says("href=\"/settings/access?lang=es\"", answer.body());
        }
        HttpResponse<String> nobody = press(PEOPLE + "/s99/name", "name", "Bo");
        assertEquals(422, nobody.statusCode());
        assertEquals(before, stand.access().state());
        assertEquals(audit, stand.get("/audit").body());
    }

    @Test
    void nothingIsChangedWhileTheLogTakesNoNote() {
        press(PEOPLE, "name", "Bo", "role", "line");
        press(PEOPLE + "/s2/left");
        press("/settings/access/tokens", "name", "till", "role", "line");
        String offered =
                press("/settings/access/devices", "name", "Till 2", "use", "counter").body();
        String code = offered.replaceAll("(?s).*id=\"code\">([0-9A-Z ]{9})<.*", "$1");
        Map<String, String[]> presses = new LinkedHashMap<>();
        presses.put(PEOPLE, new String[] {"name", "New", "role", "line"});
        presses.put(ANA + "/name", new String[] {"name", "Anna"});
        presses.put(ANA + "/role", new String[] {"role", "lead"});
        presses.put(ANA + "/pin", new String[] {"pin", "271828"});
        presses.put(ANA + "/unlocked", new String[] {});
        presses.put(ANA + "/left", new String[] {});
        presses.put(ANA + "/erased", new String[] {});
        presses.put(PEOPLE + "/s2/erased", new String[] {});
        presses.put("/settings/access/tokens", new String[] {"name", "x", "role", "line"});
        presses.put("/settings/access/tokens/t1/revoked", new String[] {});
        presses.put("/pair", new String[] {"code", code});
        AccessState before = stand.access().state();
        String audit = stand.get("/audit").body();
        presses.forEach(
                (path, fields) -> {
                    stand.log().next(TroubledLog.Trouble.FAILS_BEFORE_KEEPING);
                    HttpResponse<String> answer = press(path, fields);
                    assertEquals(503, answer.statusCode(), path + answer.body());
                    says("Press again", answer.body());
                    assertTrue(answer.headers().allValues("Set-Cookie").isEmpty(), path);
                    assertEquals(before, stand.access().state(), path);
                });
        assertEquals(audit, stand.get("/audit").body());
        says("Gave Anna another name", said(press(ANA + "/name", "name", "Anna"), "en"));
        assertEquals(303, press("/pair", "code", code).statusCode(), "the code is still good");
        says("Paired a screen: Till 2", stand.get("/audit").body());
    }
}
