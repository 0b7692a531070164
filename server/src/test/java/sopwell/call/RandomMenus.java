package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.MenuCheck;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;

/**
 * Invents menus that pass the menu's checks and are as confusing as those allow: few single words,
 * so that phrases overlap, begin like others, hold small words, and mean different things to
 * different items.
 */
final class RandomMenus {
    private static final List<String> SINGLE =
            List.of("ab", "ba", "ca", "da", "fa", "ga", "ha", "ja", "x", "ño", "o'k", "a-b", "ma");
    private static final List<String> SMALL = List.of("and", "no", "with", "two", "twenty");
    private static final int TRIES_MAX = 100_000;

    private final SplittableRandom random;

    private RandomMenus(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A menu without fault; the same seed gives the same menu. */
    static Menu menu(long seed) {
        RandomMenus menus = new RandomMenus(seed);
        for (int i = 0; i < TRIES_MAX; i++) {
            MenuParts parts = menus.parts();
            if (MenuCheck.faults(parts).isEmpty()) {
                return new Menu("seed-" + seed, parts);
            }
        }
        throw new IllegalStateException("no menu without fault for seed " + seed);
    }

    private MenuParts parts() {
        List<Group> groups = new ArrayList<>();
        int groupCount = random.nextInt(4);
        for (int g = 0; g < groupCount; g++) {
            groups.add(group("g" + g));
        }
        List<Item> items = new ArrayList<>();
        int itemCount = 1 + random.nextInt(3);
        for (int i = 0; i < itemCount; i++) {
            items.add(item("i" + i, groups));
        }
        groups.removeIf(group -> items.stream().noneMatch(i -> i.groups().contains(group.id())));
        return Menus.parts(groups, items);
    }

    private Group group(String id) {
        List<Option> options = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int o = 0; o < count; o++) {
            ids.add(id + "o" + o);
        }
        for (String option : ids) {
            String other = random.nextInt(4) == 0 ? pick(ids) : "";
            String insteadOf = other.equals(option) ? "" : other;
            options.add(new Option(option, Menus.text(option), words(), 0, insteadOf, List.of()));
        }
        int max = 1 + random.nextInt(count);
        int min = random.nextInt(Math.min(2, max) + 1);
        List<Bundle> bundles = new ArrayList<>();
        int bundleCount = random.nextInt(3);
        for (int b = 0; b < bundleCount; b++) {
            String bundle = id + "b" + b;
            bundles.add(new Bundle(bundle, Menus.text(bundle), words(), some(ids, min, max)));
        }
        if (min == 0 && random.nextBoolean()) {
            bundles.add(new Bundle(id + "none", Menus.text("none"), words(), List.of()));
        }
        return new Group(id, Menus.text(id), min, max, some(ids, min, max), options, bundles);
    }

    private Item item(String id, List<Group> groups) {
        List<Size> sizes = new ArrayList<>();
        int count = random.nextInt(3);
        for (int s = 0; s < count; s++) {
            sizes.add(new Size("s" + s, Menus.text("s" + s), words(), 100));
        }
        String defaultSize = count > 0 && random.nextBoolean() ? "s0" : "";
        List<String> taken =
                groups.stream().map(Group::id).filter(g -> random.nextInt(3) > 0).toList();
        return new Item(
                id,
                Menus.text(id),
                words(),
                sizes,
                defaultSize,
                count > 0 ? 0 : 100,
                taken,
                List.of("make-" + id),
                List.of(),
                List.of(),
                true,
                0);
    }

    private List<String> some(List<String> ids, int min, int max) {
        List<String> left = new ArrayList<>(ids);
        List<String> chosen = new ArrayList<>();
        int count = min + random.nextInt(max - min + 1);
        for (int i = 0; i < count; i++) {
            chosen.add(left.remove(random.nextInt(left.size())));
        }
        return chosen;
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        int count = 1 + random.nextInt(2);
        for (int w = 0; w < count; w++) {
            StringBuilder phrase = new StringBuilder();
            int singles = 1 + random.nextInt(3);
            for (int s = 0; s < singles; s++) {
                String word = random.nextInt(8) == 0 ? pick(SMALL) : pick(SINGLE);
                phrase.append(s == 0 ? "" : " ").append(word);
            }
            words.add(phrase.toString());
        }
        return words;
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
