package sopwell.call;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.call.Span.Role;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Words;

/**
 * Every phrase of a menu in a tree by its single words, for finding the longest one that a text
 * goes on with. Built once per menu, then only read: thread-safe.
 */
final class Vocabulary {
    private static final class Node {
        private final Map<String, Node> next = new HashMap<>();
        private Phrase phrase;
    }

    private final Node root = new Node();
    private final List<Phrase> phrases = new ArrayList<>();

    Vocabulary(Menu menu) {
        for (Item item : menu.items()) {
            item.words().forEach(w -> at(w, p -> p.meansItem(Meaning.of(Role.ITEM, item.id()))));
            for (Size size : item.sizes()) {
                Meaning meaning = Meaning.of(Role.SIZE, size.id());
                size.words().forEach(w -> at(w, p -> p.meansSize(item.id(), meaning)));
            }
        }
        for (Group group : menu.groups()) {
            addChoices(group);
        }
        menu.speech().no().forEach(w -> small(w, Role.NO));
        menu.speech().and().forEach(w -> small(w, Role.SEPARATOR));
        menu.speech().skip().forEach(w -> small(w, Role.SKIP));
        menu.speech().numbers().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> at(e.getKey(), p -> p.meansSmall(Meaning.number(e.getValue()))));
    }

    /** All phrases, in the menu's order. */
    List<Phrase> phrases() {
        return phrases;
    }

    /** Whether a single word is a phrase of the menu. */
    boolean knows(String word) {
        Node node = root.next.get(word);
        return node != null && node.phrase != null;
    }

    /**
     * The longest phrase that starts at a token and that an item takes, or null.
     *
     * @param end the token before which the phrase must end
     * @param about the item, or null to look at what everybody takes
     */
    Phrase longestFitting(Tokens tokens, int from, int end, Item about) {
        Phrase found = null;
        Node node = root.next.get(tokens.word(from));
        for (int at = from + 1; node != null; at++) {
            if (node.phrase != null && node.phrase.about(about) != null) {
                found = node.phrase;
            }
            if (at == end || tokens.cut(at)) {
                break;
            }
            node = node.next.get(tokens.word(at));
        }
        return found;
    }

    /** The longest phrase of the menu that starts at a token, whoever takes it, or null. */
    Phrase longest(Tokens tokens, int from, int end) {
        Phrase found = null;
        Node node = root.next.get(tokens.word(from));
        for (int at = from + 1; node != null; at++) {
            found = node.phrase == null ? found : node.phrase;
            if (at == end || tokens.cut(at)) {
                break;
            }
            node = node.next.get(tokens.word(at));
        }
        return found;
    }

    private void addChoices(Group group) {
        for (Option option : group.options()) {
            Meaning meaning =
                    new Meaning(Role.OPTION, option.id(), group.id(), List.of(option.id()), 0);
            option.words().forEach(w -> at(w, p -> p.meansChoice(meaning)));
        }
        for (Bundle bundle : group.bundles()) {
            Meaning meaning =
                    new Meaning(Role.BUNDLE, bundle.id(), group.id(), bundle.options(), 0);
            bundle.words().forEach(w -> at(w, p -> p.meansChoice(meaning)));
        }
    }

    private void small(String words, Role role) {
        at(words, phrase -> phrase.meansSmall(Meaning.of(role, "")));
    }

    private void at(String words, java.util.function.Consumer<Phrase> add) {
        List<String> single = Words.split(words);
        Node node = root;
        for (String word : single) {
            node = node.next.computeIfAbsent(word, w -> new Node());
        }
        if (node == root) {
            return;
        }
        if (node.phrase == null) {
            node.phrase = new Phrase(words, String.join(" ", single), single.size());
            phrases.add(node.phrase);
        }
        add.accept(node.phrase);
    }
}
