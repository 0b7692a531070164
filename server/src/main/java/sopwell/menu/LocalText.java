package sopwell.menu;

/**
 * A text of the menu in every language of the screens. Immutable.
 *
 * @param en English
 * @param es Spanish
 */
public record LocalText(String en, String es) {
    /** The text in one language. */
    public String in(Lang lang) {
        return switch (lang) {
            case EN -> en;
            case ES -> es;
        };
    }
}
