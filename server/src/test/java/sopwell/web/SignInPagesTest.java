package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.undertow.server.HttpServerExchange;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.GateStand;
import sopwell.access.AccessLimits;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.access.Use;
import sopwell.audit.Who;

/** A closed stand as people with browsers have it. */
class SignInPagesTest {
    private final AtomicLong nanos = new AtomicLong(1);
    private final GateStand stand = new GateStand(nanos::get);

    @AfterEach
    void close() {
        stand.close();
    }

    /** Somebody at a paired device. */
    private Visitor at(Use use) {
        Visitor visitor = new Visitor(stand);
        String code = GateStand.value(stand.access().roster().offer("a till", use)).code();
        assertEquals(303, visitor.post("/pair", "code", code).statusCode());
        return visitor;
    }

    private Visitor owner() {
        Visitor owner = new Visitor(stand);
        HttpResponse<String> in =
                owner.post("/sign-in", "how", "owner", "password", GateStand.PASSWORD);
        assertEquals(303, in.statusCode(), in.body());
        return owner;
    }

    private HttpResponse<String> pin(Visitor visitor, String person, String pin) {
        nanos.addAndGet(3_600_000_000_000L);
        return visitor.post("/sign-in", "person", person, "pin", pin, "back", "/counter");
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertTrue(matcher.find(), pattern + " in " + text);
        return matcher.group(1);
    }

    @Test
    void fromTheOwnersPasswordToARevokedTill() {
        Visitor owner = new Visitor(stand);
        assertEquals(
                "/sign-in?back=%2Fsettings%2Faccess", Visitor.leads(owner.get("/settings/access")));
        String door = owner.get("/sign-in?back=%2Fsettings%2Faccess").body();
        assertTrue(door.contains("href=\"/pair\""), door);
        assertTrue(door.contains("value=\"/settings/access\""), door);
        HttpResponse<String> in =
                owner.post(
                        "/sign-in",
                        "how",
                        "owner",
                        "password",
                        GateStand.PASSWORD,
                        "back",
                        "/settings/access");
        assertEquals("/settings/access", Visitor.leads(in));
        String id = hired(owner);
        Visitor till = paired(owner);
        assertTrue(till.get("/sign-in").body().contains("<b>Rosa &lt;i&gt;</b>"));
        HttpResponse<String> wrong = pin(till, id, "111111");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("4 more tries"), wrong.body());
        assertEquals("/counter", Visitor.leads(pin(till, id, "271828")));
        String counter = till.get("/counter").body();
        assertTrue(counter.contains("<b>Rosa &lt;i&gt;</b>"), counter);
        long before = stand.seq();
        HttpResponse<String> order =
                till.post("/counter/orders", "call", "2 fries", "key", "rosa-1", "version", "0");
        assertEquals(2, order.statusCode() / 100, order.body());
        assertTrue(stand.seq() > before, order.body());
        long after = stand.seq();
        assertEquals(
                "/sign-in?back=%2F&why=not-allowed",
                Visitor.leads(till.post("/counter/orders/x/refunds", "key", "rosa-2")));
        assertEquals(after, stand.seq());

