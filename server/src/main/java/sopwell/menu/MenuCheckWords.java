package sopwell.menu;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.menu.Vocabulary.Said;

/**
 * That every word means one thing. Stateless.
 *
 * <p>An item's words and the small words of a call are read before it is known what a line is
 * about, so they are nobody else's. Other words need only be clear for the items they belong to.
 */
final class MenuCheckWords {
    private final Vocabulary vocabulary;
    private final MenuParts parts;
    private final Faults faults;
    private final Set<String> reported = new HashSet<>();

    private MenuCheckWords(MenuParts parts, Faults faults) {
        this.vocabulary = new Vocabulary(parts);
        this.parts = parts;
        this.faults = faults;
    }

    static void faults(MenuParts parts, Faults faults) {
        MenuCheckWords check = new MenuCheckWords(parts, faults);
        check.ownedWords();
        for (int i = 0; i < parts.items().size(); i++) {
            check.withinItem(i);
        }
    }

    /** Small words against each other, item words against small words, then all others. */
    private void ownedWords() {
        Map<String, Said> owners = new HashMap<>();
        for (Said said : vocabulary.speech()) {
            claim(owners, said);
        }
        for (List<Said> words : vocabulary.items()) {
            words.forEach(said -> claim(owners, said));
        }
        for (Said said : vocabulary.choices()) {
            Said owner = owners.get(said.normal());
            if (owner != null) {
                clash(said, owner);
            }
        }
    }

    private void claim(Map<String, Said> owners, Said said) {
        Said owner = owners.putIfAbsent(said.normal(), said);
        if (owner != null && !owner.marks().equals(said.marks())) {
            clash(said, owner);
        }
    }

    private void withinItem(int index) {
        Item item = parts.items().get(index);
        Map<String, Said> meanings = new HashMap<>();
        List<Said> own = vocabulary.ofItem(index);
        for (Said said : own) {
            Said first = meanings.putIfAbsent(said.normal(), said);
            if (first != null && !first.marks().equals(said.marks())) {
                clash(said, first);
            }
        }
        Readings readings = new Readings(parts, own, vocabulary.speech());
        for (Said said : own) {
            phrase(item, readings, said, "");
        }
        for (List<Said> words : vocabulary.items()) {
            for (Said said : words) {
                phrase(item, readings, said, "item:" + item.id());
            }
        }
    }

    /** A phrase of several words must not fall apart into others that mean something else. */
    private void phrase(Item item, Readings readings, Said said, String mark) {
        for (Set<String> marks : readings.ofParts(said.normal())) {
            boolean counts = mark.isEmpty() || marks.contains(mark);
            if (counts && !marks.equals(said.marks()) && reported.add(said.place())) {
                faults.add(
                        said.place(),
                        "\""
                                + said.written()
                                + "\" can also be read word by word, for \""
                                + item.id()
                                + "\", and then means something else.",
                        "Use a phrase whose words mean nothing on their own here.");
            }
        }
    }

    private void clash(Said said, Said first) {
        if (reported.add(said.place())) {
            faults.add(
                    said.place(),
                    "\"" + said.written() + "\" means something else at " + first.place() + ".",
                    "Take the word away at one of the two places.");
        }
    }
}
