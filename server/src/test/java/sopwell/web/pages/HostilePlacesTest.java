package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import sopwell.access.Actor;
import sopwell.access.Outcome;
import sopwell.access.Person;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.access.Use;
import sopwell.audit.Who;
import sopwell.call.CallParser;
import sopwell.counter.CallViews;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.By;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.menu.Menu;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeReading;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuReading;
import sopwell.storage.RecipeReader;
import sopwell.till.Means;
import sopwell.till.TillCommand;
import sopwell.web.api.JsonFrames;

/** Nothing that is typed becomes markup on paper, in a frame, or through what the owner names. */
class HostilePlacesTest {
    private static final List<String> TEXTS = HostileTexts.all();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int NAMES_AT_ONCE = 12;

    /** Has texts typed at a stand, and looks wherever they are shown. */
    private interface Place {
        void typed(PageStand stand, List<String> texts, Looked looked);
    }

    /** Types all texts, and as many plain words, at a place: both make the same markup. */
    private static Looked alike(List<String> texts, Place place) throws Exception {
        Looked plain = new Looked();
        try (PageStand stand = new PageStand()) {
            place.typed(stand, List.of("word", "another"), plain);
        }
        Looked hostile = new Looked();
        try (PageStand stand = new PageStand()) {
            place.typed(stand, texts, hostile);
        }
        same(plain, hostile);
        return hostile;
    }

    /** One text of so many, from all kinds. */
    private static List<String> every(int step) {
        List<String> some = new ArrayList<>();
        for (int i = 0; i < TEXTS.size(); i += step) {
            some.add(TEXTS.get(i));
        }
        return some;
    }

    private static void same(Looked plain, Looked hostile) {
        assertEquals(List.of(), hostile.faults);
        Set<String> more = new TreeSet<>(hostile.made);
        more.removeAll(plain.made);
        assertEquals(Set.of(), more, "elements and attributes that a plain word does not make");
    }

    private static void shownAtLeast(int least, Looked looked) {
        assertTrue(looked.shown.size() >= least, () -> "shown as typed: " + looked.shown.size());
    }

    private static Answer by(PageStand stand, StandCommand command) {
        return stand.ask(new By(Who.AT_THIS_MACHINE, command));
    }

    /** The id of an order for somebody whose name is let in. */
    private static Optional<String> placed(PageStand stand, String name) {
        List<Asked> fries = CallViews.asked(new CallParser(PageStand.menu()).read("fries"));
        return by(stand, new ForOrders(new OrderCommand.Place(name, true, fries))).events().stream()
                .map(recorded -> recorded.event())
                .filter(OrderPlaced.class::isInstance)
                .map(event -> ((OrderPlaced) event).order())
                .findFirst();
    }

    @Test
    void slipsAndTickets() throws Exception {
        Looked looked = alike(every(2), HostilePlacesTest::papers);
        shownAtLeast(100, looked);
        assertTrue(looked.pages >= 250, () -> "papers: " + looked.pages);
    }

    private static void papers(PageStand stand, List<String> texts, Looked looked) {
        for (String text : texts) {
            Optional<String> order = placed(stand, text);
            if (order.isEmpty()) {
                continue;
            }
            for (String paper : List.of("slip", "fryer")) {
                String path = "/orders/" + order.get() + "/papers";
                HttpResponse<String> got =
                        stand.press(path, "paper-" + looked.pages, Map.of("paper", paper));
                assertEquals(200, got.statusCode(), got.body());
                looked.note(Jsoup.parse(got.body()), texts, path);
                looked.pages++;
            }
            by(stand, new ForOrders(new OrderCommand.VoidOrder(order.get(), 0, "word")));
        }
    }

    @Test
    void refundReasonsAndWhoseTillItWas() throws Exception {
        Looked looked = alike(TEXTS.subList(0, 60), HostilePlacesTest::refunds);
        Looked odd =
                alike(TEXTS.subList(TEXTS.size() - 90, TEXTS.size()), HostilePlacesTest::refunds);
        shownAtLeast(20, looked);
        shownAtLeast(30, odd);
    }

    private static void refunds(PageStand stand, List<String> texts, Looked looked) {
        by(stand, new ForTill(new TillCommand.OpenTill("Ines", 100_000)));
        String order = "";
        for (String text : texts) {
            order = placed(stand, "").orElseThrow();
            by(stand, new ForTill(new TillCommand.Pay(order, "Ines", Means.CASH, 0, 0, 0)));
            by(
                    stand,
                    new ForTill(
                            new TillCommand.Refund(order, "Ines", Means.CASH, 100, false, text)));
            by(stand, new ForOrders(new OrderCommand.Hand(order)));
        }
        for (String path :
                List.of(
                        "/till",
                        "/till/today",
                        "/audit",
                        "/close",
                        "/counter/orders/" + order + "/money")) {
            looked.page(stand.get(path), texts, path);
        }
    }

