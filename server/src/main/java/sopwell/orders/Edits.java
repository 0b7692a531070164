package sopwell.orders;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;
import sopwell.menu.Menu;

/**
 * Fits an edited order onto the one that stands: a line that is still there keeps its number, its
 * price if it is made the same, and with the number its work in the kitchen. Stateless.
 */
final class Edits {
    private Edits() {}

    /** Numbers and prices the lines of a new order. */
    static List<OrderLine> fresh(Menu menu, List<Asked> asked) {
        return fit(menu, List.of(), 0, asked);
    }

    /** Numbers and prices the lines of an edited order, in the order asked for. */
    static List<OrderLine> fit(Menu menu, List<OrderLine> old, int linesEver, List<Asked> asked) {
        OrderLine[] kept = new OrderLine[asked.size()];
        List<OrderLine> left = new ArrayList<>(old);
        for (int i = 0; i < Math.min(kept.length, old.size()); i++) {
            if (isSame(asked.get(i), old.get(i))) {
                kept[i] = old.get(i);
                left.remove(old.get(i));
            }
        }
        pair(asked, kept, left, Edits::isSame);
        pair(asked, kept, left, Edits::sameMake);
        pair(asked, kept, left, (a, o) -> a.selection().item().equals(o.selection().item()));
        int next = linesEver;
        OrderLine[] fitted = new OrderLine[asked.size()];
        for (int i = 0; i < fitted.length; i++) {
            Asked line = asked.get(i);
            OrderLine before = kept[i];
            int number = before == null ? ++next : before.line();
            boolean priceStands = before != null && sameMake(line, before);
            fitted[i] =
                    priceStands
                            ? before.times(line.quantity())
                            : OrderLine.priced(menu, number, line);
        }
        return Arrays.asList(fitted);
    }

    private static boolean isSame(Asked asked, OrderLine old) {
        return sameMake(asked, old) && asked.quantity() == old.quantity();
    }

    private static boolean sameMake(Asked asked, OrderLine old) {
        return asked.selection().equals(old.selection());
    }

    private static void pair(
            List<Asked> asked,
            OrderLine[] kept,
            List<OrderLine> left,
            BiPredicate<Asked, OrderLine> alike) {
        for (int i = 0; i < kept.length; i++) {
            if (kept[i] != null) {
                continue;
            }
            for (OrderLine old : left) {
                if (alike.test(asked.get(i), old)) {
                    kept[i] = old;
                    left.remove(old);
                    break;
                }
            }
        }
    }
}
