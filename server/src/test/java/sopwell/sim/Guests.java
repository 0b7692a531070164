package sopwell.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.desk.StandCommand;
import sopwell.menu.Menu;
import sopwell.money.Discount;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;
import sopwell.orders.Told;

/** What guests and the counter do: order, change their minds, leave. Stateless but for chance. */
final class Guests {
    private static final List<String> CALLS =
            List.of(
                    "beef dipped hot",
                    "2 beef dipped hot, fries",
                    "beef dry provolone sweet, fries, cola",
                    "combo wet both",
                    "sausage hot, jus cup",
                    "3 hot dogs, 2 fries",
                    "large beef twice extra, cola",
                    "beef dry no hot",
                    "small beef easy mozzarella",
                    "jus bread, fries",
                    "5 cola",
                    "2 combo dipped hot, 2 fries, 2 cola",
                    "pepper and egg");
    private static final List<String> NAMES = List.of("", "", "Ines", "Theo", "Ama");
    private static final List<String> REASONS =
            List.of("left", "guest changed their mind", "", " ");

    private final World world;

    Guests(World world) {
        this.world = world;
    }

    StandCommand place() {
        return lines(world.shown().menu())
                .map(lines -> place(lines, Optional.empty()))
                .orElse(null);
    }

    /** A call with a letter lost, as it is mistyped: read it can be only sometimes. */
    StandCommand mistype() {
        String call = world.any(CALLS);
        int at = world.random.nextInt(call.length());
        return world.read(world.shown().menu(), call.substring(0, at) + call.substring(at + 1))
                .map(lines -> place(lines, Optional.empty()))
                .orElse(null);
    }

    /** An order taken a while ago, by a menu of then, and a price that is right or not. */
    StandCommand told() {
        Menu menu = world.any(world.menus.all());
        Optional<List<Asked>> lines = lines(menu);
        if (lines.isEmpty() || !isKnown(menu)) {
            return null;
        }
        List<OrderLine> priced = new ArrayList<>();
        lines.get().forEach(asked -> priced.add(OrderLine.priced(menu, priced.size() + 1, asked)));
        long cents =
                OrderRules.totals(priced, Discount.NONE, world.shown().settings().tax())
                        .totalCents();
        long atMs = world.clock.millis() - world.random.nextInt(3_600_000);
        long toldCents = world.oneIn(5) ? cents + 1 : cents;
        return place(lines.get(), Optional.of(new Told(menu, toldCents, atMs)));
    }

    /** A price can have been told only by a menu that was in force. */
    private boolean isKnown(Menu menu) {
        return menu.revision().equals(world.shown().menu().revision())
                || menu.equals(world.menus.first());
    }

    private Optional<List<Asked>> lines(Menu menu) {
        return world.read(menu, world.any(CALLS));
    }

    private StandCommand place(List<Asked> lines, Optional<Told> told) {
        return new StandCommand.ForOrders(
                new OrderCommand.Place(world.any(NAMES), world.random.nextBoolean(), lines, told));
    }

    /** The whole order anew, or a line more, less, or so many more of it. */
    StandCommand change() {
        Order order = world.order().orElse(null);
        if (order == null) {
            return null;
        }
        List<Asked> lines = new ArrayList<>();
        order.lines().forEach(line -> lines.add(new Asked(line.quantity(), line.selection())));
        int at = world.random.nextInt(lines.size());
        switch (world.random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 ->
                    lines.set(
                            at, new Asked(lines.get(at).quantity() + 1, lines.get(at).selection()));
            case 2 -> lines(world.shown().menu()).ifPresent(lines::addAll);
            default ->
                    lines(world.shown().menu())
                            .ifPresent(
                                    other -> {
                                        lines.clear();
                                        lines.addAll(other);
                                    });
        }
        int version = world.oneIn(10) ? order.version() - 1 : order.version();
        return new StandCommand.ForOrders(
                new OrderCommand.Change(
                        order.id(),
                        version,
                        order.name(),
                        world.oneIn(10) != order.toGo(),
                        lines,
                        "guest changed their mind"));
    }

    StandCommand voidOrder() {
        return world.order()
                .map(
                        order ->
                                new StandCommand.ForOrders(
                                        new OrderCommand.VoidOrder(
                                                order.id(), 0, world.any(REASONS))))
                .orElse(null);
    }

    StandCommand discount() {
        Discount discount =
                switch (world.random.nextInt(3)) {
                    case 0 -> Discount.NONE;
                    case 1 ->
                            new Discount(
                                    Discount.Kind.GUEST,
                                    1 + world.random.nextInt(300),
                                    0,
                                    world.any(REASONS));
                    default ->
                            new Discount(
                                    Discount.Kind.STAFF_MEAL,
                                    0,
                                    1 + world.random.nextInt(Discount.MILLI_PERCENT_ALL),
                                    "meal");
                };
        return world.order()
                .map(
                        order ->
                                new StandCommand.ForOrders(
                                        new OrderCommand.SetDiscount(order.id(), 0, discount)))
                .orElse(null);
    }
}
