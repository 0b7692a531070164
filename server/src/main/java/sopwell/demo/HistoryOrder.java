package sopwell.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForQueries;
import sopwell.desk.StandCommand.ForTill;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.KitchenCommand.Move;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.kitchen.Router;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Station;
import sopwell.money.CashRule;
import sopwell.money.Discount;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderLine;
import sopwell.till.Means;
import sopwell.till.TillCommand;

/** What comes of an invented order: who makes it when, and what goes wrong. Not thread-safe. */
final class HistoryOrder {
    private static final long TIP_CENTS = 100;

    private final HistoryShift shift;
    private final HistoryGuests guests;
    private final SplittableRandom random;
    private final HistoryHands hands;
    private final Set<String> unpaid = new HashSet<>();

    HistoryOrder(
            HistoryShift shift, HistoryGuests guests, SplittableRandom random, HistoryHands hands) {
        this.shift = shift;
        this.guests = guests;
        this.random = random;
        this.hands = hands;
    }

    /** Plans all that follows an order, up to its guest's going. */
    void plan(OrderPlaced placed) {
        String order = placed.order();
        long nowMs = shift.nowMs();
        long wholeMs = nowMs;
        for (OrderLine line : placed.lines()) {
            wholeMs = Math.max(wholeMs, make(order, line));
        }
        int die = random.nextInt(1_000);
        if (die < 12) {
            unpaid.add(order);
            shift.step(nowMs + shift.between(40_000, 240_000), () -> leave(order));
            return;
        }
        if (die < 45) {
            shift.step(nowMs + shift.between(20_000, 90_000), () -> change(order));
        } else if (die < 57) {
            shift.step(wholeMs - 1, () -> ask(order));
        } else if (die < 66) {
            shift.step(wholeMs + 2_000, () -> remake(order));
            wholeMs += 90_000;
        } else if (die < 69) {
            shift.step(nowMs + 1_000, () -> giveToStaff(order));
        }
        if (random.nextInt(12) > 0) {
            shift.step(nowMs + shift.between(4_000, 14_000), () -> pay(order));
        } else {
            unpaid.add(order);
        }
        shift.step(wholeMs + shift.between(10_000, 70_000), () -> hand(order));
    }

    /** Gives work to hands, and says when the line is whole. */
    private long make(String order, OrderLine line) {
        Menu menu = shift.menu();
        long readyMs = shift.nowMs() + shift.between(8_000, 30_000);
        long inHandMs = readyMs;
        long wholeMs = readyMs;
        for (String station : feedsFirst(menu, line.selection())) {
            PartId part = new PartId(order, line.line(), station);
            Station at = menu.station(station);
            boolean waits = !Router.waitsFor(menu, line.selection(), station).isEmpty();
            double pace = 0.8 + 0.6 * random.nextDouble();
            double seconds = Router.seconds(menu, line.selection(), station) * pace;
            long workMs = (long) (seconds * 1000 * (at.load() > 1 ? 1 : line.quantity()));
            long startMs = hands.begin(station, waits ? inHandMs : readyMs, workMs);
            long upMs = startMs + workMs;
            if (isTapped(at)) {
                shift.step(startMs, () -> kitchen(new KitchenCommand.Start(part)));
            }
            shift.step(upMs, () -> kitchen(new KitchenCommand.Up(part)));
            inHandMs = Math.max(inHandMs, upMs);
            wholeMs = Math.max(wholeMs, upMs);
        }
        return wholeMs;
    }

    /** Whether a start is tapped: mostly where sandwiches are built, never at the drinks. */
    private boolean isTapped(Station station) {
        boolean mostly = random.nextInt(5) > 0;
        return station.builds() ? mostly : mostly && station.load() > 1 && random.nextBoolean();
    }

    /** The stations of a selection: those that others wait for come first. */
    static List<String> feedsFirst(Menu menu, Selection selection) {
        List<String> stations = new ArrayList<>(Router.stations(menu, selection));
        stations.sort(Comparator.comparingInt(s -> Router.waitsFor(menu, selection, s).size()));
        return stations;
    }

    private void kitchen(KitchenCommand command) {
        shift.submit(new ForKitchen(command));
    }

