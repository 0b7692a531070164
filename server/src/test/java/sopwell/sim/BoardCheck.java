package sopwell.sim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.boards.Board;
import sopwell.boards.CounterBoard;
import sopwell.boards.PartRow;
import sopwell.boards.PassBoard;
import sopwell.boards.ReadyBoard;
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
    private final Map<String, List<String>> standing = new HashMap<>();

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
                check(pass);
            } else if (board instanceof CounterBoard counter) {
                List<String> newest = new ArrayList<>();
                orders.open().forEach(order -> newest.add(0, order.id));
                list(newest, counter.rows(), counter.below(), "the counter");
            } else if (board instanceof ReadyBoard ready) {
                check(ready);
            }
        }
    }

    private void check(StationBoard board, Map<PartId, String> boardOf) {
        Set<PartId> expected = parts.inSight(board.station());
        Set<PartId> shown = new HashSet<>();
        Map<String, Integer> keys = new LinkedHashMap<>();
        for (PartRow row : board.rows()) {
            keys.put(row.rowId(), row.digit());
            for (PartId id : row.parts()) {
                shown.add(id);
                String other = boardOf.put(id, board.station());
                complaints.that(other == null, Invariant.PARTS, "on two rows or boards:", id);
            }
            complaints.same(
                    row.parts().stream().mapToInt(parts::quantity).sum(),
                    row.quantity(),
                    Invariant.PARTS,
                    "pieces of row",
                    row.rowId());
        }
        boolean all = board.below() == 0 ? shown.equals(expected) : expected.containsAll(shown);
        complaints.that(all, Invariant.PARTS, "not the parts in sight on", board.station());
        digits(board.station(), keys);
        places(board.station(), List.copyOf(keys.keySet()));
    }

    private void check(PassBoard board) {
        List<String> missing = new ArrayList<>();
        Set<String> whole = new HashSet<>();
        for (TrueOrder order : orders.open()) {
            if (parts.isWhole(order.id)) {
                whole.add(order.id);
            } else {
                missing.add(order.id);
            }
        }
        list(missing, board.open(), board.below(), "the pass");
        Map<String, Integer> keys = new LinkedHashMap<>();
        board.whole().forEach(row -> keys.put(row.order(), row.digit()));
        complaints.that(
                whole.containsAll(keys.keySet()), Invariant.WHOLE, "on the pass as whole:", keys);
        complaints.same(
                whole.size(),
                keys.size() + board.wholeBelow(),
                Invariant.WHOLE,
                "whole orders on",
                "the pass");
        digits("pass", keys);
        for (Row row : board.handed()) {
            complaints.that(
                    orders.find(row.rowId()).filter(TrueOrder::handedOver).isPresent(),
                    Invariant.ORDER_BOARDS,
                    "as handed on the pass:",
                    row.rowId());
        }
    }

    private void check(ReadyBoard board) {
        Set<Integer> whole = new HashSet<>();
        orders.open().stream()
                .filter(order -> parts.isWhole(order.id))
                .forEach(order -> whole.add(order.number));
        Set<Integer> shown = new HashSet<>();
        board.rows().forEach(row -> shown.add(row.number()));
        complaints.that(whole.containsAll(shown), Invariant.WHOLE, "shown to guests:", shown);
        complaints.same(
                whole.size(),
                board.rows().size() + board.below(),
                Invariant.WHOLE,
                "numbers shown to",
                "guests");
    }

    private void digits(String board, Map<String, Integer> keys) {
        Map<String, Integer> before = digits.getOrDefault(board, Map.of());
        Set<Integer> given = new HashSet<>();
        keys.forEach(
                (row, digit) -> {
                    boolean right = digit >= 0 && digit <= Limits.BOARD_DIGITS_MAX;
                    complaints.that(
                            right && (digit == 0 || given.add(digit)),
                            Invariant.DIGITS,
                            "a digit twice on " + board + ":",
                            digit);
                    int old = before.getOrDefault(row, 0);
                    complaints.that(
                            old == 0 || old == digit,
                            Invariant.DIGITS,
                            "another digit than before:",
                            row);
                });
        int due = Math.min(Limits.BOARD_DIGITS_MAX, keys.size());
        complaints.same(due, given.size(), Invariant.DIGITS, "digits on", board);
        digits.put(board, Map.copyOf(keys));
    }

    /** Rows that stay stand as they stood to each other. */
    private void places(String board, List<String> rows) {
        List<String> stayed = new ArrayList<>(standing.getOrDefault(board, List.of()));
        stayed.retainAll(rows);
        List<String> now = new ArrayList<>(rows);
        now.retainAll(stayed);
        complaints.same(stayed, now, Invariant.PLACES, "the order of rows on", board);
        standing.put(board, rows);
    }

    private void list(List<String> all, List<? extends Row> rows, int below, String what) {
        List<String> shown = rows.stream().map(Row::rowId).toList();
        List<String> due = all.subList(0, Math.min(Limits.BOARD_ROWS_MAX, all.size()));
        complaints.same(due, shown, Invariant.ORDER_BOARDS, "the list of", what);
        complaints.same(all.size() - due.size(), below, Invariant.ORDER_BOARDS, "below on", what);
    }
}
