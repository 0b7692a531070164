package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The edit distance agrees with its definition, and slips find their words. */
class SlipsLaws {
    private static final CallParser PARSER = new CallParser(DemoMenu.read());

    @Test
    void theDistanceIsThatOfItsDefinition() {
        Seeds.each(
                5000,
                seed -> {
                    SplittableRandom random = new SplittableRandom(seed);
                    String a = letters(random);
                    String b = letters(random);
                    int max = random.nextInt(9);
                    int slow = slowDistance(a, b);
                    assertEquals(Math.min(slow, max + 1), Slips.distance(a, b, max));
                    return true;
                });
    }

    @Test
    void knownDistances() {
        assertEquals(0, Slips.distance("", "", 2));
        assertEquals(1, Slips.distance("befe", "beef", 2));
        assertEquals(1, Slips.distance("hotdog", "hot dog", 2));
        assertEquals(2, Slips.distance("mozarela", "mozzarella", 2));
        // With edits inside a swap this would be 2; a slip is not that elaborate.
        assertEquals(3, Slips.distance("ca", "abc", 5));
        assertEquals(3, Slips.distance("abcdef", "", 2));
    }

    @Test
    void oneSlipInAWordIsSuggestedOrReadAsAnotherWord() {
        Seeds.each(
                3000,
                seed -> {
                    SplittableRandom random = new SplittableRandom(seed);
                    List<String> words = new ArrayList<>();
                    for (String word : RandomCalls.allWords(PARSER.menu())) {
                        if (word.length() >= 3 && !word.contains(" ") && isPlain(word)) {
                            words.add(word);
                        }
                    }
                    String word = words.get(random.nextInt(words.size()));
                    String slipped = slip(word, random);
                    CallRefusal refusal = PARSER.read(slipped).refusal().orElse(null);
                    if (refusal != null && refusal.why() == CallRefusal.Why.UNKNOWN_WORD) {
                        List<String> suggestions = refusal.suggestions();
                        assertTrue(suggestions.size() <= 3 && !suggestions.isEmpty(), slipped);
                        for (String suggestion : suggestions) {
                            String normal = sopwell.menu.Words.normal(suggestion);
                            int distance = slowDistance(slipped, normal);
                            assertTrue(
                                    distance <= Slips.slipsMax(normal), slipped + " " + suggestion);
                        }
                    }
                    return true;
                });
    }

    private static String letters(SplittableRandom random) {
        StringBuilder letters = new StringBuilder();
        int length = random.nextInt(8);
        for (int i = 0; i < length; i++) {
            letters.append((char) ('a' + random.nextInt(3)));
        }
        return letters.toString();
    }

    private static boolean isPlain(String word) {
        return word.chars().allMatch(c -> c >= 'a' && c <= 'z');
    }

    private static String slip(String word, SplittableRandom random) {
        int at = random.nextInt(word.length());
        char other = (char) ('a' + random.nextInt(26));
        String before = word.substring(0, at);
        String after = word.substring(at + 1);
        return switch (random.nextInt(4)) {
            case 0 -> before + after;
            case 1 -> before + other + after;
            case 2 -> before + other + word.substring(at);
            default -> at + 1 < word.length() ? swapped(word, at) : word + other;
        };
    }

    private static String swapped(String word, int at) {
        char[] letters = word.toCharArray();
        letters[at] = word.charAt(at + 1);
        letters[at + 1] = word.charAt(at);
        return new String(letters);
    }

    /** The definition, word for word: a table of all prefixes. */
    private static int slowDistance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = cell(cost, a.substring(0, i), b.substring(0, j));
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cell(int[][] cost, String a, String b) {
        int i = a.length();
        int j = b.length();
        if (i == 0 || j == 0) {
            return i + j;
        }
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int[] ways = {cost[i - 1][j] + 1, cost[i][j - 1] + 1, cost[i - 1][j - 1] + same, i + j};
        boolean swap = i > 1 && j > 1;
        if (swap
                && a.substring(i - 2)
                        .equals(new StringBuilder(b.substring(j - 2)).reverse().toString())) {
            ways[3] = cost[i - 2][j - 2] + 1;
        }
        return Arrays.stream(ways).min().getAsInt();
    }
}
