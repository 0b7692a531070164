package sopwell.storage;

import java.io.IOException;
import sopwell.menu.Faults;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.stock.recipes.RecipeParts;

/**
 * The written form of recipe events, version 2; in version 1 a shelf had one name for both
 * languages. Stateless.
 */
final class RecipeBodies {
    private RecipeBodies() {}

    static void write(BodyWriter body, RecipeEvent event) throws IOException {
        RecipeBook book = ((RecipeEvent.RecipesAdopted) event).book();
        body.text("revision", book.revision());
        body.raw("recipes", RecipeWriter.tree(book.parts()).toString());
    }

    static RecipeEvent read(BodyReader body) throws IOException {
        String revision = body.text("revision");
        Faults faults = new Faults();
        RecipeParts parts =
                RecipeReader.trusted(JsonTree.rest(body.inner("recipes"), faults), faults);
        body.afterInner();
        return new RecipeEvent.RecipesAdopted(new RecipeBook(revision, parts));
    }
}
