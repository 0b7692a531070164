package sopwell.stock.recipes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far down the recipes each ingredient stands: 0 when nothing is made of it, else one more than
 * the lowest thing that is made of it. Not thread-safe: for one reckoning.
 */
final class Levels {
    private final Map<String, List<String>> madeInto = new HashMap<>();
    private final Map<String, Integer> levels = new HashMap<>();
    private final List<String> path = new ArrayList<>();

    private Levels(RecipeParts parts) {
        for (Recipe recipe : parts.recipes()) {
            for (Recipe.Input input : recipe.inputs()) {
                madeInto.computeIfAbsent(input.ingredient(), id -> new ArrayList<>())
                        .add(recipe.makes());
            }
        }
    }

    /** The level of every ingredient. Recipes that go round in a circle are a caller's fault. */
    static Map<String, Integer> of(RecipeParts parts) {
        Levels levels = new Levels(parts);
        parts.ingredients().forEach(one -> levels.visit(one.id()));
        return levels.levels;
    }

    /**
     * The first circle of recipes, if there is one: each ingredient goes into the next, and the
     * last is the first again.
     */
    static Optional<List<String>> circle(RecipeParts parts) {
        Levels levels = new Levels(parts);
        for (Recipe recipe : parts.recipes()) {
            Optional<List<String>> circle = levels.circleFrom(recipe.makes());
            if (circle.isPresent()) {
                return circle;
            }
        }
        return Optional.empty();
    }

    private int visit(String id) {
        Integer known = levels.get(id);
        if (known != null) {
            return known;
        }
        int level = 0;
        for (String made : madeInto.getOrDefault(id, List.of())) {
            level = Math.max(level, visit(made) + 1);
        }
        levels.put(id, level);
        return level;
    }

    private Optional<List<String>> circleFrom(String id) {
        int seen = path.indexOf(id);
        if (seen >= 0) {
            List<String> circle = new ArrayList<>(path.subList(seen, path.size()));
            circle.add(id);
            return Optional.of(circle);
        }
        if (levels.containsKey(id)) {
            return Optional.empty();
        }
        path.add(id);
        for (String made : madeInto.getOrDefault(id, List.of())) {
            Optional<List<String>> circle = circleFrom(made);
            if (circle.isPresent()) {
                return circle;
            }
        }
        path.remove(path.size() - 1);
        levels.put(id, 0);
        return Optional.empty();
    }
}
