package sopwell.sim;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sopwell.boards.PartRow;
import sopwell.boards.Row;
import sopwell.desk.StandCommand;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.Query;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.kitchen.StationCommand;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.stock.PanCommand;

/**
 * What the hands in the kitchen and at the pass do, by what their screens show, which may be old:
 * so they press what is done already, or the row beside it. Stateless but for chance.
 */
final class Hands {
    private static final List<List<String>> ASKED =
            List.of(
                    List.of(),
                    List.of("dipped", "dry"),
                    List.of("hot", "sweet"),
                    List.of("provolone"),
                    List.of("no-such"));

    private final World world;

    Hands(World world) {
        this.world = world;
    }

    StandCommand start() {
        return press(KitchenCommand.Move.START, KitchenCommand.Start::new);
    }

    StandCommand up() {
        return press(KitchenCommand.Move.UP, KitchenCommand.Up::new);
    }

    StandCommand seen() {
        return press(KitchenCommand.Move.SEEN, KitchenCommand.Seen::new);
    }

    /** A press on a row: on all that is joined in it, or as a program does it on its first part. */
    private StandCommand press(KitchenCommand.Move move, Function<PartId, KitchenCommand> one) {
        List<PartId> parts = pressed();
        if (parts.isEmpty()) {
            return null;
        }
        boolean together = parts.size() > 1 && !world.oneIn(5);
        return kitchen(
                together ? new KitchenCommand.Together(move, parts) : one.apply(parts.get(0)));
    }

    /** What a row waits for is in hand. */
    StandCommand have() {
        List<PartId> parts = pressed();
        return parts.isEmpty()
                ? null
                : kitchen(new KitchenCommand.Together(KitchenCommand.Move.HAVE, parts));
    }

    /** Something fell, or is cold: of a row, or of an order at the pass or handed already. */
    StandCommand remake() {
        List<PartId> parts =
                world.oneIn(2)
                        ? pressed()
                        : world.order()
                                .flatMap(o -> world.some(world.shown().kitchen().parts(o.id())))
                                .map(part -> List.of(part.id()))
                                .orElse(List.of());
        RemakeReason reason = world.any(List.of(RemakeReason.values()));
        int pieces = 1 + world.random.nextInt(2);
        return parts.isEmpty()
                ? null
                : kitchen(new KitchenCommand.Remake(parts, pieces, reason, ""));
    }

    /** A pan is full again, or not quite; now and then nonsense. */
    StandCommand refill() {
        return world.some(world.shown().menu().pans())
                .map(
                        pan ->
                                (StandCommand)
                                        new StandCommand.ForPans(
                                                new PanCommand.Refill(
                                                        pan.id(), 5 * world.random.nextInt(22))))
                .orElse(null);
    }

    /** So many hands are on duty; now and then more than there can be. */
    StandCommand setHands() {
        return new StandCommand.ForStations(
                new StationCommand.SetHands(world.station(), world.random.nextInt(22)));
    }

    StandCommand call() {
        return world.order()
                .map(
                        order ->
                                (StandCommand)
                                        new StandCommand.ForPass(
                                                new PassCommand.CallNumber(order.id())))
                .orElse(null);
    }

    StandCommand countBags() {
        return world.order()
                .map(
                        order ->
                                (StandCommand)
                                        new StandCommand.ForPass(
                                                new PassCommand.CountBags(
                                                        order.id(), world.random.nextInt(4))))
                .orElse(null);
    }

    StandCommand bringBack() {
        if (world.oneIn(2)) {
            return kitchen(new KitchenCommand.BringBackLast(world.station()));
        }
        return world.order()
                .flatMap(order -> world.some(world.shown().kitchen().parts(order.id())))
                .map(part -> kitchen(new KitchenCommand.BringBack(part.id())))
                .orElse(null);
    }

    /** An order that is up, or now and then one that is not. */
    StandCommand hand() {
        Optional<Order> up =
                world.some(
                        world.shown().orders().open().stream()
                                .filter(
                                        order ->
                                                world.shown().kitchen().stage(order)
                                                        == OrderStage.UP)
                                .toList());
        Optional<Order> order = world.oneIn(10) ? world.order() : up;
        return order.map(
                        one ->
                                (StandCommand)
                                        new StandCommand.ForOrders(new OrderCommand.Hand(one.id())))
                .orElse(null);
    }

    StandCommand handBack() {
        return world.some(world.shown().orders().all())
                .map(
                        one ->
                                (StandCommand)
                                        new StandCommand.ForOrders(
                                                new OrderCommand.BringBack(one.id())))
                .orElse(null);
    }

    StandCommand ask() {
        String text = world.oneIn(3) ? "which?" : "";
        return world.some(pressed())
                .map(part -> new QueryCommand.Ask(part, new Question(world.any(ASKED), text)))
                .map(StandCommand.ForQueries::new)
                .orElse(null);
    }

    StandCommand answer() {
        List<QueryId> ids =
                world.oneIn(6)
                        ? world.shown().kitchen().queries().all().stream().map(Query::id).toList()
                        : world.shown().kitchen().queries().open().stream().map(Query::id).toList();
        Optional<List<String>> options =
                switch (world.random.nextInt(4)) {
                    case 0 -> Optional.of(List.of("dipped"));
                    case 1 -> Optional.of(List.of("hot"));
                    default -> Optional.empty();
                };
        return ids.isEmpty()
                ? null
                : new StandCommand.ForQueries(new QueryCommand.Answer(world.any(ids), options, ""));
    }

    private StandCommand kitchen(KitchenCommand command) {
        return new StandCommand.ForKitchen(command);
    }

    /** A row of some station's screen; a part of a day long gone once in a while. */
    private List<PartId> pressed() {
        if (world.oneIn(200)) {
            return List.of(new PartId("20200101-0001", 1, "line"));
        }
        Optional<Row> row = world.rowOn(world.station());
        return row.map(one -> ((PartRow) one).parts()).orElse(List.of());
    }
}
