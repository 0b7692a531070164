package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.Limits;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Size;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;

/** Invents orders and texts for a menu; the same seed gives the same ones. */
final class RandomCalls {
    private static final List<String> MARKS =
            List.of(",", ";", "\n", "/", "2", "x", "2x", "0", "100", "\u00d7", "zz", "\u00a0");

    private final Menu menu;
    private final SplittableRandom random;
    private final List<String> words;

    RandomCalls(Menu menu, long seed) {
        this.menu = menu;
        random = new SplittableRandom(seed);
        words = allWords(menu);
    }

    /** Lines that the menu allows, at most this many. */
    List<Counted> order(int linesMax) {
        List<Counted> lines = new ArrayList<>();
        int count = 1 + random.nextInt(linesMax);
        for (int i = 0; i < count; i++) {
            boolean one = random.nextBoolean();
            int quantity = one ? 1 : 1 + random.nextInt(Limits.LINE_QUANTITY_MAX);
            lines.add(new Counted(quantity, selection()));
        }
        return lines;
    }

    /** Something that the menu allows. */
    Selection selection() {
        while (true) {
            Wish wish = wish(menu.items().get(random.nextInt(menu.items().size())));
            if (Wishes.fault(menu, wish).isEmpty()) {
                return Wishes.select(menu, wish);
            }
        }
    }

    /** Words of the menu and marks in any order. */
    String mixture(int wordsMax) {
        StringBuilder text = new StringBuilder();
        int count = random.nextInt(wordsMax + 1);
        for (int i = 0; i < count; i++) {
            boolean mark = random.nextInt(6) == 0;
            text.append(pick(mark ? MARKS : words)).append(random.nextInt(20) == 0 ? "" : " ");
        }
        return text.toString();
    }

    /** Some words that a line about one item may hold, in any order, without marks. */
    String line() {
        Item item = menu.items().get(random.nextInt(menu.items().size()));
        List<String> own = new ArrayList<>();
        item.sizes().forEach(size -> own.addAll(size.words()));
        for (Group group : menu.groupsOf(item)) {
            group.options().forEach(option -> own.addAll(option.words()));
            group.bundles().forEach(bundle -> own.addAll(bundle.words()));
        }
        StringBuilder text = new StringBuilder(random.nextInt(4) == 0 ? "" : pick(item.words()));
        int count = own.isEmpty() ? 0 : random.nextInt(5);
        for (int i = 0; i < count; i++) {
            text.append(random.nextInt(5) == 0 ? " no " : " ").append(pick(own));
        }
        return text.toString();
    }

    static List<String> allWords(Menu menu) {
        List<String> words = new ArrayList<>(menu.speech().numbers().keySet());
        words.sort(null);
        words.addAll(menu.speech().and());
        words.addAll(menu.speech().no());
        words.addAll(menu.speech().skip());
        for (Item item : menu.items()) {
            words.addAll(item.words());
            item.sizes().stream().map(Size::words).forEach(words::addAll);
        }
        for (Group group : menu.groups()) {
            group.options().stream().map(Option::words).forEach(words::addAll);
            group.bundles().stream().map(Bundle::words).forEach(words::addAll);
        }
        return words;
    }

    private Wish wish(Item item) {
        List<String> options = new ArrayList<>();
        List<String> emptied = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Group group : menu.groupsOf(item)) {
            // A house default of a group that need not be chosen can be said away.
            boolean none = group.chooseMin() == 0 && random.nextInt(4) == 0;
            if (none) {
                emptied.add(group.id());
            }
            int likely = 1 + random.nextInt(5);
            for (Option option : group.options()) {
                if (!none && random.nextInt(likely) == 0) {
                    options.add(option.id());
                } else if (random.nextInt(6) == 0) {
                    refused.add(option.id());
                }
            }
        }
        String size = "";
        if (!item.sizes().isEmpty()) {
            boolean said = item.defaultSize().isEmpty() || random.nextBoolean();
            size = said ? item.sizes().get(random.nextInt(item.sizes().size())).id() : "";
        }
        return new Wish(item.id(), size, options, emptied, refused);
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