    @Test
    void batchNotesDeliveriesAndWhyABatchWentAway() throws Exception {
        Looked looked = alike(every(6), HostilePlacesTest::batches);
        assertTrue(looked.pages >= 50, () -> "batches looked at: " + looked.pages);
    }

    private static void batches(PageStand stand, List<String> texts, Looked looked) {
        adopt(stand, sopwell.stock.larder.Books.small());
        for (String text : texts) {
            Answer begun = by(stand, larder(new LarderCommand.StartBatch("sliced-beef", 1, text)));
            if (begun.events().isEmpty()) {
                continue;
            }
            int last = begun.events().size() - 1;
            String id = ((BatchEvent) begun.events().get(last).event()).batch();
            String path = "/prep/batches/" + id;
            by(stand, larder(new LarderCommand.DiscardBatch(id, "", "", text)));
            looked.page(stand.get(path), texts, path);
        }
        for (String path : List.of("/prep/batches", "/prep/stock", "/prep/counts", "/close")) {
            looked.page(stand.get(path), texts, path);
        }
    }

    private static ForLarder larder(LarderCommand command) {
        return new ForLarder(command);
    }

    private static void adopt(PageStand stand, RecipeBook book) {
        stand.ask(new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision()));
    }

    @Test
    void peopleScreensAndPrograms() throws Exception {
        Looked looked = alike(TEXTS, HostilePlacesTest::people);
        shownAtLeast(150, looked);
    }

    private static void people(PageStand stand, List<String> texts, Looked looked) {
        Roster roster = stand.access().roster();
        for (String text : texts) {
            Outcome<Person> added = roster.addPerson(Actor.ANYBODY, text, Role.LEAD);
            added.value().ifPresent(p -> roster.setPin(Actor.ANYBODY, p.id(), "1234").join());
            roster.makeToken(Actor.ANYBODY, text, Role.LINE);
            roster.offer(text, Use.LINE)
                    .value()
                    .ifPresent(offer -> roster.pairByCode(offer.code(), "here"));
        }
        for (String path : List.of("/settings/access", "/settings/access?done=pin-set&whom=s2")) {
            looked.page(stand.get(path), texts, path);
        }
        String screen =
                stand.post("/settings/access/devices", Map.of("name", texts.get(0), "use", "line"))
                        .body();
        looked.note(Jsoup.parse(screen), texts, "code");
        roster.endPerson(Actor.ANYBODY, "s1");
        roster.endPerson(Actor.ANYBODY, "s2");
        looked.page(stand.get("/settings/access"), texts, "/settings/access");
    }

    @Test
    void namesOfScreens() throws Exception {
        Looked looked = alike(TEXTS, HostilePlacesTest::screens);
        shownAtLeast(150, looked);
    }

    private static void screens(PageStand stand, List<String> texts, Looked looked) {
        for (String text : texts) {
            String set = new Setup(text, "/pass", 0, 0, true).written();
            looked.page(stand.get("/screens", "Cookie", "screen=" + set), texts, "/screens");
        }
    }

    /** What a socket sends as JSON is JSON, with each name as it was typed. */
    @Test
    void framesOfSockets() throws Exception {
        try (PageStand stand = new PageStand()) {
            Set<String> kept = new TreeSet<>();
            Set<String> sent = new TreeSet<>();
            for (String text : every(2)) {
                Optional<String> order = placed(stand, text);
                if (order.isEmpty()) {
                    continue;
                }
                kept.add(text.strip());
                for (String board : List.of("fryer", "pass", "counter")) {
                    String frame = new JsonFrames().write(stand.frame(board));
                    JSON.readTree(frame)
                            .findValues("name")
                            .forEach(name -> sent.add(name.asText().strip()));
                }
                by(stand, new ForOrders(new OrderCommand.VoidOrder(order.get(), 0, "word")));
            }
            kept.removeAll(sent);
            assertEquals(Set.of(), kept, "typed and not sent as typed");
            assertTrue(sent.size() >= 100, () -> "sent: " + sent.size());
        }
    }

    /** What the owner calls things on the menu, at every place where they are named. */
    @Test
    void whatThingsAreCalledOnTheMenu() throws Exception {
        Looked plain = new Looked();
        menus(List.of("word"), plain);
        Looked hostile = new Looked();
        menus(worst(), hostile);
        same(plain, hostile);
        shownAtLeast(20, hostile);
    }

    private static void menus(List<String> texts, Looked looked) throws Exception {
        for (int from = 0; from < texts.size(); from += NAMES_AT_ONCE) {
            Menu menu = named(texts.subList(from, Math.min(texts.size(), from + NAMES_AT_ONCE)));
            try (PageStand stand = new PageStand(PageStand.settings(), menu)) {
                for (String call : List.of("2 beef dipped hot", "fries", "beef dry provolone")) {
                    stand.place(call, "");
                }
                for (String path :
                        List.of(
                                "/",
                                "/counter",
                                "/boards/line",
                                "/boards/fryer",
                                "/pass",
                                "/orders",
                                "/outs",
                                "/mix/today",
                                "/waits/today",
                                "/ready")) {
                    looked.page(stand.get(path), texts, path);
                }
            }
        }
    }

    /** The demo's menu with its items, sizes, options and stations called something else. */
    private static Menu named(List<String> texts) throws IOException {
        JsonNode menu = resource("/demo/menu.json");
        int n = 0;
        for (String list : List.of("items", "groups", "stations", "pans")) {
            for (JsonNode one : menu.path(list)) {
                n = call(one, texts, n);
                for (String inner : List.of("sizes", "options")) {
                    for (JsonNode deeper : one.path(inner)) {
                        n = call(deeper, texts, n);
                    }
                }
            }
        }
        MenuReading read = MenuReader.read(JSON.writeValueAsBytes(menu));
        return read.menu().orElseThrow(() -> new AssertionError(read.faults().toString()));
    }

    @Test
    void whatIngredientsAreCalled() throws Exception {
        Looked plain = new Looked();
        recipes(List.of("word"), plain);
        Looked hostile = new Looked();
        recipes(worst(), hostile);
        same(plain, hostile);
        shownAtLeast(20, hostile);
    }

    private static void recipes(List<String> texts, Looked looked) throws Exception {
        for (int from = 0; from < texts.size(); from += NAMES_AT_ONCE) {
            List<String> some = texts.subList(from, Math.min(texts.size(), from + NAMES_AT_ONCE));
            JsonNode book = resource("/demo/recipes.json");
            int n = 0;
            for (JsonNode one : book.path("ingredients")) {
                n = call(one, some, n);
                ((ObjectNode) one).put("shelf", some.get(n % some.size()));
            }
            for (JsonNode one : book.path("recipes")) {
                for (JsonNode step : one.path("steps")) {
                    n = call(step, some, n);
                }
            }
            RecipeReading read = RecipeReader.read(JSON.writeValueAsBytes(book), PageStand.menu());
            RecipeBook named =
                    read.book().orElseThrow(() -> new AssertionError(read.form().toString()));
            try (PageStand stand = new PageStand()) {
                adopt(stand, named);
                for (String path :
                        List.of(
                                "/recipes",
                                "/recipes/beef-sliced",
                                "/prep/stock",
                                "/prep/counts",
                                "/prep/batches")) {
                    looked.page(stand.get(path), texts, path);
                }
            }
        }
    }

    private static int call(JsonNode one, List<String> texts, int n) {
        JsonNode name = one.path("name");
        if (name instanceof ObjectNode both) {
            both.put("en", texts.get(n % texts.size()));
            both.put("es", texts.get((n + 1) % texts.size()));
        }
        return n + 1;
    }

    /** Those that a menu takes as a name, one of each kind. */
    private static List<String> worst() throws IOException {
        List<String> taken = new ArrayList<>();
        for (int i = 0; i < TEXTS.size() && taken.size() < 48; i += i < 250 ? 9 : 2) {
            String text = TEXTS.get(i);
            if (isName(text)) {
                taken.add(text);
            }
        }
        assertTrue(taken.size() >= 40, () -> "names: " + taken.size());
        return taken;
    }

    private static boolean isName(String text) throws IOException {
        JsonNode menu = resource("/demo/menu.json");
        call(menu.path("items").path(0), List.of(text), 0);
        return MenuReader.read(JSON.writeValueAsBytes(menu)).menu().isPresent();
    }

    private static JsonNode resource(String name) throws IOException {
        try (InputStream in = PageStand.class.getResourceAsStream(name)) {
            return JSON.readTree(in);
        }
    }
}
