package sopwell.menu;

import java.util.Collection;
import java.util.Optional;

/** Finds the known name that a wrong one was probably meant to be. Stateless. */
public final class Nearest {
    /** Names longer than this are not compared: nobody mistypes them by a letter. */
    private static final int CHARS_MAX = 80;

    private Nearest() {}

    /**
     * The known name nearest to a wrong one: at most one letter away, two when the name has five
     * letters or more, three from nine; the first of several that are equally near.
     */
    public static Optional<String> of(String wrong, Collection<String> known) {
        if (wrong.length() > CHARS_MAX) {
            return Optional.empty();
        }
        Optional<String> nearest = Optional.empty();
        int best = wrong.length() >= 9 ? 4 : wrong.length() >= 5 ? 3 : 2;
        for (String name : known) {
            if (Math.abs(name.length() - wrong.length()) < best) {
                int distance = distance(wrong, name);
                if (distance < best) {
                    best = distance;
                    nearest = Optional.of(name);
                }
            }
        }
        return nearest;
    }

    /**
     * How many letters must be put in, left out, altered or swapped with their neighbour to turn
     * one word into the other (optimal string alignment).
     */
    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int altered = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(altered, Math.min(last[j], row[j - 1]) + 1);
                boolean swapped =
                        i > 1
                                && j > 1
                                && a.charAt(i - 1) == b.charAt(j - 2)
                                && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length()];
    }
}
