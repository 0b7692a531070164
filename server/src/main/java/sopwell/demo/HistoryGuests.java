package sopwell.demo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.menu.Selection;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;
import sopwell.orders.Asked;

/** What the guests of invented days ask for, from the demo's menu. Not thread-safe. */
final class HistoryGuests {
    private static final int TRIES = 20;

    /** How many have hot peppers alone; who has neither hot nor sweet alone, nor none, has both. */
    private static final int HOT_ALONE_PERCENT = 46;

    private static final int NO_PEPPERS_PERCENT = 18;
    private static final int SWEET_ALONE_PERCENT = 22;
    private static final List<String> DRINKS = List.of("cola", "lemonade", "iced-tea", "water");
    private static final List<String> DOGS = List.of("mustard", "relish", "onion", "pickle");

    private final Menu menu;
    private final Map<Wish, Selection> selections = new HashMap<>();

    HistoryGuests(Menu menu) {
        this.menu = menu;
    }

    /** One guest's lines: sandwiches, then what goes with them. */
    List<Asked> lines(SplittableRandom random, HistoryDay day, boolean friday, List<Out> outs) {
        List<Asked> lines = new ArrayList<>();
        int die = random.nextInt(100);
        int sandwiches = die < 60 ? 1 : die < 87 ? 2 : die < 96 ? 3 : 4;
        for (int n = 0; n < sandwiches; n++) {
            int quantity = random.nextInt(9) == 0 ? 2 : 1;
            add(lines, quantity, () -> sandwich(random, day.dipped(), friday), outs);
        }
        if (random.nextInt(100) < 44) {
            add(lines, random.nextInt(4) == 0 ? 2 : 1, () -> wish("fries", "", List.of()), outs);
        }
        if (random.nextInt(100) < (day.rain() ? 30 : 42)) {
            int quantity = random.nextInt(4) == 0 ? 2 : 1;
            add(lines, quantity, () -> drink(random), outs);
        }
        if (random.nextInt(100) < 6) {
            add(lines, 1, () -> wish("jus-cup", "", List.of()), outs);
        }
        return lines;
    }

    /** The same line with the sandwich dipped otherwise, or itself when it can't be. */
    Asked otherwise(Asked asked) {
        Selection was = asked.selection();
        if (!was.has("dipped") && !was.has("wet") && !was.has("dry")) {
            return asked;
        }
        List<String> options = new ArrayList<>(was.options());
        options.replaceAll(
                option ->
                        switch (option) {
                            case "dipped" -> "dry";
                            case "wet", "dry" -> "dipped";
                            default -> option;
                        });
        Wish wish = new Wish(was.item(), was.size(), options, List.of(), List.of());
        return new Asked(asked.quantity(), select(wish));
    }

    /** Guests are told what is out before they choose. */
    private void add(List<Asked> lines, int quantity, Choosing choosing, List<Out> outs) {
        for (int tried = 0; tried < TRIES; tried++) {
            Selection selection = select(choosing.wish());
            if (outs.stream().noneMatch(out -> out.isIn(selection))) {
                lines.add(new Asked(quantity, selection));
                return;
            }
        }
    }

    private interface Choosing {
        Wish wish();
    }

    private Selection select(Wish wish) {
        return selections.computeIfAbsent(wish, w -> Wishes.select(menu, w));
    }

    private static Wish sandwich(SplittableRandom random, double dipped, boolean friday) {
        int die = random.nextInt(100);
        if (friday && die >= 94) {
            return wish("pepper-egg", "", ways(random, dipped));
        }
        if (die < 62) {
            int size = random.nextInt(100);
            String named = size < 18 ? "small" : size < 78 ? "regular" : "large";
            return wish("beef", named, ways(random, dipped));
        }
        if (die < 74) {
            return wish("combo", "", ways(random, dipped));
        }
        if (die < 85) {
            return wish("sausage", "", ways(random, dipped));
        }
        if (die < 97) {
            return wish("hot-dog", "", random.nextInt(3) == 0 ? List.of() : DOGS);
        }
        return wish("jus-bread", "", random.nextBoolean() ? List.of() : List.of("mozzarella"));
    }

    private static List<String> ways(SplittableRandom random, double dipped) {
        List<String> options = new ArrayList<>();
        double dip = random.nextDouble();
        double rest = 1 - dipped;
        options.add(
                dip < dipped
                        ? "dipped"
                        : dip < dipped + rest * 0.52
                                ? "wet"
                                : dip < dipped + rest * 0.84 ? "dry" : "twice");
        options.addAll(peppers(random));
        int cheese = random.nextInt(100);
        if (cheese < 26) {
            options.add(cheese < 13 ? "provolone" : cheese < 20 ? "mozzarella" : "cheddar-sauce");
        }
        return options;
    }

    private static List<String> peppers(SplittableRandom random) {
        int die = random.nextInt(100);
        if (die < HOT_ALONE_PERCENT) {
            return List.of("hot");
        }
        if (die < HOT_ALONE_PERCENT + NO_PEPPERS_PERCENT) {
            return List.of();
        }
        boolean sweetAlone = die < HOT_ALONE_PERCENT + NO_PEPPERS_PERCENT + SWEET_ALONE_PERCENT;
        return sweetAlone ? List.of("sweet") : List.of("hot", "sweet");
    }

    private static Wish drink(SplittableRandom random) {
        String size = random.nextInt(3) == 0 ? "large" : "regular";
        return wish(DRINKS.get(random.nextInt(DRINKS.size())), size, List.of());
    }

    private static Wish wish(String item, String size, List<String> options) {
        return new Wish(item, size, options, List.of(), List.of());
    }
}
