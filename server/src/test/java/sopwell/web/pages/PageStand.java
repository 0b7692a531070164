package sopwell.web.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import sopwell.access.Access;
import sopwell.access.AccessState;
import sopwell.access.Tools;
import sopwell.call.CallParser;
import sopwell.counter.CallViews;
import sopwell.desk.Answer;
import sopwell.desk.AuditTrail;
import sopwell.desk.DayBook;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.MemoryShelf;
import sopwell.desk.NameErasing;
import sopwell.desk.NamesKept;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.desk.TroubledLog;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.mix.Names;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.StandSettings;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.MemoryLog;
import sopwell.storage.MenuReader;
import sopwell.storage.RecipeReader;
import sopwell.storage.RecipeWriter;
import sopwell.storage.StandFile;
import sopwell.till.DayReport;
import sopwell.web.PastPreps;
import sopwell.web.PrepPlans;
import sopwell.web.RecipeDocs;
import sopwell.web.Server;
import sopwell.web.Tallies;
import sopwell.web.Texts;
import sopwell.web.api.JsonFrames;
import sopwell.web.live.BoardHub;
import sopwell.web.live.Frame;
import sopwell.web.live.FrameWriter;
import sopwell.web.past.PastDays;

/** A stand with screens on a free port, over a log in memory; its clock stands until it is set. */
public final class PageStand implements AutoCloseable {
    private final AtomicReference<Instant> now =
            new AtomicReference<>(Instant.parse("2026-11-27T18:00:00Z"));
    private final Access access = new Access(AccessState.EMPTY, tools());
    private final AtomicInteger keys = new AtomicInteger();
    private final AtomicReference<NamesKept> namesKept =
            new AtomicReference<>(new NamesKept(30, 90, Optional.empty()));
    private final TroubledLog log = new TroubledLog(new MemoryLog("test"));
    private final Follower follower;
    private final Desk desk;
    private final CallParser parser;
    private final Texts texts = Texts.load();
    private final Pages pages;
    private final BoardHub hub;
    private final PastDays past;
    private final DayBook book;
    private final PrepPlans plans;
    private final PastPreps pastPreps;
    private final HttpClient http = HttpClient.newHttpClient();
    private final Server server;
    private final CareStub care = new CareStub();

    /** Opens it, with the demo's menu in force. */
    public PageStand() throws jakarta.servlet.ServletException {
        this(settings(), menu());
    }

    /** Opens one with other settings or another menu. */
    PageStand(StandSettings settings, Menu menu) throws jakarta.servlet.ServletException {
        follower = new Follower(log, settings);
        desk = new Desk(log, settings, now::get, follower::follow);
        parser = new CallParser(menu);
        pages = new Pages(follower::menu, settings.zone());
        hub = new BoardHub(follower, log.epoch(), now::get, System::nanoTime);
        past = new PastDays(log, settings);
        book = new DayBook(log, settings, MemoryShelf.shelves());
        plans = new PrepPlans(log, follower, book, settings, now::get);
        pastPreps = new PastPreps(log, follower, book, settings, now::get);
        ask(new StandCommand.AdoptMenu(menu));
        PageContext context =
                new PageContext(
                        desk,
                        follower,
                        texts,
                        settings,
                        now::get,
                        Assets.load(),
                        pages,
                        hub::board,
                        () -> parser,
                        revision ->
                                Optional.of(parser)
                                        .filter(p -> p.menu().revision().equals(revision)),
                        new Tallies(follower, book, settings, () -> new Names(List.of(menu))),
                        date ->
                                CompletableFuture.completedFuture(
                                        Replay.day(log, settings, date).map(PageStand::report)),
                        past,
                        new RecipeDocs(
                                book -> RecipeWriter.tree(book.parts()).toString(),
                                RecipeReader::read,
                                RecipeWriter::book),
                        plans,
                        care.care(),
                        Optional::empty,
                        pastPreps,
                        () -> "form-" + keys.incrementAndGet(),
                        new AuditTrail(log, settings),
                        access,
                        System::nanoTime,
                        new NameErasing(log, desk::submit, date -> {}, past::forget),
                        namesKept::get);
        Map<Lang, FrameWriter> html = new EnumMap<>(Lang.class);
        for (Lang lang : Lang.values()) {
            html.put(lang, new HtmlFrames(pages, texts.in(lang)));
        }
        server =
                new Server(
                        new Server.Place("127.0.0.1", 0, Set.of("127.0.0.1"), 64),
                        routes -> PageRoutes.add(routes, context),
                        hub,
                        new JsonFrames(),
                        html);
        server.start();
    }

