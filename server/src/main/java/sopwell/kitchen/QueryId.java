package sopwell.kitchen;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a query: the part that it is about, and its place among that part's queries. Immutable.
 * Written {@code order.line.station.place}.
 *
 * @param place from 1
 */
public record QueryId(PartId part, int place) {
    private static final Pattern WRITTEN = Pattern.compile("(.{1,100})\\.([1-9][0-9]{0,3})");

    /** Reads a written id. */
    public static Optional<QueryId> read(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int place = Integer.parseInt(matcher.group(2));
        return PartId.read(matcher.group(1)).map(part -> new QueryId(part, place));
    }

    @Override
    public String toString() {
        return part + "." + place;
    }
}
