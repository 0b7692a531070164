package sopwell.menu;

import java.util.List;

/**
 * One choice in a modifier group. Immutable.
 *
 * @param id unique on the menu
 * @param words what it is called by; the first is how Sopwell writes it
 * @param priceCents what it adds to one piece, 0 or more
 * @param insteadOf the option of the same group that usually comes along; chosen without it, the
 *     screens say "no" to that one so that nobody wonders; or empty
 */
public record Option(
        String id,
        LocalText name,
        List<String> words,
        long priceCents,
        String insteadOf,
        List<String> allergens) {
    public Option {
        words = List.copyOf(words);
        allergens = List.copyOf(allergens);
    }
}
