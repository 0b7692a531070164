package sopwell.stock.recipes;

import sopwell.log.Event;

/** What happens to the book of recipes. */
public sealed interface RecipeEvent extends Event {
    /** A checked book takes effect; the whole of it stands in the log. */
    record RecipesAdopted(RecipeBook book) implements RecipeEvent {}
}
