package sopwell.net;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import sopwell.browser.Browser;
import sopwell.web.Seen;

/**
 * Screens and tills over links that are cut, all kinds of cut at the same time, while orders go on
 * at the server. What it finds wrong is counted, not thrown.
 */
final class CutRun implements AutoCloseable {
    static final List<String> BOARDS = List.of("line", "pass", "counter", "fryer");
    private static final int SETTLES_MILLIS_MAX = 30_000;
    private static final int LOOK_MILLIS = 10;

    private final Api api;
    private final Kitchen kitchen;
    private final Map<Cut, Far> fars = new EnumMap<>(Cut.class);
    private final Map<Cut, Tally> tallies = new EnumMap<>(Cut.class);
    private final int eventMillis;

    /** What is behind one link. */
    private record Far(
            BadLink link, List<LinkScreen> screens, List<LinkTill> tills, List<LinkBoard> pages) {}

    /**
     * A stand with some screens and a till behind each kind of link.
     *
     * @param screens behind each link
     * @param profiles where browsers keep what they keep; null for no browser
     * @param eventMillis between two orders at the server
     */
    CutRun(String address, List<Cut> kinds, int screens, Path profiles, int eventMillis)
            throws IOException {
        this.api = Api.at(address, 10_000);
        this.kitchen = new Kitchen(api, 8);
        this.eventMillis = eventMillis;
        for (Cut kind : kinds) {
            BadLink link = new BadLink(api.server(), 1);
            link.weather(new Weather(2, 6, 0));
            InetSocketAddress end =
                    new InetSocketAddress(InetAddress.getLoopbackAddress(), link.port());
            List<LinkScreen> looking = new ArrayList<>();
            for (int i = 0; i < screens; i++) {
                looking.add(new LinkScreen(end, BOARDS.get(i % BOARDS.size())));
            }
            LinkTill till = new LinkTill(new Api(end, 2_000), "till " + kind);
            List<LinkBoard> pages = new ArrayList<>();
            if (profiles != null) {
                pages.add(new LinkBoard(Browser.start(profiles), link.address(), "line"));
            }
            fars.put(kind, new Far(link, looking, List.of(till), pages));
            tallies.put(kind, new Tally());
        }
        for (int i = 0; i < 5; i++) {
            kitchen.next();
        }
        settle();
    }

    /** Cuts every link for so long, and looks how everything comes back. */
    void cut(long millis) throws IOException {
        fars.values().forEach(far -> far.tills().forEach(till -> till.rest(false)));
        BadLink.pause(300);
        long cutAt = System.nanoTime();
        long cutAtMs = System.currentTimeMillis();
        fars.forEach((kind, far) -> far.link().cut(kind));
        List<Waiting> stale = watchStale(cutAt, millis);
        Map<String, Long> wanted = new HashMap<>();
        for (String board : BOARDS) {
            wanted.put(board, api.get("/api/boards/" + board).path("seq").longValue());
        }
        long healedAt = System.nanoTime();
        long healedAtMs = System.currentTimeMillis();
        fars.values().forEach(far -> far.link().heal());
        watchBack(healedAt, wanted);
        stale.forEach(w -> w.tally().stale(w.screen(), w.millis(), millis));
        for (Map.Entry<Cut, Far> each : fars.entrySet()) {
            Tally tally = tallies.get(each.getKey());
            for (LinkBoard page : each.getValue().pages()) {
                long back = page.awaitSeq(wanted.get(page.board()), healedAtMs, SETTLES_MILLIS_MAX);
                tally.pageBack(back);
                tally.pageStale(page.staleAfter(cutAtMs, healedAtMs), millis);
            }
        }
        settle();
    }

    Map<Cut, Tally> tallies() {
        return tallies;
    }

    /** Orders that are there, and those that should be. */
    List<Integer> orders() throws IOException {
        int wanted = kitchen.placed();
        for (Far far : fars.values()) {
            for (LinkTill till : far.tills()) {
                wanted += till.orders().size();
            }
        }
        return List.of(api.get("/api/orders").path("of").intValue(), wanted);
    }

