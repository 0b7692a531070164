package sopwell.stock.recipes;

import java.util.List;
import java.util.Optional;
import sopwell.menu.MenuFault;

/**
 * What came of reading a book of recipes: a book, or everything that is wrong with it. Immutable.
 *
 * @param book there when there are no faults
 * @param form what is wrong with the document as such
 * @param faults what is wrong with what it says
 * @param notices what may be meant, but is worth a look
 */
public record RecipeReading(
        Optional<RecipeBook> book,
        List<MenuFault> form,
        List<RecipeFault> faults,
        List<RecipeNotice> notices) {
    public RecipeReading {
        form = List.copyOf(form);
        faults = List.copyOf(faults);
        notices = List.copyOf(notices);
    }
}
