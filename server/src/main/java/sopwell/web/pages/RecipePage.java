package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.MenuFault;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.RecipeFault;
import sopwell.web.RecipeFaults;
import sopwell.web.T;

/**
 * The page on which one ingredient is edited. Immutable.
 *
 * @param one the ingredient
 * @param isMade whether it has a recipe
 * @param groups the fields by their groups, in the page's order
 * @param faults what is wrong, by field
 * @param revision the book that it was drawn from
 * @param key for the next change
 * @param said what came of the last change, line by line
 */
public record RecipePage(
        Ingredient one,
        boolean isMade,
        Map<String, List<RecipeForm.Field>> groups,
        Map<String, String> faults,
        String revision,
        String key,
        List<String> said) {

    /** Fields by their groups, with what was typed in them. */
    static Map<String, List<RecipeForm.Field>> grouped(
            List<RecipeForm.Field> fields, Map<String, String> typed) {
        Map<String, List<RecipeForm.Field>> groups = new LinkedHashMap<>();
        for (RecipeForm.Field field : fields) {
            boolean box = field.group().equals("days") && typed.containsKey("days");
            String value = typed.getOrDefault(field.name(), box ? "" : field.value());
            groups.computeIfAbsent(field.group(), group -> new ArrayList<>())
                    .add(new RecipeForm.Field(field.name(), field.group(), field.label(), value));
        }
        return groups;
    }

    /** Each fault as a sentence that says what is wrong and what would be right. */
    static Map<String, String> told(Map<String, RecipeFault> faults, T t) {
        Map<String, String> told = new LinkedHashMap<>();
        faults.forEach(
                (field, fault) -> {
                    MenuFault one = RecipeFaults.told(fault, t);
                    told.put(field, one.wrong() + " " + one.right());
                });
        return told;
    }

    /** What is wrong with a field, or empty. */
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }

    /** A sentence that helps with a group's fields, or empty. */
    public static String hint(String group, T t) {
        return switch (group) {
            case "inputs" -> t.get("recipes.hint.amount");
            case "uses" -> t.get("recipes.hint.use");
            case "shelf" -> t.get("recipes.hint.life");
            default -> "";
        };
    }
}
