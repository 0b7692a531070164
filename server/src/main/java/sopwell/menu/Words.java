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
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Words() {}

    /**
     * A word or phrase in the form in which it is compared. {@code " Bañado DOBLE "} is {@code
     * "banado doble"}.
     */
    public static String normal(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
        String bare = withoutMarks(apart);
        return SPACES.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    private static String withoutMarks(String text) {
        StringBuilder bare = new StringBuilder(text.length());
        text.codePoints().filter(point -> !isMark(point)).forEach(bare::appendCodePoint);
        return bare.toString();
    }

    private static boolean isMark(int point) {
        int type = Character.getType(point);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK;
    }

    /** The single words of a phrase, in the form in which they are compared. */
    public static List<String> split(String phrase) {
        String normal = normal(phrase);
        return normal.isEmpty() ? List.of() : List.of(normal.split(" ", -1));
    }
}