    /** What the tills were refused, and what screens got that did not follow. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        for (Far far : fars.values()) {
            far.tills().forEach(till -> faults.addAll(till.refused()));
            far.screens().forEach(screen -> screen.fault().ifPresent(faults::add));
        }
        return faults;
    }

    @Override
    public void close() throws IOException {
        for (Far far : fars.values()) {
            far.tills().forEach(LinkTill::close);
            far.screens().forEach(LinkScreen::close);
            far.pages().forEach(LinkBoard::close);
            far.link().close();
        }
    }

    /** When a screen first said that it is stale. */
    private record Waiting(Tally tally, LinkScreen screen, long millis) {}

    private List<Waiting> watchStale(long cutAt, long millis) throws IOException {
        List<Waiting> found = new ArrayList<>();
        List<LinkScreen> said = new ArrayList<>();
        long nextEvent = cutAt;
        while (millisSince(cutAt) < millis) {
            for (Map.Entry<Cut, Far> each : fars.entrySet()) {
                for (LinkScreen screen : each.getValue().screens()) {
                    if (screen.isStale() && !said.contains(screen)) {
                        said.add(screen);
                        Tally tally = tallies.get(each.getKey());
                        found.add(new Waiting(tally, screen, millisSince(cutAt)));
                    }
                }
            }
            if (System.nanoTime() >= nextEvent) {
                kitchen.next();
                nextEvent = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(eventMillis);
            }
            BadLink.pause(LOOK_MILLIS);
        }
        fars.forEach(
                (kind, far) ->
                        far.screens().stream()
                                .filter(screen -> !said.contains(screen))
                                .forEach(s -> found.add(new Waiting(tallies.get(kind), s, -1))));
        return found;
    }

    private void watchBack(long healedAt, Map<String, Long> wanted) {
        List<LinkScreen> waiting = new ArrayList<>();
        fars.values().forEach(far -> waiting.addAll(far.screens()));
        while (!waiting.isEmpty() && millisSince(healedAt) < SETTLES_MILLIS_MAX) {
            for (Map.Entry<Cut, Far> each : fars.entrySet()) {
                for (LinkScreen screen : each.getValue().screens()) {
                    boolean back = screen.seq() >= wanted.get(screen.board()) && !screen.isStale();
                    if (back && waiting.remove(screen)) {
                        tallies.get(each.getKey()).back(millisSince(healedAt));
                    }
                }
            }
            BadLink.pause(LOOK_MILLIS);
        }
        fars.forEach(
                (kind, far) ->
                        far.screens().stream()
                                .filter(waiting::contains)
                                .forEach(s -> tallies.get(kind).back(SETTLES_MILLIS_MAX)));
    }

    /** Lets everything come to rest and compares every board with the server's. */
    private void settle() throws IOException {
        fars.values().forEach(far -> far.tills().forEach(till -> till.rest(true)));
        BadLink.pause(800);
        awaitThat(() -> fars.values().stream().noneMatch(f -> isWaiting(f.tills())));
        Map<String, JsonNode> truth = new HashMap<>();
        for (String board : BOARDS) {
            truth.put(board, api.get("/api/boards/" + board));
        }
        for (Map.Entry<Cut, Far> each : fars.entrySet()) {
            Tally tally = tallies.get(each.getKey());
            for (LinkScreen screen : each.getValue().screens()) {
                List<String> wanted = Seen.board(truth.get(screen.board()));
                awaitThat(() -> wanted.equals(screen.rows()));
                tally.compare(wanted, screen.rows());
            }
            for (LinkBoard page : each.getValue().pages()) {
                tally.comparePage(page.differences());
            }
        }
    }

    private static boolean isWaiting(List<LinkTill> tills) {
        return tills.stream().anyMatch(LinkTill::isWaiting);
    }

    private static void awaitThat(BooleanSupplier holds) {
        long from = System.nanoTime();
        while (!holds.getAsBoolean() && millisSince(from) < SETTLES_MILLIS_MAX) {
            BadLink.pause(LOOK_MILLIS);
        }
    }

    private static long millisSince(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - nanos);
    }
}
