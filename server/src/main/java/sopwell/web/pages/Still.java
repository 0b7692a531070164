package sopwell.web.pages;

import java.util.regex.Pattern;

/**
 * Makes what a board's templates drew into something that can only be looked at: no button can be
 * pressed, and nothing says any more where a press would go. Stateless.
 */
final class Still {
    private static final Pattern GOES =
            Pattern.compile(
                    "\\s(?:hx-[a-z-]+|href|data-(?:act|remake|question|load|outs))"
                            + "=(?:\"[^\"]*\"|'[^']*')");
    private static final Pattern BUTTON = Pattern.compile("<button\\b");

    private Still() {}

    /** The same to look at, with nothing to press. */
    static String of(String html) {
        String goesNowhere = GOES.matcher(html).replaceAll("");
        return BUTTON.matcher(goesNowhere).replaceAll("<button disabled");
    }
}
