package sopwell.kitchen;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a part: the piece of one order's line that one station makes. Immutable. Written {@code
 * order.line.station}.
 *
 * @param line the line's number on the order, from 1
 */
public record PartId(String order, int line, String station) {
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9]{8}-[0-9]{4,9})\\.([0-9]{1,4})\\.([a-z0-9-]{1,40})");

    /** Reads a written id. */
    public static Optional<PartId> read(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int line = Integer.parseInt(matcher.group(2));
        return Optional.of(new PartId(matcher.group(1), line, matcher.group(3)));
    }

    @Override
    public String toString() {
        return order + "." + line + "." + station;
    }
}
