package sopwell.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * One run of a day: guests come, and whenever a hand is free it takes the oldest work that can be
 * begun, with what fits into the same load; of many alike on a line one hand takes four, as the
 * schedule of the boards has it. Not thread-safe: for one run.
 */
final class Shop {
    /** Alike on one line, this many are made by one hand one behind the other. */
    static final int RUN_PIECES = 4;

    private static final long WORK = 1;

    private final List<Bench> benches;
    private final List<Guest> guests;
    private final Draws draws;
    private final PriorityQueue<Due> due = new PriorityQueue<>();
    private final List<NavigableSet<Piece>> ready = new ArrayList<>();
    private final int[] busy;
    private final long[] upMs;
    private final List<List<Piece>> pieces = new ArrayList<>();
    private long ordinal;
    private long nowMs;

    /** Something that happens at a moment. */
    private record Due(long atMs, long ordinal, Runnable what) implements Comparable<Due> {
        @Override
        public int compareTo(Due other) {
            int byTime = Long.compare(atMs, other.atMs);
            return byTime != 0 ? byTime : Long.compare(ordinal, other.ordinal);
        }
    }

    /** A task of a guest on its way. */
    private static final class Piece implements Comparable<Piece> {
        private final int guest;
        private final int place;
        private final Task task;
        private final double pieceMs;
        private int toTake;
        private int toMake;
        private int waits;

        Piece(int guest, int place, Task task, double pieceMs) {
            this.guest = guest;
            this.place = place;
            this.task = task;
            this.pieceMs = pieceMs;
            this.toTake = task.pieces();
            this.toMake = task.pieces();
            this.waits = task.waitsFor().size();
        }

        @Override
        public int compareTo(Piece other) {
            int byGuest = Integer.compare(guest, other.guest);
            return byGuest != 0 ? byGuest : Integer.compare(place, other.place);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Piece piece && compareTo(piece) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * guest + place;
        }
    }

    private record Share(Piece piece, int pieces) {}

    private Shop(List<Bench> benches, List<Guest> guests, Draws draws) {
        this.benches = benches;
        this.guests = guests;
        this.draws = draws;
        this.busy = new int[benches.size()];
        this.upMs = new long[guests.size()];
        benches.forEach(bench -> ready.add(new TreeSet<>()));
    }

    /**
     * When each guest's order was whole, milliseconds since 1970-01-01 UTC.
     *
     * @param guests in the order in which they come
     */
    static long[] run(List<Bench> benches, List<Guest> guests, Draws draws) {
        Shop shop = new Shop(benches, guests, draws);
        for (int guest = 0; guest < guests.size(); guest++) {
            shop.expect(guest);
        }
        for (int bench = 0; bench < benches.size(); bench++) {
            int place = bench;
            benches.get(bench).hands().forEach(s -> shop.at(s.fromMs(), () -> shop.take(place)));
        }
        while (!shop.due.isEmpty()) {
            Due next = shop.due.poll();
            shop.nowMs = next.atMs();
            next.what().run();
        }
        return shop.upMs;
    }

    private void at(long atMs, Runnable what) {
        due.add(new Due(atMs, ordinal++, what));
    }

    private void expect(int guest) {
        Guest coming = guests.get(guest);
        List<Piece> own = new ArrayList<>();
        for (int place = 0; place < coming.tasks().size(); place++) {
            Task task = coming.tasks().get(place);
            own.add(new Piece(guest, place, task, pieceMs(guest, place, task)));
        }
        pieces.add(own);
        upMs[guest] = coming.atMs();
        at(coming.atMs(), () -> come(own));
    }

    private double pieceMs(int guest, int place, Task task) {
        if (task.measured() || task.spread() == 0) {
            return task.pieceMs();
        }
        SplittableRandom random = draws.on(WORK, guests.get(guest).id() * 1_000L + place);
        return task.pieceMs() * Math.exp(task.spread() * Draws.normal(random));
    }

    private void come(List<Piece> own) {
        own.stream().filter(piece -> piece.waits == 0).forEach(this::offer);
        own.stream().map(piece -> piece.task.station()).distinct().forEach(this::take);
    }

    private void offer(Piece piece) {
        ready.get(piece.task.station()).add(piece);
    }

    private void take(int bench) {
        NavigableSet<Piece> waiting = ready.get(bench);
        while (!waiting.isEmpty() && busy[bench] < benches.get(bench).at(nowMs)) {
            begin(bench, waiting);
        }
    }

    /** A free hand takes the oldest that can be begun, and with it what fits. */
    private void begin(int bench, NavigableSet<Piece> waiting) {
        int load = benches.get(bench).load();
        boolean single = load == 1;
        int room = single ? RUN_PIECES : load;
        double workMs = 0;
        List<Share> taken = new ArrayList<>();
        for (Piece piece : waiting) {
            if (room > 0 && (taken.isEmpty() || piece.toTake <= room)) {
                int now = Math.min(piece.toTake, room);
                room = single ? 0 : room - now;
                workMs = Math.max(workMs, single ? piece.pieceMs * now : piece.pieceMs);
                piece.toTake -= now;
                taken.add(new Share(piece, now));
            }
            if (room == 0) {
                break;
            }
        }
        waiting.removeIf(piece -> piece.toTake == 0);
        busy[bench]++;
        at(nowMs + Math.max(1, Math.round(workMs)), () -> end(bench, taken));
    }

    private void end(int bench, List<Share> taken) {
        busy[bench]--;
        for (Share share : taken) {
            share.piece().toMake -= share.pieces();
            if (share.piece().toMake == 0) {
                up(share.piece());
            }
        }
        take(bench);
    }

    private void up(Piece piece) {
        upMs[piece.guest] = nowMs;
        for (Piece other : pieces.get(piece.guest)) {
            if (other.task.waitsFor().contains(piece.place)) {
                other.waits--;
                if (other.waits == 0) {
                    offer(other);
                    take(other.task.station());
                }
            }
        }
    }
}