    private static DayReport report(Stand stand) {
        return DayReport.of(stand.orders(), stand.till());
    }

    /** The demo's menu. */
    public static Menu menu() {
        return MenuReader.read(resource("/demo/menu.json")).menu().orElseThrow();
    }

    static StandSettings settings() {
        return StandFile.read(resource("/demo/stand.json")).settings().orElseThrow();
    }

    private static byte[] resource(String name) {
        try (InputStream in = PageStand.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Whom it knows; nobody signs in here, so secrets are kept as they are. */
    Access access() {
        return access;
    }

    /** What it says of how long names are kept. */
    AtomicReference<NamesKept> namesKept() {
        return namesKept;
    }

    /** Its log, which can be told to fail. */
    TroubledLog log() {
        return log;
    }

    private Tools tools() {
        Tools.Hasher plain =
                new Tools.Hasher() {
                    @Override
                    public String hash(String secret) {
                        return secret;
                    }

                    @Override
                    public boolean matches(String secret, String hash) {
                        return hash.equals(secret);
                    }
                };
        return new Tools(
                plain, Runnable::run, () -> new byte[32], now::get, state -> {}, attempt -> {});
    }

    void later(long seconds) {
        now.updateAndGet(instant -> instant.plusSeconds(seconds));
    }

    void at(Instant instant) {
        now.set(instant);
    }

    Answer ask(StandCommand command) {
        String key = "test-" + keys.incrementAndGet();
        return desk.submit(key, key, command).join();
    }

    /** The book of recipes in force. */
    RecipeBook recipes() {
        return follower.ask(Stand::recipes).join();
    }

    /** Places an order and gives its id. */
    String place(String call, String name) {
        Answer answer =
                ask(
                        new StandCommand.ForOrders(
                                new OrderCommand.Place(
                                        name, true, CallViews.asked(parser.read(call)))));
        return answer.events().stream()
                .filter(recorded -> recorded.event() instanceof OrderPlaced)
                .map(recorded -> ((OrderPlaced) recorded.event()).order())
                .findFirst()
                .orElseThrow();
    }

    /** What its clock says, in seconds, as a form's field. */
    String nowMillis() {
        return Long.toString(now.get().toEpochMilli());
    }

    void change(String order, String call) {
        ask(
                new StandCommand.ForOrders(
                        new OrderCommand.Change(
                                order, 1, "", true, CallViews.asked(parser.read(call)), "")));
    }

    Frame frame(String board) {
        return hub.board(board).join().orElseThrow();
    }

    String written(Frame frame, Lang lang) {
        return new HtmlFrames(pages, texts.in(lang)).write(frame);
    }

    HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    /** Presses something: a post as the screens' script sends it. */
    HttpResponse<String> press(String path, String key, Map<String, String> fields) {
        return send(
                request(path, "HX-Request", "true", "Idempotency-Key", key)
                        .POST(HttpRequest.BodyPublishers.ofString(form(fields))));
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        return send(
                request(path, "Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form(fields))));
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
        return headers.length == 0 ? request : request.headers(headers);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
        past.close();
        plans.close();
        pastPreps.close();
        desk.close();
        follower.close();
        log.close();
    }
}
