package sopwell.web.pages;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import sopwell.Limits;

/**
 * What was set once for a screen on its own page: kept in one cookie, so that it outlives a reload
 * and a loss of power. Immutable.
 *
 * @param name what the people there call it, or empty when it was never set up
 * @param board the path of what it shows, or empty
 * @param inchTenths its diagonal in tenths of an inch; 0 when nobody said
 * @param pixelsPerMetre CSS pixels a metre, as measured with a card; 0 when nobody measured
 * @param sound whether it may sound
 */
public record Setup(String name, String board, int inchTenths, int pixelsPerMetre, boolean sound) {
    /** The cookie that it is kept in. */
    static final String COOKIE = "screen";

    /** A screen that nobody has set up: as large as a usual monitor. */
    static final Setup NONE = new Setup("", "", 0, 0, true);

    private static final int FIELDS = 5;
    private static final int INCH_TENTHS_MAX = 2_000;
    private static final int PIXELS_PER_METRE_MAX = 100_000;

    /** As it stands in the cookie. */
    String written() {
        String all =
                String.join(
                        "|",
                        List.of(
                                name.replace("|", " "),
                                board,
                                Integer.toString(inchTenths),
                                Integer.toString(pixelsPerMetre),
                                sound ? "on" : "off"));
        return URLEncoder.encode(all, StandardCharsets.UTF_8);
    }

    /** Reads a cookie; what can't be read was set by nobody here. */
    static Setup read(String written) {
        String text;
        try {
            text = URLDecoder.decode(written, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            return NONE;
        }
        String[] fields = text.split("\\|", -1);
        if (fields.length != FIELDS || fields[0].length() > Limits.NAME_CHARS_MAX) {
            return NONE;
        }
        return new Setup(
                fields[0],
                fields[1].matches("/[a-z0-9/-]{1,60}") ? fields[1] : "",
                number(fields[2], INCH_TENTHS_MAX),
                number(fields[3], PIXELS_PER_METRE_MAX),
                !fields[4].equals("off"));
    }

    /** A number typed or kept; 0 for what is none, or too large to be true. */
    static int number(String written, int max) {
        int number = written.matches("[0-9]{1,6}") ? Integer.parseInt(written) : 0;
        return number <= max ? number : 0;
    }

    /** A diagonal in inches, as people write it: 23.8 or 23,8. */
    static int inchTenths(String written) {
        if (!written.matches("[0-9]{1,3}([.,][0-9]{1,2})?")) {
            return 0;
        }
        double tenths = Double.parseDouble(written.replace(',', '.')) * 10;
        return Math.min((int) Math.round(tenths), INCH_TENTHS_MAX);
    }

    /** The diagonal as people write it, or empty. */
    public String inches() {
        if (inchTenths == 0) {
            return "";
        }
        return inchTenths % 10 == 0
                ? Integer.toString(inchTenths / 10)
                : inchTenths / 10 + "." + inchTenths % 10;
    }

    /** Whether somebody has set the screen up. */
    public boolean isSet() {
        return !board.isEmpty();
    }
}
