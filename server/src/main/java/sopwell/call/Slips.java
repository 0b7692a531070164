package sopwell.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sopwell.call.Span.Role;
import sopwell.menu.Item;

/**
 * Finds the words of a menu that an unknown word may be a slip of. Immutable, thread-safe.
 *
 * <p>A slip is one letter missing, too many, wrong, or swapped with its neighbour: the optimal
 * string alignment distance (Damerau 1964 without edits inside a swap). One slip is looked through,
 * in words of seven letters or more two. Words of one or two letters are nobody's likely slip: one
 * edit makes any of them out of any other.
 */
final class Slips {
    /** How many suggestions a person can take in at a glance while a guest waits. */
    static final int SUGGESTIONS_MAX = 3;

    private static final int LETTERS_MIN = 3;
    private static final int LONG_LETTERS_MIN = 7;

    /**
     * What was found.
     *
     * @param texts at most {@link #SUGGESTIONS_MAX}, the likeliest first
     * @param tokens how many tokens they stand for, at least 1
     */
    record Found(List<String> texts, int tokens) {
        Found {
            texts = List.copyOf(texts);
        }
    }

    private record Near(Phrase phrase, int distance, int misfit, int order) {}

    private final List<Phrase> phrases;
    private final int wordsMax;

    Slips(Vocabulary vocabulary) {
        phrases = vocabulary.phrases();
        wordsMax = phrases.stream().mapToInt(Phrase::words).max().orElse(1);
    }

    /**
     * What an unknown word may have been meant to be: a word or phrase, or the beginning of a
     * phrase with a slip in it. The longest stretch of text that is near to something counts,
     * because it explains the most.
     *
     * @param end the token before which the line ends
     * @param about the line's item, or null
     */
    Found find(Tokens tokens, int at, int end, Item about) {
        Found found = new Found(List.of(), 1);
        String typed = tokens.word(at);
        for (int width = 1; width <= wordsMax; width++) {
            List<String> texts = texts(near(typed, width, about));
            found = texts.isEmpty() ? found : new Found(texts, width);
            int next = at + width;
            if (next >= end || tokens.cut(next)) {
                break;
            }
            typed = typed + " " + tokens.word(next);
        }
        return found;
    }

    /** Edits that a word of the menu is looked for through. */
    static int slipsMax(String word) {
        return word.length() >= LONG_LETTERS_MIN ? 2 : 1;
    }

    /**
     * The optimal string alignment distance, or {@code max + 1} when it is more than {@code max}.
     */
    static int distance(String a, String b, int max) {
        if (Math.abs(a.length() - b.length()) > max) {
            return max + 1;
        }
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] free = before;
            before = last;
            last = row;
            row = free;
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int cost = Math.min(last[j - 1] + same, Math.min(last[j], row[j - 1]) + 1);
                if (i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, before[j - 2] + 1);
                }
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (least > max) {
                return max + 1;
            }
        }
        return Math.min(row[b.length()], max + 1);
    }

    private List<Near> near(String typed, int width, Item about) {
        List<Near> near = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            Phrase phrase = phrases.get(i);
            String word = phrase.normal();
            boolean comparable = width == 1 || phrase.words() == width;
            if (comparable && word.length() >= LETTERS_MIN) {
                int max = slipsMax(word);
                int distance = distance(typed, word, max);
                if (distance <= max) {
                    near.add(new Near(phrase, distance, misfit(phrase, about), i));
                }
            }
        }
        near.sort(
                Comparator.comparingInt(Near::distance)
                        .thenComparingInt(Near::misfit)
                        .thenComparingInt(Near::order));
        return near;
    }

    private static List<String> texts(List<Near> near) {
        List<String> texts = new ArrayList<>();
        Set<String> meant = new HashSet<>();
        for (Near one : near) {
            Meaning meaning = one.phrase().anyhow();
            boolean fresh = meaning.id().isEmpty() || meant.add(meaning.role() + meaning.id());
            if (fresh && texts.size() < SUGGESTIONS_MAX) {
                texts.add(one.phrase().text());
            }
        }
        return texts;
    }

    /** How badly a phrase fits where it would stand: 0 best. */
    private static int misfit(Phrase phrase, Item about) {
        Role role = phrase.anyhow().role();
        boolean choice = role == Role.SIZE || role == Role.OPTION || role == Role.BUNDLE;
        if (about == null) {
            return role == Role.ITEM ? 0 : 1;
        }
        if (choice) {
            return phrase.about(about) == null ? 3 : 0;
        }
        return role == Role.ITEM ? 2 : 1;
    }
}
