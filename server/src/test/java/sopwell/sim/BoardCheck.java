package sopwell.sim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.boards.Board;
import sopwell.boards.CounterBoard;
import sopwell.boards.PartRow;
import sopwell.boards.PassBoard;
import sopwell.boards.Row;
import sopwell.boards.StationBoard;
import sopwell.kitchen.PartId;
import sopwell.sim.OrderBook.TrueOrder;

/** Looks at what the boards show. Belongs to one thread; made anew when the boards are. */
final class BoardCheck {
    private final OrderBook orders;
    private final PartBook parts;
    private final Complaints complaints;
    private final Map<String, Map<String, Integer>> digits = new HashMap<>();

    BoardCheck(OrderBook orders, PartBook parts, Complaints complaints) {
        this.orders = orders;
        this.parts = parts;
        this.complaints = complaints;
    }

    void check(List<Board> boards) {
        Map<PartId, String> boardOf = new HashMap<>();
        for (Board board : boards) {
            if (board instanceof StationBoard station) {
                check(station, boardOf);
            } else if (board instanceof PassBoard pass) {
                List<String> open = orders.open().stream().map(order -> order.id).toList();
                list(open, pass, "the pass", Invariant.ORDER_BOARDS);
            } else if (board instanceof CounterBoard counter) {
                List<String> newest = new ArrayList<>();
                orders.open().forEach(order -> newest.add(0, order.id));
                list(newest, counter, "the counter", Invariant.ORDER_BOARDS);
            }
        }
    }

    private void check(StationBoard board, Map<PartId, String> boardOf) {
        Set<PartId> expected = parts.inSight(board.station());
        Set<PartId> shown = new HashSet<>();
        for (PartRow row : board.rows()) {
            PartId id = row.part();
            shown.add(id);
            String other = boardOf.put(id, board.station());
            complaints.that(other == null, Invariant.PARTS, "on two boards:", id);
        }
        complaints.that(expected.containsAll(shown), Invariant.PARTS, "shows what it should not:", board.station());
        complaints.same(expected.size(), shown.size() + board.below(), Invariant.PARTS, "the number of parts on", board.station());
        digits(board);
    }

    private void digits(StationBoard board) {
        Map<String, Integer> before = digits.getOrDefault(board.station(), Map.of());
        Map<String, Integer> now = new HashMap<>();
        Set<Integer> given = new HashSet<>();
        for (PartRow row : board.rows()) {
            if (row.digit() != 0) {
                complaints.that(given.add(row.digit())
                                && row.digit() >= 1
                                && row.digit() <= Limits.BOARD_DIGITS_MAX, Invariant.DIGITS, "digit", List.of(row.digit(), "twice on", board.station()));
                now.put(row.rowId(), row.digit());
            }
            Integer old = before.get(row.rowId());
            complaints.that(old == null || old == row.digit(), Invariant.DIGITS, "another digit than before:", row.rowId());
        }
        int due = Math.min(Limits.BOARD_DIGITS_MAX, board.rows().size());
        complaints.same(due, given.size(), Invariant.DIGITS, "digits on", board.station());
        digits.put(board.station(), now);
    }

    private void list(List<String> all, Board board, String what, Invariant invariant) {
        List<String> shown = board.rows().stream().map(Row::rowId).toList();
        List<String> due = all.subList(0, Math.min(Limits.BOARD_ROWS_MAX, all.size()));
        Set<String> open = new HashSet<>(all);
        complaints.same(due, shown.stream().filter(open::contains).toList(), invariant, "the list of", what);
        complaints.same(all.size() - due.size(), board.below(), invariant, "below on", what);
        for (String id : shown) {
            boolean handed = orders.find(id).filter(TrueOrder::handedOver).isPresent();
            complaints.that(open.contains(id) || handed, invariant, "", List.of(id, "is no row of", what));
        }
    }
}
