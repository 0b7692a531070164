package sopwell.stock.recipes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Size;
import sopwell.stock.recipes.RecipeNotice.Kind;

/** What in a book without faults is worth a look. Not thread-safe: for one check. */
final class RecipeNotices {
    private final RecipeParts parts;
    private final Menu menu;
    private final Map<String, Set<String>> allergens = new HashMap<>();
    private final Set<RecipeNotice> found = new LinkedHashSet<>();

    private RecipeNotices(RecipeParts parts, Menu menu) {
        this.parts = parts;
        this.menu = menu;
        RecipeBook book = new RecipeBook("", parts);
        List<Ingredient> upward = new ArrayList<>(book.downward());
        Collections.reverse(upward);
        for (Ingredient one : upward) {
            Set<String> all = new LinkedHashSet<>(one.allergens());
            List<Recipe.Input> inputs = book.recipe(one.id()).map(Recipe::inputs).orElse(List.of());
            inputs.forEach(input -> all.addAll(allergens.get(input.ingredient())));
            allergens.put(one.id(), all);
        }
    }

    static List<RecipeNotice> of(RecipeParts parts, Menu menu) {
        RecipeNotices notices = new RecipeNotices(parts, menu);
        notices.ingredients();
        notices.items();
        notices.uses();
        return List.copyOf(notices.found);
    }

    private void add(Kind kind, String... args) {
        found.add(new RecipeNotice(kind, List.of(args)));
    }

    private void ingredients() {
        Set<String> taken = new HashSet<>();
        parts.uses().forEach(use -> taken.add(use.ingredient()));
        parts.recipes().forEach(r -> r.inputs().forEach(input -> taken.add(input.ingredient())));
        for (Ingredient one : parts.ingredients()) {
            if (!taken.contains(one.id())) {
                add(Kind.UNUSED, one.id());
            }
            int lead = one.supply().map(Supply::leadDays).orElse(0);
            if (lead > Limits.LEAD_DAYS_USUAL_MAX) {
                add(Kind.LONG_LEAD, one.id(), Integer.toString(lead));
            }
        }
    }

    private void items() {
        for (Item item : menu.items()) {
            List<Use> own =
                    parts.uses().stream().filter(use -> use.item().equals(item.id())).toList();
            if (own.isEmpty()) {
                add(Kind.ITEM_TAKES_NOTHING, item.id());
            }
            sizes(item, own.stream().filter(use -> use.option().isEmpty()).toList());
        }
    }

    /** A size that takes fewer kinds of things than another was probably forgotten somewhere. */
    private void sizes(Item item, List<Use> own) {
        Map<String, Long> kinds = new LinkedHashMap<>();
        for (Size size : item.sizes()) {
            kinds.put(
                    size.id(),
                    own.stream()
                            .filter(use -> use.size().isEmpty() || use.size().equals(size.id()))
                            .map(Use::ingredient)
                            .distinct()
                            .count());
        }
        long most = kinds.values().stream().max(Comparator.naturalOrder()).orElse(0L);
        kinds.forEach(
                (size, count) -> {
                    if (count < most) {
                        add(Kind.SIZE_LEFT_OUT, item.id(), size);
                    }
                });
    }

    /** Guests are told what the menu names; what it does not name, nobody tells them. */
    private void uses() {
        for (Use use : parts.uses()) {
            if (use.isPercent()) {
                continue;
            }
            List<String> named = new ArrayList<>();
            if (!use.item().isEmpty()) {
                named.addAll(menu.item(use.item()).allergens());
            }
            if (!use.option().isEmpty()) {
                named.addAll(menu.option(use.option()).allergens());
            }
            String what = use.option().isEmpty() ? use.item() : use.option();
            for (String allergen : allergens.get(use.ingredient())) {
                if (!named.contains(allergen)) {
                    add(Kind.ALLERGEN_NOT_NAMED, what, allergen, use.ingredient());
                }
            }
        }
    }
}
