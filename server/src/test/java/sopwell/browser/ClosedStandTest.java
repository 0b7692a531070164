package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import sopwell.GateStand;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.access.Use;

/** A stand that is not open to everybody, as people with real browsers have it. */
@ExtendWith(Browsers.class)
class ClosedStandTest {
    private static final JsonMapper JSON = new JsonMapper();

    /** Each sets {@code window.canary} where it is taken for more than text. */
    private static final String IMAGE = "<img src=x onerror=\"window.canary=1\">";

    private static final String SCRIPT = "\"><script>window.canary=1</script>";
    private static final String DRAWING = "<svg onload=window.canary=1>";
    private static final String FOCUS = "\" autofocus onfocus=\"window.canary=1";

    private GateStand stand;
    private int keys;

    @BeforeEach
    void closed() {
        stand = new GateStand("127.0.0.1");
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private void signIn(Browser owner, String path) {
        owner.open(stand.origin() + path);
        owner.waitFor("input[name='how'][value='owner']");
        owner.type("input[name='password']", GateStand.PASSWORD, Keys.ENTER);
        owner.waitFor(".signed-in");
    }

    private static String path(Browser browser) {
        return browser.address().replaceFirst("^http://[^/]*", "");
    }

    @Test
    void fromTheOwnersPasswordToACashierAtAPairedTill(Browser owner, Browser till) {
        owner.open(stand.origin() + "/counter");
        assertEquals("/sign-in?back=%2Fcounter", path(owner));
        owner.waitFor("[data-worker='ready']");
        assertEquals("", owner.axe());
        signIn(owner, "/counter");
        assertEquals("/counter", path(owner), "it goes on to what was asked for");
        String code = codeFor(owner, "Till 2");

        till.open(stand.origin() + "/pair");
        assertEquals("", till.axe());
        String sloppy =
                code.toLowerCase(Locale.ROOT)
                        .chars()
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining(" "));
        till.type("[name='code']", sloppy, Keys.ENTER);
        till.waitFor("[name='person']");
        till.open(stand.origin() + "/counter");
        assertEquals("/sign-in?back=%2Fcounter", path(till), "a till alone sells nothing");
        assertEquals("", till.axe());
        String cashier = stand.person(Role.COUNTER);
        till.click("label:has([value='" + cashier + "'])");
        pad(till, "1111");
        till.waitText(".told", "That is not right. 4 more tries, then there is a wait.");
        assertEquals(1, till.count("[value='" + cashier + "']:checked"), "nobody taps it again");
        assertEquals(List.of(), withoutStatus(till, 422));
        pad(till, GateStand.PIN);
        till.waitText(".signed-in b", "counter");
        assertEquals("/counter", path(till));
        mayNotChangeAccess(till);
        signsOut(till);
    }

    private String codeFor(Browser owner, String name) {
        owner.open(stand.origin() + "/settings/access");
        assertEquals("", owner.axe());
        String form = "[action='/settings/access/devices'] ";
        owner.type(form + "[name='name']", name);
        owner.click(form + "option[value='counter']");
        owner.click(form + ".go");
        String code = owner.waitFor("#code").getText();
        assertEquals("", owner.axe());
        assertEquals(List.of(), owner.consoleErrors());
        return code;
    }

    private static void pad(Browser till, String pin) {
        pin.chars().forEach(digit -> till.click("[data-pad='" + (char) digit + "']"));
        till.click(".pad .go");
    }

    private void mayNotChangeAccess(Browser till) {
        till.open(stand.origin() + "/settings/access");
        assertTrue(path(till).startsWith("/sign-in?"), till.address());
        till.waitText(".told", "You may not do this here. Ask a lead or the owner.");
        assertEquals(0, till.count("[action^='/settings/access']"));
        assertEquals(List.of(), till.consoleErrors());
    }

    private void signsOut(Browser till) {
        till.open(stand.origin() + "/counter");
        till.waitText("#live", "live");
        till.click(".signed-in button");
        till.waitFor("[name='person']");
        till.open(stand.origin() + "/counter");
        assertEquals("/sign-in?back=%2Fcounter", path(till));
        assertEquals(0, till.count(".signed-in"));
    }

    /** Errors of the console but for what it says of an answer's status, which must be there. */
    private static List<String> withoutStatus(Browser browser, int status) {
        List<String> errors = browser.consoleErrors();
        String said = "status of " + status;
        assertTrue(errors.stream().anyMatch(error -> error.contains(said)), errors.toString());
        return errors.stream().filter(error -> !error.contains(said)).toList();
    }

