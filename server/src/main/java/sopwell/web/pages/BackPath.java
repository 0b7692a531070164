package sopwell.web.pages;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Where somebody goes on after signing in: a place of this stand alone. Stateless. */
final class BackPath {
    private static final String HOME = "/";
    private static final int CHARS_MAX = 1_000;

    /** One slash, then none of either kind: two would name another host. */
    private static final Pattern LOCAL =
            Pattern.compile("/(?![/\\\\])[\\x21-\\x5b\\x5d-\\x7e]{0," + CHARS_MAX + "}");

    private BackPath() {}

    /** What was asked for, if it is a place here that is worth going to; else the first page. */
    static String of(String asked) {
        boolean turns = asked.startsWith("/sign-in") || asked.startsWith("/sign-out");
        return LOCAL.matcher(asked).matches() && !turns ? asked : HOME;
    }

    /** The address that signs in and comes back there. */
    static String signIn(String back) {
        return "/sign-in?back=" + URLEncoder.encode(back, StandardCharsets.UTF_8);
    }
}
