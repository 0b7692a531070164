package sopwell.demo;

import java.util.ArrayList;
import java.util.List;
import sopwell.stock.larder.LarderCommand.Count;
import sopwell.stock.larder.TypedAmount;
import sopwell.stock.recipes.RecipeBook;

/** What stands on the demo's shelves, some of them full and some low; invented. Stateless. */
final class DemoCounts {
    private DemoCounts() {}

    /** A count of each ingredient that the recipes know, in the order of a walk past them. */
    static List<Count> of(RecipeBook recipes) {
        List<Count> counts = new ArrayList<>();
        for (String line : DemoCalls.lines("/demo/counts.txt")) {
            String[] words = line.split(" ", -1);
            if (recipes.hasIngredient(words[0])) {
                counts.add(new Count(new TypedAmount(words[0], words[1], words[2])));
            }
        }
        return counts;
    }
}
