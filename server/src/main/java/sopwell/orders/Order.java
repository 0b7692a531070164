package sopwell.orders;

import java.util.List;
import sopwell.money.Discount;
import sopwell.money.Totals;

/**
 * An order of the open day. Immutable.
 *
 * @param id unique for ever: the date and a running number, {@code 20261125-0214}
 * @param version 1 when placed, one more with every change
 * @param linesEver the highest line number ever used on it
 * @param discount what is taken off it; the totals have it already
 * @param placedAtMs when it reached the stand, milliseconds since 1970-01-01 UTC
 * @param takenAtMs since when its guest waits: earlier than that when it was taken while the stand
 *     could not be asked
 * @param toldMenu the earlier menu whose prices stand on it, or empty
 * @param handedAtMs when it was handed, or 0
 * @param voidReason why it is void, or empty
 */
public record Order(
        String id,
        int number,
        String name,
        boolean toGo,
        int version,
        List<OrderLine> lines,
        int linesEver,
        Totals totals,
        Discount discount,
        Quote quote,
        String menuRevision,
        long placedAtMs,
        long takenAtMs,
        String toldMenu,
        long handedAtMs,
        String voidReason) {
    public Order {
        lines = List.copyOf(lines);
    }

    public boolean isVoid() {
        return !voidReason.isEmpty();
    }

    public boolean isHanded() {
        return handedAtMs != 0;
    }

    /** Whether its prices are those of an earlier menu, as its guest was told. */
    public boolean isAtToldPrice() {
        return !toldMenu.isEmpty();
    }

    /** Whether it was taken while the stand could not be asked. */
    public boolean isTakenBefore() {
        return takenAtMs < placedAtMs;
    }

    /** Whether it is a meal of one of the stand's own people. */
    public boolean isStaffMeal() {
        return !discount.isNone() && discount.kind() == Discount.Kind.STAFF_MEAL;
    }

    /** Whether the guest still waits for it. */
    public boolean isOpen() {
        return !isVoid() && !isHanded();
    }

    static Order placed(OrderEvent.OrderPlaced placed, long atMs) {
        return new Order(
                placed.order(),
                placed.number(),
                placed.name(),
                placed.toGo(),
                1,
                placed.lines(),
                linesEver(0, placed.lines()),
                placed.totals(),
                Discount.NONE,
                placed.quote(),
                placed.menuRevision(),
                atMs,
                atMs,
                "",
                0,
                "");
    }

    Order changed(OrderEvent.OrderChanged changed) {
        return new Order(
                id,
                number,
                changed.name(),
                changed.toGo(),
                changed.version(),
                changed.lines(),
                linesEver(linesEver, changed.lines()),
                changed.totals(),
                discount,
                quote,
                changed.menuRevision(),
                placedAtMs,
                takenAtMs,
                toldMenu,
                handedAtMs,
                voidReason);
    }

    Order discounted(OrderEvent.OrderDiscounted discounted) {
        return new Order(
                id,
                number,
                name,
                toGo,
                discounted.version(),
                lines,
                linesEver,
                discounted.totals(),
                discounted.discount(),
                quote,
                menuRevision,
                placedAtMs,
                takenAtMs,
                toldMenu,
                handedAtMs,
                voidReason);
    }

    Order voided(OrderEvent.OrderVoided voided) {
        return with(voided.version(), handedAtMs, voided.reason());
    }

    Order handed(long atMs) {
        return with(version, atMs, voidReason);
    }

    Order told(OrderEvent.OrderTold told) {
        return new Order(
                id,
                number,
                name,
                toGo,
                version,
                lines,
                linesEver,
                totals,
                discount,
                quote,
                menuRevision,
                placedAtMs,
                told.takenAtMs(),
                told.menuRevision(),
                handedAtMs,
                voidReason);
    }

    private Order with(int newVersion, long newHandedAtMs, String newVoidReason) {
        return new Order(
                id,
                number,
                name,
                toGo,
                newVersion,
                lines,
                linesEver,
                totals,
                discount,
                quote,
                menuRevision,
                placedAtMs,
                takenAtMs,
                toldMenu,
                newHandedAtMs,
                newVoidReason);
    }

    private static int linesEver(int before, List<OrderLine> lines) {
        return lines.stream().mapToInt(OrderLine::line).reduce(before, Math::max);
    }
}
