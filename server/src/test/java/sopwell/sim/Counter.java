package sopwell.sim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.menu.Item;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;
import sopwell.orders.PaperCommand;
import sopwell.orders.Papers;
import sopwell.stock.recipes.RecipeBook;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/** What the counter does with money, papers, outs and the day itself. Stateless but for chance. */
final class Counter {
    private static final List<String> CASHIERS = List.of("", "", "Ines", "ines", "Theo");

    private static final List<RecipeBook> BOOKS = Script.demoRecipes();

    private final World world;

    Counter(World world) {
        this.world = world;
    }

    StandCommand pay() {
        return world.order()
                .map(
                        order ->
                                till(
                                        new TillCommand.Pay(
                                                order.id(),
                                                world.any(CASHIERS),
                                                means(),
                                                world.oneIn(4) ? world.random.nextInt(600) : 0,
                                                world.oneIn(2)
                                                        ? 100L * world.random.nextInt(60)
                                                        : 0,
                                                world.oneIn(6)
                                                        ? 10L * world.random.nextInt(20)
                                                        : 0)))
                .orElse(null);
    }

    StandCommand refund() {
        return world.some(world.shown().orders().all())
                .map(
                        order ->
                                till(
                                        new TillCommand.Refund(
                                                order.id(),
                                                world.any(CASHIERS),
                                                means(),
                                                world.oneIn(2) ? world.random.nextInt(400) : 0,
                                                world.oneIn(4),
                                                world.oneIn(5) ? "" : "cold")))
                .orElse(null);
    }

    StandCommand openTill() {
        return till(new TillCommand.OpenTill(world.any(CASHIERS), 100L * world.random.nextInt(90)));
    }

    StandCommand move() {
        long cents = 5L * world.random.nextInt(200);
        return till(
                world.oneIn(2)
                        ? new TillCommand.PayIn(world.any(CASHIERS), cents, "change")
                        : new TillCommand.PayOut(world.any(CASHIERS), cents, "bread"));
    }

    /** Mostly counted right. */
    StandCommand closeTill() {
        Drawer drawer = world.some(world.shown().till().open()).orElse(null);
        if (drawer == null) {
            return null;
        }
        List<TillCommand.Pieces> counts = new ArrayList<>();
        world.shown()
                .settings()
                .cash()
                .units()
                .change(Math.max(0, drawer.expectedCents()))
                .forEach(c -> counts.add(new TillCommand.Pieces(c.unit().cents(), c.pieces())));
        if (world.oneIn(3)) {
            counts.add(new TillCommand.Pieces(100, world.random.nextInt(3)));
        }
        return till(new TillCommand.CloseTill(drawer.cashier(), counts));
    }

    StandCommand print() {
        String paper = world.oneIn(2) ? Papers.SLIP : world.oneIn(9) ? "nowhere" : world.station();
        return world.some(world.shown().orders().all())
                .map(
                        order ->
                                (StandCommand)
                                        new StandCommand.ForPaper(
                                                new PaperCommand(order.id(), paper)))
                .orElse(null);
    }

    StandCommand mark() {
        int left = world.oneIn(2) ? 0 : world.random.nextInt(6);
        int minutes = world.oneIn(2) ? 0 : 1 + world.random.nextInt(30);
        return outs(new OutCommand.Mark(out(), left, minutes));
    }

    StandCommand lift() {
        List<Out> marked = world.shown().outs().all().stream().map(Shortage::out).toList();
        return outs(new OutCommand.Lift(marked.isEmpty() ? out() : world.any(marked)));
    }

    StandCommand liftDue() {
        return outs(new OutCommand.LiftDue());
    }

    StandCommand adopt() {
        return new StandCommand.AdoptMenu(world.any(world.menus.all()));
    }

    /** A book that follows what is in force, or what somebody saw a while ago. */
    StandCommand adoptRecipes() {
        String expected =
                world.oneIn(4) ? world.any(BOOKS).revision() : world.shown().recipes().revision();
        return new StandCommand.AdoptRecipes(world.any(BOOKS), expected);
    }

    StandCommand openDay() {
        return new StandCommand.ForOrders(new OrderCommand.OpenDay());
    }

    StandCommand closeDay() {
        return new StandCommand.ForOrders(new OrderCommand.CloseDay());
    }

    StandCommand reopenDay() {
        LocalDate date = world.shown().orders().date().orElse(LocalDate.EPOCH);
        String reason = world.oneIn(4) ? "" : "a party came late";
        return new StandCommand.ForOrders(
                new OrderCommand.ReopenDay(
                        Optional.of(world.oneIn(5) ? date.minusDays(1) : date), reason));
    }

    StandCommand cutDay() {
        return new StandCommand.ForOrders(new OrderCommand.CutDay());
    }

    private Out out() {
        Item item = world.any(world.shown().menu().items());
        return switch (world.random.nextInt(3)) {
            case 0 -> Out.option("hot");
            case 1 ->
                    item.sizes().isEmpty()
                            ? Out.item(item.id())
                            : Out.size(item.id(), world.any(item.sizes()).id());
            default -> Out.item(item.id());
        };
    }

    private Means means() {
        return world.oneIn(3) ? Means.CARD : Means.CASH;
    }

    private static StandCommand till(TillCommand command) {
        return new StandCommand.ForTill(command);
    }

    private static StandCommand outs(OutCommand command) {
        return new StandCommand.ForOuts(command);
    }
}
