package sopwell.call;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.Item;

/**
 * A word or phrase of the menu and all that it can mean: an item or a small word to everybody, a
 * size or a modifier to the items that take it. Filled while a vocabulary is built, then only read.
 */
final class Phrase {
    private final String text;
    private final String normal;
    private final int words;
    private final Map<String, Meaning> sizes = new LinkedHashMap<>();
    private final List<Meaning> choices = new ArrayList<>();
    private Meaning item;
    private Meaning small;

    /**
     * @param text as the menu writes it
     * @param normal as it is compared
     * @param words how many single words it has
     */
    Phrase(String text, String normal, int words) {
        this.text = text;
        this.normal = normal;
        this.words = words;
    }

    String text() {
        return text;
    }

    String normal() {
        return normal;
    }

    int words() {
        return words;
    }

    void meansItem(Meaning meaning) {
        item = item == null ? meaning : item;
    }

    void meansSmall(Meaning meaning) {
        small = small == null ? meaning : small;
    }

    void meansSize(String itemId, Meaning meaning) {
        sizes.putIfAbsent(itemId, meaning);
    }

    void meansChoice(Meaning meaning) {
        choices.add(meaning);
    }

    boolean isItem() {
        return item != null;
    }

    /** Whether it is a small word to everybody. */
    boolean isSmall() {
        return small != null;
    }

    /** What it means on a line about an item, or null when that item doesn't take it. */
    Meaning about(Item about) {
        if (item != null) {
            return item;
        }
        if (about != null) {
            Meaning size = sizes.isEmpty() ? null : sizes.get(about.id());
            if (size != null) {
                return size;
            }
            for (Meaning choice : choices) {
                if (about.groups().contains(choice.group())) {
                    return choice;
                }
            }
        }
        return small;
    }

    /** What it means to some item or other; never null. */
    Meaning anyhow() {
        if (item != null || small != null) {
            return item != null ? item : small;
        }
        return choices.isEmpty() ? sizes.values().iterator().next() : choices.get(0);
    }
}
