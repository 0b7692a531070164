package sopwell.net;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.ToLongFunction;
import sopwell.GateStand;
import sopwell.access.Role;
import sopwell.web.Seen;

/**
 * A closed stand, screens at the far end of a cable that is cut, and orders that go on meanwhile.
 * What it measures is in milliseconds. Used by one thread.
 */
final class CableRun implements AutoCloseable {
    private static final int SETTLES_MILLIS_MAX = 20_000;
    private static final int LOOK_MILLIS = 10;
    private static final int EVENT_MILLIS = 500;

    private final GateStand stand;
    private final Cable cable;
    private final FarScreens far;
    private final Api api;
    private final Kitchen kitchen;

    /**
     * What one cut came to; -1 for what did not happen.
     *
     * @param stale when the last screen said that it is old
     * @param dropped when the stand believed in no screen any more
     * @param back from the mending until the last screen had the right board
     * @param wrong screens whose rows differ afterwards, and frames that did not follow
     */
    record Came(long stale, long dropped, long back, List<String> wrong) {}

    CableRun(Cable cable, int screens) throws IOException {
        this.cable = cable;
        this.stand = new GateStand(cable.near());
        String token = stand.token(Role.OWNER);
        this.api =
                new Api(
                        new InetSocketAddress(cable.near(), stand.port()),
                        10_000,
                        "Authorization: Bearer " + token + "\r\n");
        this.kitchen = new Kitchen(api, 8);
        this.far = new FarScreens(cable, stand.port(), token, screens);
        for (int i = 0; i < 5; i++) {
            kitchen.next();
        }
        long began = System.nanoTime();
        while (far.now().size() < screens || !isRight(seqs())) {
            look(began);
        }
    }

    /** Cuts the cable for so long. */
    Came cut(Cable.Break kind, long millis) throws IOException {
        long cutAt = System.nanoTime();
        cable.cut(kind);
        Set<Integer> old = new HashSet<>();
        long stale = -1;
        long dropped = -1;
        long nextEvent = cutAt;
        while (millisSince(cutAt) < millis) {
            far.now().forEach((i, seen) -> add(old, i, seen));
            stale = stale < 0 && old.size() == far.now().size() ? millisSince(cutAt) : stale;
            dropped = dropped < 0 && cable.believedIn() == 0 ? millisSince(cutAt) : dropped;
            if (System.nanoTime() >= nextEvent) {
                kitchen.next();
                nextEvent = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(EVENT_MILLIS);
            }
            BadLink.pause(LOOK_MILLIS);
        }
        Map<String, Long> wanted = seqs();
        long mendedAt = System.nanoTime();
        cable.mend();
        while (!isRight(wanted) && millisSince(mendedAt) < SETTLES_MILLIS_MAX) {
            BadLink.pause(LOOK_MILLIS);
        }
        return new Came(stale, dropped, millisSince(mendedAt), wrong());
    }

    /** Places so many orders, and says how long the answer took at so many of a hundred. */
    long orderMillis(int orders, int percent) throws IOException {
        List<Long> took = new ArrayList<>();
        for (int i = 0; i < orders; i++) {
            long from = System.nanoTime();
            api.insist("/api/orders", "choked-" + from, "{\"call\": \"fries\"}", 1);
            took.add(millisSince(from));
            BadLink.pause(LOOK_MILLIS);
        }
        List<Long> sorted = took.stream().sorted().toList();
        return sorted.get(Math.min(orders - 1, orders * percent / 100));
    }

    /** How many connections of the far end the stand believes in. */
    int believedIn() throws IOException {
        return cable.believedIn();
    }

    @Override
    public void close() {
        far.close();
        stand.close();
    }

    private static void add(Set<Integer> old, int screen, FarScreens.Seen seen) {
        if (seen.stale()) {
            old.add(screen);
        }
    }

    private Map<String, Long> seqs() throws IOException {
        Map<String, Long> seqs = new HashMap<>();
        for (String board : CutRun.BOARDS) {
            seqs.put(board, api.get("/api/boards/" + board).path("seq").longValue());
        }
        return seqs;
    }

    private boolean isRight(Map<String, Long> wanted) {
        ToLongFunction<Integer> least = i -> wanted.get(CutRun.BOARDS.get(i % 4));
        return far.now().entrySet().stream()
                .allMatch(
                        each ->
                                !each.getValue().stale()
                                        && each.getValue().seq()
                                                >= least.applyAsLong(each.getKey()));
    }

    private List<String> wrong() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<Integer, String> each : far.rows().entrySet()) {
            String board = CutRun.BOARDS.get(each.getKey() % 4);
            String wanted = "" + Seen.board(api.get("/api/boards/" + board));
            if (!wanted.equals(each.getValue())) {
                wrong.add(board + " shows " + each.getValue() + " for " + wanted);
            }
        }
        wrong.addAll(far.faults());
        return wrong;
    }

    private static void look(long began) {
        if (millisSince(began) > SETTLES_MILLIS_MAX) {
            throw new AssertionError("the far screens don't come up");
        }
        BadLink.pause(LOOK_MILLIS);
    }

    private static long millisSince(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - nanos);
    }
}