    private void leave(String order) {
        String reason = random.nextInt(3) == 0 ? "wrong" : "gone";
        shift.submit(new ForOrders(new OrderCommand.VoidOrder(order, 0, reason)));
        see(order);
    }

    private void change(String id) {
        Order order = shift.desk().stand().orders().find(id).orElseThrow();
        List<Asked> lines = new ArrayList<>();
        order.lines().forEach(line -> lines.add(new Asked(line.quantity(), line.selection())));
        lines.set(0, guests.otherwise(lines.get(0)));
        shift.submit(
                new ForOrders(
                        new OrderCommand.Change(
                                id,
                                order.version(),
                                order.name(),
                                order.toGo(),
                                lines,
                                "guest changed their mind")));
        shift.step(shift.nowMs() + 12_000, () -> see(id));
    }

    private void see(String order) {
        List<PartId> unseen =
                shift.desk().stand().kitchen().parts(order).stream()
                        .filter(Part::isUnseen)
                        .map(Part::id)
                        .toList();
        if (!unseen.isEmpty()) {
            kitchen(new KitchenCommand.Together(Move.SEEN, unseen));
        }
    }

    private void ask(String order) {
        undone(order)
                .ifPresent(
                        part -> {
                            Question question = new Question(List.of(), "really like that?");
                            shift.submit(new ForQueries(new QueryCommand.Ask(part, question)));
                            QueryCommand.Answer answer =
                                    new QueryCommand.Answer(
                                            new QueryId(part, 1), Optional.empty(), "yes");
                            shift.step(
                                    shift.nowMs() + shift.between(5_000, 40_000),
                                    () -> shift.submit(new ForQueries(answer)));
                        });
    }

    private Optional<PartId> undone(String order) {
        return shift.desk().stand().kitchen().parts(order).stream()
                .filter(part -> !part.isDone() && !part.cancelled())
                .map(Part::id)
                .findFirst();
    }

    private void remake(String order) {
        List<RemakeReason> reasons = List.of(RemakeReason.DROPPED, RemakeReason.WRONG);
        shift.desk().stand().kitchen().parts(order).stream()
                .filter(part -> part.isDone() && part.id().station().equals("line"))
                .findFirst()
                .ifPresent(
                        part ->
                                kitchen(
                                        new KitchenCommand.Remake(
                                                List.of(part.id()),
                                                1,
                                                reasons.get(random.nextInt(reasons.size())),
                                                "")));
    }

    private void giveToStaff(String order) {
        Discount meal =
                new Discount(Discount.Kind.STAFF_MEAL, 0, Discount.MILLI_PERCENT_ALL, "own meal");
        shift.submit(new ForOrders(new OrderCommand.SetDiscount(order, 0, meal)));
    }

    private void pay(String id) {
        Stand stand = shift.desk().stand();
        Order order = stand.orders().find(id).orElseThrow();
        long dueCents = stand.till().dueCents(order);
        if (dueCents <= 0) {
            return;
        }
        long tipCents = random.nextInt(4) == 0 ? TIP_CENTS : 0;
        boolean card = random.nextInt(20) < 11;
        long tendered = card ? 0 : tendered(dueCents + tipCents, stand.settings().cash());
        Means means = card ? Means.CARD : Means.CASH;
        shift.submit(
                new ForTill(
                        new TillCommand.Pay(id, shift.cashier(), means, 0, tendered, tipCents)));
    }

    private long tendered(long cents, CashRule cash) {
        List<Long> tenders = cash.units().tendersCents(cash.rounding().roundCents(cents));
        return tenders.isEmpty() ? 0 : tenders.get(random.nextInt(tenders.size()));
    }

    /** Hands it over; what was not said to be up until now is up by now. */
    void hand(String id) {
        Stand stand = shift.desk().stand();
        if (stand.orders().find(id).filter(order -> order.isOpen()).isEmpty()) {
            return;
        }
        see(id);
        List<Part> parts = new ArrayList<>(stand.kitchen().parts(id));
        parts.sort(Comparator.comparingInt(part -> stand.kitchen().feeding(part).size()));
        for (Part part : parts) {
            if (!part.isDone() && !part.cancelled()) {
                kitchen(new KitchenCommand.Up(part.id()));
            }
        }
        if (unpaid.remove(id)) {
            pay(id);
        }
        shift.submit(new ForOrders(new OrderCommand.Hand(id)));
    }
}
