package sopwell.menu;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How words are compared: in small letters, without accents, with single spaces. Stateless.
 *
 * <p>The menu's checks and the call parser both read words through here, so that a menu that passed
 * is read the way it was checked.
 */
public final class Words {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Words() {}

    /**
     * A word or phrase in the form in which it is compared. {@code " Bañado DOBLE "} is {@code
     * "banado doble"}.
     */
    public static String normal(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
        String bare = MARKS.matcher(apart).replaceAll("");
        return SPACES.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    /** The single words of a phrase, in the form in which they are compared. */
    public static List<String> split(String phrase) {
        String normal = normal(phrase);
        return normal.isEmpty() ? List.of() : List.of(normal.split(" ", -1));
    }
}