    @Test
    void whatPeopleTypeIsShownAndNeverRun(Browser browser) throws IOException {
        Roster roster = stand.access().roster();
        GateStand.value(roster.rename(Actor.ANYBODY, "s1", SCRIPT));
        String person = GateStand.value(roster.addPerson(Actor.ANYBODY, IMAGE, Role.COUNTER)).id();
        GateStand.value(roster.setPin(Actor.ANYBODY, person, GateStand.PIN));
        String left = GateStand.value(roster.addPerson(Actor.ANYBODY, FOCUS, Role.LINE)).id();
        GateStand.value(roster.endPerson(Actor.ANYBODY, left));
        String code = GateStand.value(roster.offer(DRAWING, Use.LINE)).code();
        GateStand.value(roster.pairByCode(code, "here"));
        GateStand.value(roster.makeToken(Actor.ANYBODY, FOCUS, Role.LINE));
        String order = order(IMAGE);
        order(SCRIPT);
        api("/api/parts/" + order + ".1.fryer/queries", "text", DRAWING);
        api("/api/orders/" + order(FOCUS) + "/voids", "reason", IMAGE);

        signIn(browser, "/settings/access");
        shows(browser, "/settings/access?done=person-added&whom=" + person, IMAGE, SCRIPT, DRAWING);
        assertEquals("", browser.axe());
        browser.click("[action='/settings/access/people/" + person + "/pin'] [name='pin']");
        browser.type("[action='/settings/access/people/" + person + "/pin'] [name='pin']", "2718");
        browser.keys(Keys.ENTER);
        browser.waitText(".told", IMAGE);
        shows(browser, "/audit", IMAGE, SCRIPT);
        shows(browser, "/counter", IMAGE, DRAWING);
        shows(browser, "/boards/fryer", IMAGE, SCRIPT, DRAWING);
        shows(browser, "/pass", IMAGE, SCRIPT);
        shows(browser, "/orders", IMAGE, SCRIPT);
        paper(browser);
        screenNamed(browser, FOCUS);
        erase(browser);
        browser.click(".signed-in button");
        browser.waitText("[name='person'] + span", IMAGE);
        runsNothing(browser, "/sign-in");
        assertEquals(List.of(), browser.consoleErrors());
    }

    private String order(String name) throws IOException {
        return api("/api/orders", "name", name).get("order").asText();
    }

    private JsonNode api(String path, String field, String text) throws IOException {
        ObjectNode body = JSON.createObjectNode().put("call", "fries").put(field, text);
        if (!path.equals("/api/orders")) {
            body.remove("call");
        }
        HttpResponse<String> answer =
                stand.send(
                        stand.request(path)
                                .header("Authorization", "Bearer " + token())
                                .header("Content-Type", "application/json")
                                .header("Idempotency-Key", "closed-" + keys++)
                                .POST(BodyPublishers.ofString(body.toString()))
                                .build());
        assertEquals(2, answer.statusCode() / 100, answer.body());
        return JSON.readTree(answer.body());
    }

    private String token() {
        return stand.token(Role.OWNER);
    }

    /** A page shows texts as they were typed, and runs nothing. */
    private void shows(Browser browser, String path, String... texts) {
        browser.open(stand.origin() + path);
        for (String text : texts) {
            browser.waitText("body", text);
        }
        runsNothing(browser, path);
        assertEquals(List.of(), browser.consoleErrors(), path);
    }

    private static void runsNothing(Browser browser, String where) {
        assertNull(browser.script("return window.canary"), where);
        assertEquals(
                0L,
                browser.script(
                        "return document.querySelectorAll('svg[onload],"
                                + "img[onerror],[onfocus]').length"),
                where);
    }

    /** A slip is drawn in a frame of its own. */
    private static void paper(Browser browser) {
        browser.click("[data-print] button");
        browser.waitFor("iframe.away");
        Object text = null;
        for (int i = 0; i < 100 && (text == null || text.equals("")); i++) {
            text =
                    browser.scriptLater(
                            "const frame = document.querySelector('iframe.away');"
                                    + "setTimeout(() => arguments[0]("
                                    + "frame.contentDocument.body?.textContent.trim()), 50)");
        }
        assertTrue(String.valueOf(text).contains(FOCUS), String.valueOf(text));
        assertNull(
                browser.script(
                        "return document.querySelector('iframe.away').contentWindow.canary"));
        runsNothing(browser, "paper");
    }

    private void screenNamed(Browser browser, String name) {
        browser.open(stand.origin() + "/screens");
        browser.type("form [name='name']", name, Keys.ENTER);
        browser.waitFor("#live");
        browser.open(stand.origin() + "/screens");
        assertEquals(name, browser.waitFor("form [name='name']").getDomProperty("value"));
        runsNothing(browser, "/screens");
    }

    private void erase(Browser browser) {
        browser.open(stand.origin() + "/settings/names");
        browser.type("#number", IMAGE, Keys.ENTER);
        browser.waitText(".told", "There is no order with this number");
        assertEquals(IMAGE, browser.waitFor("#number").getDomProperty("value"));
        runsNothing(browser, "/settings/names");

        assertEquals(List.of(), withoutStatus(browser, 404));
        assertEquals("", browser.axe());
    }
}
