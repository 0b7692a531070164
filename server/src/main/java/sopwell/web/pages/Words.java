package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.web.T;

/** The words of the word board, in rows by what they do. Stateless. */
public final class Words {
    private static final int QUANTITIES = 9;

    private Words() {}

    /**
     * One row.
     *
     * @param label what its words say
     */
    public record Row(String label, List<Word> words) {
        public Row {
            words = List.copyOf(words);
        }
    }

    /**
     * One word.
     *
     * @param id as in {@link sopwell.counter.LiveIds}
     * @param text what a tap puts into the call
     * @param label what stands on it
     */
    public record Word(String id, String text, String label) {}

    /** All rows of a menu in one language. */
    static List<Row> of(Menu menu, T t) {
        List<Row> rows = new ArrayList<>();
        List<Word> items = new ArrayList<>();
        Map<String, Word> sizes = new LinkedHashMap<>();
        for (Item item : menu.items()) {
            items.add(word("i." + item.id(), item.name(), item.words(), t));
            for (Size size : item.sizes()) {
                sizes.putIfAbsent(size.id(), word("s." + size.id(), size.name(), size.words(), t));
            }
        }
        rows.add(new Row(t.get("counter.word.what"), items));
        rows.add(new Row(t.get("counter.word.size"), List.copyOf(sizes.values())));
        for (Group group : menu.groups()) {
            rows.add(new Row(t.local(group.name()).toLowerCase(Locale.ROOT), words(group, t)));
        }
        List<Word> refuse = List.of(new Word("no", no(menu, t), t.get("counter.word.no")));
        rows.add(new Row(t.get("counter.word.refuse"), refuse));
        List<Word> numbers = new ArrayList<>();
        for (int number = 1; number <= QUANTITIES; number++) {
            String text = Integer.toString(number);
            numbers.add(new Word("n", text, text));
        }
        rows.add(new Row(t.get("counter.word.how-many"), numbers));
        return rows;
    }

    private static List<Word> words(Group group, T t) {
        List<Word> words = new ArrayList<>();
        for (Option option : group.options()) {
            words.add(word("o." + option.id(), option.name(), option.words(), t));
        }
        for (Bundle bundle : group.bundles()) {
            words.add(word("b." + bundle.id(), bundle.name(), bundle.words(), t));
        }
        return words;
    }

    /** A tap writes the name that stands on the word, if the call knows it; else the menu's way. */
    private static Word word(String id, LocalText name, List<String> words, T t) {
        String label = t.local(name);
        String text = words.contains(label) || words.isEmpty() ? label : words.get(0);
        return new Word(id, text, label);
    }

    private static String no(Menu menu, T t) {
        List<String> words = menu.speech().no();
        String wanted = t.get("board.no");
        return words.contains(wanted) || words.isEmpty() || t.lang() == Lang.EN
                ? wanted
                : words.get(0);
    }
}
