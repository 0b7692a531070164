package sopwell.stock.recipes;

import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;

/** Whether a book of recipes may take effect. Stateless and pure. */
public final class RecipeRules {
    private RecipeRules() {}

    /**
     * Lets a checked book follow the one that it was made from, and no other: what somebody else
     * changed meanwhile is not lost.
     *
     * @param expected the revision that it was made from
     */
    public static Decision decide(RecipeBook inForce, RecipeBook book, String expected) {
        if (!inForce.revision().equals(expected)) {
            return Decision.refused(Reason.RECIPES_CHANGED, inForce.revision());
        }
        return inForce.revision().equals(book.revision())
                ? Decision.accepted()
                : Decision.accepted(new RecipesAdopted(book));
    }
}
