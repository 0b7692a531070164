package sopwell.menu;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Every word of a menu with its place and what it means, for the checks. Immutable.
 *
 * <p>A meaning is a set of marks: {@code item:beef}, {@code size:large}, {@code +hot}, {@code
 * none:cheese}, {@code x2}. Two words mean the same when their marks are the same.
 */
final class Vocabulary {
    /**
     * One word or phrase.
     *
     * @param place where it stands, as a JSON Pointer
     * @param normal the form in which it is compared
     * @param marks what it means
     */
    record Said(String place, String written, String normal, Set<String> marks) {
        static Said of(String place, String written, Set<String> marks) {
            return new Said(place, written, Words.normal(written), marks);
        }
    }

    private final MenuParts parts;
    private final List<List<Said>> items = new ArrayList<>();
    private final List<List<Said>> sizes = new ArrayList<>();
    private final List<List<Said>> groups = new ArrayList<>();
    private final List<Said> speech = new ArrayList<>();

    Vocabulary(MenuParts parts) {
        this.parts = parts;
        for (int g = 0; g < parts.groups().size(); g++) {
            groups.add(ofGroup("/groups/" + g, parts.groups().get(g)));
        }
        for (int i = 0; i < parts.items().size(); i++) {
            Item item = parts.items().get(i);
            String place = "/items/" + i;
            items.add(said(place, item.words(), Set.of("item:" + item.id())));
            List<Said> ofSizes = new ArrayList<>();
            for (int s = 0; s < item.sizes().size(); s++) {
                Size size = item.sizes().get(s);
                Set<String> marks = Set.of("size:" + size.id());
                ofSizes.addAll(said(place + "/sizes/" + s, size.words(), marks));
            }
            sizes.add(ofSizes);
        }
        Speech own = parts.speech();
        listed("/speech/and", own.and(), "and");
        listed("/speech/no", own.no(), "no");
        listed("/speech/skip", own.skip(), "skip");
        for (Map.Entry<String, Integer> number : new TreeMap<>(own.numbers()).entrySet()) {
            String key = number.getKey().replace("~", "~0").replace("/", "~1");
            String place = "/speech/numbers/" + key;
            speech.add(Said.of(place, number.getKey(), Set.of("x" + number.getValue())));
        }
    }

    /** The words of each item, in the menu's order. */
    List<List<Said>> items() {
        return items;
    }

    /** The words that part, refuse, mean nothing or count; marked by their list or number. */
    List<Said> speech() {
        return speech;
    }

    /** Words of sizes, options and bundles. */
    List<Said> choices() {
        List<Said> all = new ArrayList<>();
        groups.forEach(all::addAll);
        sizes.forEach(all::addAll);
        return all;
    }

    /** What can be said of one item: its own words, its sizes', and its groups'. */
    List<Said> ofItem(int index) {
        List<Said> all = new ArrayList<>(items.get(index));
        all.addAll(sizes.get(index));
        for (int g = 0; g < groups.size(); g++) {
            if (parts.items().get(index).groups().contains(parts.groups().get(g).id())) {
                all.addAll(groups.get(g));
            }
        }
        return all;
    }

    /** Every word on the menu. */
    List<Said> all() {
        List<Said> all = new ArrayList<>(speech);
        all.addAll(choices());
        items.forEach(all::addAll);
        return all;
    }

    private void listed(String place, List<String> words, String mark) {
        for (int w = 0; w < words.size(); w++) {
            speech.add(Said.of(place + "/" + w, words.get(w), Set.of(mark)));
        }
    }

    private static List<Said> ofGroup(String place, Group group) {
        List<Said> all = new ArrayList<>();
        for (int o = 0; o < group.options().size(); o++) {
            Option option = group.options().get(o);
            all.addAll(said(place + "/options/" + o, option.words(), Set.of("+" + option.id())));
        }
        for (int b = 0; b < group.bundles().size(); b++) {
            Bundle bundle = group.bundles().get(b);
            Set<String> marks =
                    bundle.options().stream().map(o -> "+" + o).collect(Collectors.toSet());
            if (marks.isEmpty()) {
                marks = Set.of("none:" + group.id());
            }
            all.addAll(said(place + "/bundles/" + b, bundle.words(), marks));
        }
        return all;
    }

    private static List<Said> said(String place, List<String> words, Set<String> marks) {
        List<Said> all = new ArrayList<>();
        for (int w = 0; w < words.size(); w++) {
            all.add(Said.of(place + "/words/" + w, words.get(w), marks));
        }
        return all;
    }
}
