package sopwell.prep.forecast;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.Check;

/**
 * Something particular about a day that is known beforehand: a holiday, a festival, a game.
 * Immutable.
 *
 * @param name as the owner calls it, the same each time
 * @param kind what it is one of, so that a new one is forecast like its kind; may be empty
 * @param guess what the owner thinks it makes of a day: 1.4 for 40 % more; 0 for no guess
 */
public record Occasion(String name, String kind, double guess) {
    private static final double GUESS_MAX = 20;
    private static final double MILLIONTHS = 1e6;

    private static final Pattern TIMES =
            Pattern.compile("(.*?)[\\s(]*[x×*]\\s*(\\d+(?:[.,]\\d+)?)\\)?\\s*");
    private static final Pattern PERCENT =
            Pattern.compile("(.*?)[\\s(]*([+−-])\\s*(\\d+(?:[.,]\\d+)?)\\s*%\\)?\\s*");

    public Occasion {
        Check.that(guess >= 0 && guess <= GUESS_MAX, "an owner's guess is a factor up to 20");
    }

    /**
     * What was written: {@code river festival}, {@code festival: river}, {@code river festival x
     * 1.4}, {@code river festival +40 %}. A year in it is left out, so that each year's is the
     * same.
     */
    public static Occasion read(String written) {
        String name = written.strip();
        double guess = 0;
        Matcher times = TIMES.matcher(name);
        Matcher percent = PERCENT.matcher(name);
        if (times.matches() && !times.group(1).isBlank()) {
            name = times.group(1);
            guess = number(times.group(2));
        } else if (percent.matches() && !percent.group(1).isBlank()) {
            name = percent.group(1);
            double part = number(percent.group(3)) / 100;
            guess = percent.group(2).equals("+") ? 1 + part : Math.max(0.01, 1 - part);
        }
        name = name.toLowerCase(Locale.ROOT).replaceAll("\\b(19|20)\\d\\d\\b", " ");
        name = name.replaceAll("\\s+", " ").strip();
        int colon = name.indexOf(':');
        String kind = colon > 0 ? name.substring(0, colon).strip() : "";
        return new Occasion(name, kind, toMillionth(Math.min(GUESS_MAX, guess)));
    }

    /** As it is kept, so that what is read again is the same. */
    private static double toMillionth(double guess) {
        return Math.rint(guess * MILLIONTHS) / MILLIONTHS;
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
