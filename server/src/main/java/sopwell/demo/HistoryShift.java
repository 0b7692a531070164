package sopwell.demo;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import sopwell.desk.BulkDesk;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForOuts;
import sopwell.desk.StandCommand.ForPans;
import sopwell.desk.StandCommand.ForStations;
import sopwell.desk.StandCommand.ForTill;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.StationCommand;
import sopwell.log.Event;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.menu.Pan;
import sopwell.menu.Station;
import sopwell.money.CashCount;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OutCommand;
import sopwell.stock.PanCommand;
import sopwell.till.Drawer;
import sopwell.till.TillCommand;

/** Plays one invented day, from the opening of the till to its closing. Not thread-safe. */
final class HistoryShift {
    /** Guests by half hours from half past ten on: a hard lunch, and a smaller evening. */
    private static final double[] GUESTS = {
        2.0, 4.5, 8.5, 11.5, 11.0, 8.5, 6.5, 4.5, 3.5, 3.0, 2.8, 3.0, 3.6, 5.2, 6.0, 5.4, 4.2, 3.0,
        1.8
    };

    private static final LocalTime OPENS = LocalTime.of(10, 30);
    private static final long HALF_HOUR_MS = 1_800_000;
    private static final long REFILL_MS = 4_500_000;
    private static final long FLOAT_CENTS = 15_000;
    private static final int FULL = 100;

    /** A sandwich takes a hand on the line so long, with a little to spare, in seconds. */
    private static final double SANDWICH_SECONDS = 52;

    private final BulkDesk desk;
    private final Menu menu;
    private final HistoryGuests guests;
    private final HistoryDay day;
    private final SplittableRandom random;
    private final DemoCalls names;
    private final HistoryOrder plans;
    private final PriorityQueue<Step> steps = new PriorityQueue<>();
    private final String cashier;
    private final long openMs;
    private long keys;
    private long nowMs;

    /** What is done when its time has come. */
    interface Act {
        void run();
    }

    private record Step(long atMs, long place, Act act) implements Comparable<Step> {
        @Override
        public int compareTo(Step other) {
            return atMs != other.atMs
                    ? Long.compare(atMs, other.atMs)
                    : Long.compare(place, other.place);
        }
    }

    HistoryShift(BulkDesk desk, HistoryGuests guests, DemoCalls names, HistoryDay day, long seed) {
        this.desk = desk;
        this.menu = desk.stand().menu();
        this.guests = guests;
        this.names = names;
        this.day = day;
        this.random = new SplittableRandom(seed * 31 + day.date().toEpochDay());
        this.cashier = day.date().getDayOfYear() % 2 == 0 ? "Ines" : "Theo";
        ZoneId zone = desk.stand().settings().zone();
        this.openMs = day.date().atTime(OPENS).atZone(zone).toInstant().toEpochMilli();
        this.plans = new HistoryOrder(this, guests, random, new HistoryHands(menu, building()));
        this.nowMs = openMs - between(600_000, 900_000);
    }

    /** Plays it. */
    void play() {
        open();
        double[] atMs = new double[day.orders()];
        double sum = Arrays.stream(GUESTS).sum();
        for (int guest = 0; guest < atMs.length; guest++) {
            double die = random.nextDouble() * sum;
            int half = 0;
            for (; half < GUESTS.length - 1 && die >= GUESTS[half]; half++) {
                die -= GUESTS[half];
            }
            atMs[guest] = openMs + (half + random.nextDouble()) * HALF_HOUR_MS;
        }
        Arrays.stream(atMs).forEach(arrival -> step((long) arrival, this::arrive));
        day.shortage()
                .ifPresent(
                        shortage -> {
                            long seconds =
                                    (long) shortage.at().toSecondOfDay() - OPENS.toSecondOfDay();
                            step(openMs + seconds * 1_000, () -> runOut(shortage));
                        });
        while (!steps.isEmpty()) {
            Step next = steps.poll();
            nowMs = Math.max(nowMs, next.atMs());
            next.act().run();
        }
        close();
    }

    BulkDesk desk() {
        return desk;
    }

    Menu menu() {
        return menu;
    }

    String cashier() {
        return cashier;
    }

    long nowMs() {
        return nowMs;
    }

