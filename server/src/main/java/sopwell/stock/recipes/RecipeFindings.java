package sopwell.stock.recipes;

import java.util.List;

/**
 * What a check of recipes found. Immutable.
 *
 * @param faults what keeps the book from taking effect
 * @param notices what may be meant
 */
public record RecipeFindings(List<RecipeFault> faults, List<RecipeNotice> notices) {
    public RecipeFindings {
        faults = List.copyOf(faults);
        notices = List.copyOf(notices);
    }
}