        String audit = owner.get("/audit?kind=access").body();
        for (String told :
                List.of(
                        "Added Rosa &lt;i&gt;",
                        "Gave Rosa &lt;i&gt; another PIN",
                        "Paired a screen: Till 2",
                        "Paired a screen: office")) {
            assertTrue(audit.contains(told), told + " in " + audit);
        }
        String device = found("devices/(d\\d+)/revoked\"", lastOf(owner, "Till 2"));
        assertEquals(
                303, owner.post("/settings/access/devices/" + device + "/revoked").statusCode());
        assertEquals("/sign-in?back=%2Fcounter", Visitor.leads(till.get("/counter")));
        assertFalse(till.get("/sign-in").body().contains("Rosa"), "names are for those let in");
        assertEquals(422, pin(till, id, "271828").statusCode());
    }

    /** The id of somebody new with a PIN. */
    private static String hired(Visitor owner) {
        String added =
                Visitor.leads(
                        owner.post(
                                "/settings/access/people", "name", "Rosa <i>", "role", "counter"));
        String id = found("whom=(s\\d+)", added);
        String list = owner.get(added).body();
        assertTrue(list.contains("Added Rosa &lt;i&gt;"), list);
        assertTrue(list.contains("action=\"/sign-out\""), list);
        String person = "/settings/access/people/" + id;
        assertEquals(422, owner.post(person + "/pin", "pin", "12").statusCode());
        assertEquals(303, owner.post(person + "/pin", "pin", "271828").statusCode());
        return id;
    }

    /** A till that the owner let in, where the code was typed carelessly. */
    private Visitor paired(Visitor owner) {
        String offered =
                owner.post("/settings/access/devices", "name", "Till 2", "use", "counter").body();
        String code = found("id=\"code\">([0-9A-Z ]{9})<", offered);
        Visitor till = new Visitor(stand);
        assertEquals(422, till.post("/pair", "code", "AAAAAAAA").statusCode());
        String sloppy = code.toLowerCase(java.util.Locale.ROOT).replace('0', 'o').replace('1', 'l');
        assertEquals("/sign-in?back=%2Fscreens", Visitor.leads(till.post("/pair", "code", sloppy)));
        return till;
    }

    private static String lastOf(Visitor owner, String name) {
        String page = owner.get("/settings/access").body();
        return page.substring(page.indexOf("<b>" + name));
    }

    @Test
    void theOwnerIsNeverWithoutAWayIn() {
        Visitor owner = owner();
        HttpResponse<String> left = owner.post("/settings/access/people/s1/left");
        assertEquals(422, left.statusCode());
        assertTrue(left.body().contains("The last owner who can sign in stays."), left.body());
        String made = owner.post("/settings/access/tokens", "name", "till", "role", "line").body();
        String secret = found("class=\"secret\">([\\w-]{43})<", made);
        assertFalse(owner.get("/settings/access").body().contains(secret), "shown once");
        String out = Visitor.leads(owner.post("/sign-out", "back", "/counter"));
        assertEquals("/sign-in?back=%2Fcounter", out);
        assertNull(owner.cookie("sopwell"));
        assertTrue(owner.get(out).body().contains("<b>owner</b>"));
    }

    @Test
    void aPasswordProvesALeadForFiveMinutes() {
        Visitor lead = at(Use.COUNTER);
        assertEquals(303, pin(lead, stand.person(Role.LEAD), GateStand.PIN).statusCode());
        String refused = "/sign-in?back=%2Fsettings%2Faccess&why=password-needed";
        assertEquals(refused, Visitor.leads(lead.get("/settings/access")));
        String asked = lead.get(refused).body();
        assertTrue(asked.contains("name=\"how\" value=\"prove\""), asked);
        String before = lead.cookie("sopwell");
        nanos.addAndGet(3_600_000_000_000L);
        assertEquals(
                "/settings/access",
                Visitor.leads(
                        lead.post(
                                "/sign-in",
                                "how",
                                "prove",
                                "password",
                                GateStand.PASSWORD,
                                "back",
                                "/settings/access")));
        assertNotEquals(before, lead.cookie("sopwell"));
        assertEquals(200, lead.get("/settings/access").statusCode());
        stand.later(AccessLimits.PASSWORD_FRESH_MILLIS);
        assertEquals(refused, Visitor.leads(lead.get("/settings/access")));
    }

    @Test
    void whoIsLockedIsToldForHowLongAndIsUnlocked() {
        Visitor line = at(Use.COUNTER);
        String id = stand.person(Role.LINE);
        for (int i = 1; i < AccessLimits.SECRET_TRIES_MAX; i++) {
            assertEquals(422, pin(line, id, "0000").statusCode());
        }
        HttpResponse<String> fifth = pin(line, id, "0000");
        assertEquals(429, fifth.statusCode());
        assertTrue(fifth.body().contains("Try again in 30 seconds."), fifth.body());
        HttpResponse<String> right = pin(line, id, GateStand.PIN);
        assertTrue(right.body().contains("Try again in 30 seconds."), right.body());
        for (int i = 5; i < AccessLimits.SECRET_TRIES_HARD_MAX; i++) {
            stand.later(AccessLimits.SECRET_WAIT_MILLIS_MAX);
            pin(line, id, "0000");
        }
        stand.later(AccessLimits.SECRET_WAIT_MILLIS_MAX);
        String locked = pin(line, id, GateStand.PIN).body();
        assertTrue(locked.contains("locked. A lead or the owner unlocks it"), locked);
        nanos.addAndGet(3_600_000_000_000L);
        Visitor owner = owner();
        String people = owner.get("/settings/access").body();
        assertTrue(people.contains("<strong>locked</strong>"), people);
        owner.post("/settings/access/people/" + id + "/unlocked");
        assertEquals("/counter", Visitor.leads(pin(line, id, GateStand.PIN)));
    }

    @Test
    void comesBackToThisStandAlone() {
        for (String hostile :
                List.of(
                        "//evil.example",
                        "/\\evil.example",
                        "https://evil.example/",
                        "javascript:alert(1)",
                        "/\t/evil.example",
                        "\\\\evil.example",
                        "evil",
                        "/a\r\nSet-Cookie: x=y",
                        "/" + "a".repeat(1_001),
                        "/sign-in?back=/",
                        "")) {
            nanos.addAndGet(3_600_000_000_000L);
            HttpResponse<String> in =
                    new Visitor(stand)
                            .post(
                                    "/sign-in",
                                    "how",
                                    "owner",
                                    "password",
                                    GateStand.PASSWORD,
                                    "back",
                                    hostile);
            assertEquals("/", Visitor.leads(in), hostile);
        }
    }

    @Test
    void anotherLanguageOnTheWayInStillComesBack() {
        Visitor visitor = new Visitor(stand);
        String door = Visitor.leads(visitor.get("/audit?kind=money"));
        assertEquals("/sign-in?back=%2Faudit%3Fkind%3Dmoney", door);
        String spanish = found("href=\"(/sign-in\\?[^\"]*lang=es)\"", visitor.get(door).body());
        String page = visitor.get(spanish.replace("&amp;", "&")).body();
        assertTrue(page.contains("<html lang=\"es\""), page);
        assertTrue(page.contains("name=\"back\" value=\"/audit?kind=money\""), page);
        HttpResponse<String> wrong =
                visitor.post(
                        "/sign-in", "how", "owner", "password", "x", "back", "/audit?kind=day");
        assertEquals(422, wrong.statusCode());
        String english = found("href=\"(/sign-in\\?[^\"]*lang=en)\"", wrong.body());
        String again = visitor.get(english.replace("&amp;", "&")).body();
        assertTrue(again.contains("name=\"back\" value=\"/audit?kind=day\""), again);
        String hostile = visitor.get("/sign-in?back=//evil.example&lang=en").body();
        assertTrue(hostile.contains("name=\"back\" value=\"/\""), hostile);
        assertFalse(hostile.contains("evil"), hostile);
    }

    @Test
    void whyAPasswordIsAskedForIsStillSaidInAnotherLanguage() {
        Visitor lead = at(Use.COUNTER);
        pin(lead, stand.person(Role.LEAD), GateStand.PIN);
        String door = Visitor.leads(lead.get("/settings/access"));
        String spanish = found("href=\"(/sign-in\\?[^\"]*lang=es)\"", lead.get(door).body());
        String page = lead.get(spanish.replace("&amp;", "&")).body();
        assertTrue(page.contains("name=\"how\" value=\"prove\""), page);
        assertTrue(page.contains("name=\"back\" value=\"/settings/access\""), page);
    }

    @Test
    void nobodyIsSignedInFromAnotherPage() {
        Visitor visitor = new Visitor(stand);
        String[] form = {"how", "owner", "password", GateStand.PASSWORD};
        assertEquals(403, visitor.stray("/sign-in", form).statusCode());
        assertEquals(403, visitor.stray("/pair", "code", "AAAAAAAA").statusCode());
        assertNull(visitor.cookie("sopwell"));
        assertEquals(303, visitor.post("/sign-in", form).statusCode());
    }

    @Test
    void oneAddressTriesTenTimesAtOnce() {
        Visitor visitor = new Visitor(stand);
        for (String path : List.of("/sign-in", "/pair")) {
            for (int i = 0; i < 10; i++) {
                assertNotEquals(429, visitor.post(path, "how", "owner").statusCode(), path);
            }
            HttpResponse<String> over = visitor.post(path, "how", "owner");
            assertEquals(429, over.statusCode());
            assertEquals("3", over.headers().firstValue("Retry-After").get());
            assertTrue(over.body().contains("Try again in 3 seconds."), over.body());
        }
    }

    @Test
    void whoeverTheGateDidNotNameIsNotTheOwner() {
        HttpServerExchange exchange = new HttpServerExchange(null);
        assertEquals(Who.AT_THIS_MACHINE, Actors.of(exchange));
        Actors.expectGate(exchange);
        assertThrows(Check.Broken.class, () -> Actors.of(exchange));
        assertEquals(Actor.NOBODY, Gate.actor(exchange));
    }
}
