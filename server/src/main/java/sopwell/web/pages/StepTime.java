package sopwell.web.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long a step takes, as people write it: {@code 3 h 30 min}, {@code 3:30}. Stateless. */
final class StepTime {
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,4}):([0-5]\\d)");
    private static final Pattern PARTS =
            Pattern.compile(
                    "(?:(\\d{1,3}(?:\\.\\d{1,2})?)\\s*(?:d|days?|d[ií]as?))?\\s*"
                            + "(?:(\\d{1,4}(?:\\.\\d{1,2})?)\\s*(?:h|hrs?|hours?|horas?))?\\s*"
                            + "(?:(\\d{1,5})\\s*(?:m|min|mins|minutes?|minutos?)?)?");

    private StepTime() {}

    /** Minutes of what was written; a number alone is minutes. Empty when it is no time span. */
    static OptionalInt minutes(String written) {
        String text = written.strip().toLowerCase(java.util.Locale.ROOT);
        Matcher clock = CLOCK.matcher(text);
        if (clock.matches()) {
            return OptionalInt.of(
                    Integer.parseInt(clock.group(1)) * HOUR + Integer.parseInt(clock.group(2)));
        }
        Matcher parts = PARTS.matcher(text);
        if (text.isEmpty() || !parts.matches()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(
                times(parts.group(1), DAY)
                        + times(parts.group(2), HOUR)
                        + times(parts.group(3), 1));
    }

    private static int times(String number, int minutes) {
        return number == null
                ? 0
                : new BigDecimal(number)
                        .multiply(BigDecimal.valueOf(minutes))
                        .setScale(0, RoundingMode.HALF_UP)
                        .intValueExact();
    }

    /** A time span that reads back as itself, in both languages. */
    static String written(int minutes) {
        if (minutes < HOUR) {
            return minutes + " min";
        }
        String rest = minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min";
        return minutes / HOUR + " h" + rest;
    }
}
