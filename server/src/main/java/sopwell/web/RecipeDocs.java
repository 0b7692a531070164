package sopwell.web;

import java.util.function.BiFunction;
import java.util.function.Function;
import sopwell.menu.Menu;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.RecipeReading;

/**
 * Books of recipes as documents. Immutable; everything in it is thread-safe.
 *
 * @param json writes a book
 * @param read reads and checks one beside a menu
 * @param book makes a book of checked parts, under the revision of its content
 */
public record RecipeDocs(
        Function<RecipeBook, String> json,
        BiFunction<byte[], Menu, RecipeReading> read,
        Function<RecipeParts, RecipeBook> book) {}
