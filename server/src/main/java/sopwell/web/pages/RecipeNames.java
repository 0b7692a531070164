package sopwell.web.pages;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import sopwell.menu.Menu;
import sopwell.menu.Size;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeNotice;
import sopwell.stock.recipes.Use;
import sopwell.web.ProblemKind;
import sopwell.web.T;

/** What recipes' ids are called. Immutable. */
final class RecipeNames {
    private final RecipeBook book;
    private final Menu menu;
    private final T t;

    RecipeNames(RecipeBook book, Menu menu, T t) {
        this.book = book;
        this.menu = menu;
        this.t = t;
    }

    /** A weekday in the screen's language. */
    static String day(DayOfWeek day, T t) {
        return day.getDisplayName(TextStyle.SHORT, Locale.forLanguageTag(t.code()));
    }

    String ingredient(String id) {
        return book.hasIngredient(id) ? t.local(book.ingredient(id).name()) : id;
    }

    /** What a use is about: "beef, large", "beef, dipped", "dipped". */
    String subject(Use use) {
        List<String> parts =
                List.of(item(use.item()), size(use.item(), use.size()), option(use.option()));
        return String.join(", ", parts.stream().filter(part -> !part.isEmpty()).toList());
    }

    /** Whether the menu still sells what a use is about. */
    boolean isSold(Use use) {
        return use.item().isEmpty() || menu.hasItem(use.item());
    }

    /** A notice as a sentence; ids that mean something are called by their names. */
    String notice(RecipeNotice notice) {
        Object[] args = notice.args().stream().map(this::any).toArray();
        return t.of("recipes.notice." + ProblemKind.code(notice.kind()), args);
    }

    private String any(String id) {
        if (book.hasIngredient(id)) {
            return ingredient(id);
        }
        if (menu.hasItem(id)) {
            return item(id);
        }
        return menu.hasOption(id) ? option(id) : id;
    }

    private String item(String id) {
        return menu.hasItem(id) ? t.local(menu.item(id).name()) : id;
    }

    private String size(String item, String id) {
        if (!menu.hasItem(item)) {
            return id;
        }
        return menu.item(item).size(id).map(Size::name).map(t::local).orElse(id);
    }

    private String option(String id) {
        return menu.hasOption(id) ? t.local(menu.option(id).name()) : id;
    }

    /** Minutes as people say them: 45 min, 3 h, 1 h 15 min. */
    String minutes(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        if (hours == 0) {
            return t.of("recipes.minutes", rest);
        }
        return rest == 0
                ? t.of("recipes.hours", hours)
                : t.of("recipes.hours-minutes", hours, rest);
    }

    /** What takes an ingredient: what is sold, and what is made. */
    List<String> takers(String ingredient) {
        Set<String> takers = new LinkedHashSet<>();
        book.uses().stream()
                .filter(use -> use.ingredient().equals(ingredient))
                .map(this::subject)
                .forEach(takers::add);
        book.recipes().stream()
                .filter(
                        recipe ->
                                recipe.inputs().stream()
                                        .anyMatch(in -> in.ingredient().equals(ingredient)))
                .map(recipe -> ingredient(recipe.makes()))
                .forEach(takers::add);
        return List.copyOf(takers);
    }

    /** Weekdays in a row. */
    String days(List<DayOfWeek> days) {
        return t.list(
                Arrays.stream(DayOfWeek.values())
                        .filter(days::contains)
                        .map(day -> day(day, t))
                        .toList());
    }
}
