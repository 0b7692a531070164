package sopwell.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What became of an order since somebody saw it. Immutable.
 *
 * @param seen the order as it was then
 * @param now the order as it is
 * @param lines what is different, in the order's order; lines taken off come last
 */
public record Meanwhile(Order seen, Order now, List<LineChange> lines) {
    public Meanwhile {
        lines = List.copyOf(lines);
    }

    /**
     * One line that is not as it was.
     *
     * @param number where it stands on the order now, from 1, or where it stood when it is gone
     * @param before what it was, or empty when it is new
     * @param after what it is, or empty when it is gone
     */
    public record LineChange(int number, Optional<OrderLine> before, Optional<OrderLine> after) {}

    /** The difference between two versions of an order. */
    public static Meanwhile between(Order seen, Order now) {
        List<LineChange> changes = new ArrayList<>();
        for (OrderLine line : now.lines()) {
            Optional<OrderLine> before = find(seen, line.line());
            if (before.isEmpty() || !before.get().equals(line)) {
                int number = now.lines().indexOf(line) + 1;
                changes.add(new LineChange(number, before, Optional.of(line)));
            }
        }
        for (OrderLine line : seen.lines()) {
            if (find(now, line.line()).isEmpty()) {
                int number = seen.lines().indexOf(line) + 1;
                changes.add(new LineChange(number, Optional.of(line), Optional.empty()));
            }
        }
        return new Meanwhile(seen, now, changes);
    }

    private static Optional<OrderLine> find(Order order, int number) {
        return order.lines().stream().filter(line -> line.line() == number).findFirst();
    }
}