    void step(long atMs, Act act) {
        keys++;
        steps.add(new Step(atMs, keys, act));
    }

    /** Keys and fingerprints as long as those of the stand's own pages. */
    Decision submit(StandCommand command) {
        keys++;
        String key = String.format(Locale.ROOT, "history-%s-%013d", day.date(), keys);
        String fingerprint = hex(random.nextLong()) + hex(random.nextLong());
        return desk.submit(nowMs, key, fingerprint, command);
    }

    long between(long fromMs, long toMs) {
        return fromMs + random.nextLong(toMs - fromMs);
    }

    private static String hex(long number) {
        return String.format(Locale.ROOT, "%016x", number);
    }

    private void open() {
        submit(new ForTill(new TillCommand.OpenTill(cashier, FLOAT_CENTS)));
        for (Station station : menu.stations()) {
            if (station.builds() && station.hands() != building()) {
                submit(new ForStations(new StationCommand.SetHands(station.id(), building())));
            }
        }
        long closesMs = openMs + GUESTS.length * HALF_HOUR_MS;
        for (Pan pan : menu.pans()) {
            for (long atMs = nowMs; atMs < closesMs; atMs += REFILL_MS + between(0, 600_000)) {
                step(atMs, () -> submit(new ForPans(new PanCommand.Refill(pan.id(), FULL))));
            }
        }
    }

    /** As many as the fullest hour needs. */
    private int building() {
        double sum = Arrays.stream(GUESTS).sum();
        double hour = (GUESTS[3] + GUESTS[4]) / sum * day.orders();
        double sandwiches = hour * HistoryCalendar.SANDWICHES_PER_ORDER;
        return (int) Math.max(2, Math.min(8, Math.ceil(sandwiches * SANDWICH_SECONDS / 3_600)));
    }

    private void arrive() {
        boolean friday = day.date().getDayOfWeek() == DayOfWeek.FRIDAY;
        List<Out> outs = new ArrayList<>();
        desk.stand().outs().all().stream()
                .filter(shortage -> shortage.holds(nowMs))
                .forEach(shortage -> outs.add(shortage.out()));
        String name = random.nextInt(5) < 2 ? names.anyName(random) : "";
        boolean toGo = random.nextInt(10) < (day.rain() ? 9 : 7);
        Decision decision =
                submit(
                        new ForOrders(
                                new OrderCommand.Place(
                                        name, toGo, guests.lines(random, day, friday, outs))));
        for (Event event : decision.events()) {
            if (event instanceof OrderPlaced placed) {
                plans.plan(placed);
            }
        }
    }

    private void runOut(HistoryDay.Shortage shortage) {
        submit(new ForOuts(new OutCommand.Mark(shortage.out(), 0, shortage.minutes())));
        if (shortage.minutes() > 0) {
            step(
                    nowMs + shortage.minutes() * 60_000L + 5_000,
                    () -> submit(new ForOuts(new OutCommand.LiftDue())));
        }
    }

    /** What the guests left is seen to; then the till is counted, now and then a little off. */
    private void close() {
        nowMs += between(900_000, 1_500_000);
        for (Station station : menu.stations()) {
            List<PartId> left =
                    desk.stand().kitchen().inSight(station.id()).stream().map(Part::id).toList();
            if (!left.isEmpty()) {
                submit(new ForKitchen(new KitchenCommand.Together(KitchenCommand.Move.SEEN, left)));
            }
        }
        for (Order order : List.copyOf(desk.stand().orders().open())) {
            plans.hand(order.id());
        }
        nowMs += between(60_000, 300_000);
        for (Drawer drawer : desk.stand().till().open()) {
            int die = random.nextInt(20);
            long off = die == 0 ? -100 : die == 1 ? 25 : die < 5 ? random.nextInt(-10, 10) : 0;
            long counted = Math.max(0, drawer.expectedCents() + off);
            List<TillCommand.Pieces> pieces = new ArrayList<>();
            for (CashCount count : desk.stand().settings().cash().units().change(counted)) {
                pieces.add(new TillCommand.Pieces(count.unit().cents(), count.pieces()));
            }
            submit(new ForTill(new TillCommand.CloseTill(drawer.cashier(), pieces)));
        }
        submit(new ForOrders(new OrderCommand.CloseDay()));
    }
}
