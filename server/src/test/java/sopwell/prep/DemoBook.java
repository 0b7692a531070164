package sopwell.prep;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
import sopwell.orders.Safety;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Larder;
import sopwell.stock.larder.LarderEvent.StockCarried;
import sopwell.stock.larder.StockNow;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.storage.MenuReader;
import sopwell.storage.RecipeReader;

/** The demo's menu and book of recipes, with days that are invented here. */
final class DemoBook {
    static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Comparator<Sold> BY_NAME = Comparator.comparing(Sold::toString);
    private static final String[][] DIPS = {{"dry"}, {"wet"}, {"dipped"}};
    private static final String[] PEPPERS = {"none", "hot", "sweet", "hot+sweet"};

    private DemoBook() {}

    static Menu menu() {
        return MenuReader.read(resource("/demo/menu.json")).menu().orElseThrow();
    }

    static RecipeBook recipes() {
        return RecipeReader.read(resource("/demo/recipes.json"), menu()).book().orElseThrow();
    }

    private static byte[] resource(String name) {
        try (InputStream in = DemoBook.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** So many weeks of Tuesdays to Sundays that end before a date. */
    static List<DayTally> weeks(int weeks, LocalDate before) {
        SplittableRandom random = new SplittableRandom(7);
        List<DayTally> days = new ArrayList<>();
        LocalDate last = before.minusDays(1);
        for (LocalDate d = before.minusWeeks(weeks); !d.isAfter(last); d = d.plusDays(1)) {
            if (d.getDayOfWeek() != DayOfWeek.MONDAY) {
                int pieces = d.getDayOfWeek() == DayOfWeek.SATURDAY ? 700 : 450;
                days.add(day(d, pieces + random.nextInt(-40, 41), random));
            }
        }
        return days;
    }

    private static DayTally day(LocalDate date, int pieces, SplittableRandom random) {
        Menu menu = menu();
        Map<Integer, Map<Sold, Integer>> sold = new TreeMap<>();
        for (int i = 0; i < pieces; i++) {
            Item item = menu.items().get(random.nextInt(menu.items().size()));
            if (!item.days().isEmpty() && !item.days().contains(date.getDayOfWeek())) {
                continue;
            }
            String size =
                    item.sizes().isEmpty()
                            ? ""
                            : item.sizes().get(random.nextInt(item.sizes().size())).id();
            List<String> ways = new ArrayList<>();
            for (Group group : menu.groupsOf(item)) {
                String way =
                        switch (group.id()) {
                            case "dip" -> DIPS[random.nextInt(3)][0];
                            case "peppers" -> PEPPERS[random.nextInt(4)];
                            default -> "none";
                        };
                ways.add(group.id() + "=" + way);
            }
            int half = 21 + random.nextInt(19);
            sold.computeIfAbsent(half, h -> new TreeMap<>(BY_NAME))
                    .merge(new Sold(item.id(), size, ways, false, 0, 0), 1, Integer::sum);
        }
        List<HalfHour> halves = new ArrayList<>();
        sold.forEach(
                (half, some) -> {
                    List<Sold> all = new ArrayList<>();
                    some.forEach(
                            (kind, n) ->
                                    all.add(
                                            new Sold(
                                                    kind.item(),
                                                    kind.size(),
                                                    kind.ways(),
                                                    false,
                                                    n,
                                                    800L * n)));
                    halves.add(new HalfHour(half, new Counts(all.size(), 0, 0, 0, 0, 0), all));
                });
        return new DayTally(date, halves);
    }

    /** So much of everything on the shelves, counted now; in shares of one lot or pack. */
    static StockNow stock(double lots, Instant now) {
        RecipeBook book = recipes();
        List<Held> held = new ArrayList<>();
        for (Ingredient one : book.ingredients()) {
            double lot =
                    book.recipe(one.id())
                            .map(r -> r.out().doubleValue())
                            .or(() -> one.supply().map(s -> s.packInBase().doubleValue()))
                            .orElse(0.0);
            held.add(
                    new Held(one.id(), now.toEpochMilli(), Math.round(lot * lots * 1000), 0, 0, 0));
        }
        Larder larder = new Larder();
        larder.apply(
                new StockCarried(held, List.of(), List.of(), List.of(), 0, 0, List.of(), 0), 1);
        return StockNow.of(book, larder, Safety.USUAL, now.toEpochMilli());
    }

    /** The demo's book where somebody is in the kitchen on one more weekday. */
    static RecipeBook withKitchenOn(DayOfWeek weekday) {
        RecipeParts all = recipes().parts();
        Map<DayOfWeek, KitchenHours.Span> hours = new TreeMap<>(all.hours().days());
        hours.put(weekday, new KitchenHours.Span(LocalTime.of(7, 0), LocalTime.of(22, 0)));
        return new RecipeBook(
                "more hours",
                new RecipeParts(
                        all.ingredients(),
                        all.recipes(),
                        all.uses(),
                        all.resources(),
                        new KitchenHours(hours)));
    }

    /** The same of a shelf that nobody ever counted. */
    static StockNow uncounted(RecipeBook book, Instant now) {
        return StockNow.of(book, new Larder(), Safety.USUAL, now.toEpochMilli());
    }

    static PrepAsk ask(List<DayTally> days, StockNow stock, Instant now) {
        return new PrepAsk(
                menu(),
                stock,
                new PrepAsk.Past(PrepDays.of(days, Map.of(), OwnerCalendar.EMPTY), days, List.of()),
                PrepAsk.Calendar.NONE,
                OwnerTerms.USUAL,
                360,
                new PrepAsk.When(now, ZONE));
    }
}
