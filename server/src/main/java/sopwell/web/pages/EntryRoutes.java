package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.menu.Menu;
import sopwell.orders.Reason;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeParts;
import sopwell.web.Reply;
import sopwell.web.T;

/**
 * Ingredients and recipes added, changed as a whole, and taken out of the book; the kitchen's
 * places and hours. Thread-safe.
 */
final class EntryRoutes {
    private static final String RECIPES = "/recipes";

    /** So many rows come with one press. */
    private static final int ROWS_MORE = 3;

    private final PageContext context;
    private final PageHandling handling;

    EntryRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(RECIPES + "/new", handling.handler(ask -> begin(ask, "")));
        routes.post(RECIPES + "/new", handling.handler(ask -> save(ask, "")));
        routes.get(RECIPES + "/kitchen", handling.handler(this::kitchen));
        routes.post(RECIPES + "/kitchen", handling.handler(this::saveKitchen));
        String all = RECIPES + "/{ingredient}/all";
        routes.get(all, handling.handler(ask -> begin(ask, ask.in("ingredient"))));
        routes.post(all, handling.handler(ask -> save(ask, ask.in("ingredient"))));
        routes.post(RECIPES + "/{ingredient}/retired", handling.handler(this::retire));
    }

    private RecipeBook book() throws PageHandling.Interrupted {
        return PageHandling.await(context.follower().ask(Stand::recipes));
    }

    private Menu menu() {
        return context.follower().menu();
    }

    private Reply unknown(Ask ask) {
        T t = ask.screen().t();
        return handling.sentence(404, t.of("recipes.unknown", ask.in("ingredient")), ask);
    }

    /** A form as it is shown: of what, with what in it, and what is said. */
    private record Form(String id, RecipeBook book, Map<String, String> typed, List<String> said) {}

    private Reply begin(Ask ask, String id) throws PageHandling.Interrupted {
        RecipeBook book = book();
        if (!id.isEmpty() && !book.hasIngredient(id)) {
            return unknown(ask);
        }
        Map<String, String> typed = id.isEmpty() ? Map.of() : EntryFields.of(book, id);
        return page(ask, 200, new Form(id, book, typed, List.of()), Map.of());
    }

    private Reply page(Ask ask, int status, Form form, Map<String, String> faults) {
        T t = ask.screen().t();
        boolean isNew = form.id().isEmpty();
        String title =
                isNew ? t.get("entry.new") : t.local(form.book().ingredient(form.id()).name());
        List<EntryGroup> groups =
                new EntryForm(form.book(), menu(), t, form.typed(), faults).groups(form.id());
        String path = isNew ? RECIPES + "/new" : RECIPES + "/" + form.id() + "/all";
        return page(ask, status, new EntryPage(title, path, groups, faults, form.said()), form);
    }

    private Reply page(Ask ask, int status, EntryPage page, Form form) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("page", page);
        params.put("revision", form.book().revision());
        params.put("key", context.keys().get());
        return PageHandling.html(status, context.pages().render("recipes/entry", params));
    }

    /** More rows of a group: nothing is saved. Empty when that was not what was pressed. */
    private static Map<String, String> more(Ask ask) {
        Map<String, String> typed = new LinkedHashMap<>(ask.fields());
        String rows = typed.getOrDefault(ask.field("more"), "");
        int have = rows.matches("[0-9]{1,3}") ? Integer.parseInt(rows) : 0;
        typed.put(ask.field("more"), Integer.toString(have + ROWS_MORE));
        return typed;
    }

    private Reply save(Ask ask, String id) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        RecipeBook before = book();
        if (!id.isEmpty() && !before.hasIngredient(id)) {
            return unknown(ask);
        }
        if (!ask.field("more").isEmpty()) {
            return page(ask, 200, new Form(id, before, more(ask), List.of()), Map.of());
        }
        Map<String, String> typed = ask.fields();
        EntryParts parts = new EntryParts(before, id, typed);
        if (parts.isThere()) {
            return saved(parts.id());
        }
        Map<String, RecipeFault> faults = parts.faults(menu());
        if (!faults.isEmpty()) {
            Form form = new Form(id, before, typed, List.of(t.get("recipes.faults")));
            return page(ask, 422, form, RecipePage.told(faults, t));
        }
        return adopt(
                ask,
                parts.parts(),
                () -> saved(parts.id()),
                (status, said) -> page(ask, status, now(id, typed, said, t), Map.of()));
    }

    private static Reply saved(String id) {
        return PageHandling.redirect(RECIPES + "/" + id + "?saved=1");
    }

    /** The book as it is now, what was typed, and what saving again would change. */
    private Form now(String id, Map<String, String> typed, String why, T t)
            throws PageHandling.Interrupted {
        RecipeBook now = book();
        boolean gone = !id.isEmpty() && !now.hasIngredient(id);
        List<String> said = new ArrayList<>(List.of(why));
        if (!id.isEmpty() && !gone) {
            List<EntryGroup> is =
                    new EntryForm(now, menu(), t, EntryFields.of(now, id), Map.of()).groups(id);
            List<EntryGroup> would = new EntryForm(now, menu(), t, typed, Map.of()).groups(id);
            said.addAll(EntryPage.changes(is, would, t));
        }
        return new Form(gone ? "" : id, now, typed, said);
    }

    /** What is shown when it was saved. */
    @FunctionalInterface
    private interface Saved {
        Reply reply() throws PageHandling.Interrupted;
    }

    private Reply adopt(Ask ask, RecipeParts parts, Saved saved, PageHandling.NotDone notDone)
            throws PageHandling.Interrupted {
        StandCommand command =
                new StandCommand.AdoptRecipes(
                        context.recipes().book().apply(parts), ask.field("revision"));
        return handling.press(
                ask,
                command,
                events -> saved.reply(),
                (status, why) -> notDone.say(status, meanwhile(status, why, ask.screen().t())));
    }

    /** Whoever was late is told in the page's own words. */
    private static String meanwhile(int status, String why, T t) {
        return status == PageRoutes.status(Reason.RECIPES_CHANGED)
                ? t.get("recipes.meanwhile")
                : why;
    }

    private Reply retire(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String id = ask.in("ingredient");
        RecipeBook book = book();
        if (!book.hasIngredient(id)) {
            // Pressed twice, it is gone as it was wished.
            return ask.hasKey() && id.matches("[a-z0-9-]+")
                    ? PageHandling.redirect(RECIPES + "?retired=" + id)
                    : unknown(ask);
        }
        RecipeNames names = new RecipeNames(book, menu(), t);
        List<String> takers = names.takers(id);
        if (!takers.isEmpty()) {
            String text = t.of("recipes.retire.used", names.ingredient(id), t.list(takers));
            return handling.sentence(422, text, ask);
        }
        RecipeParts parts =
                new RecipeParts(
                        book.ingredients().stream().filter(one -> !one.id().equals(id)).toList(),
                        book.recipes().stream().filter(one -> !one.makes().equals(id)).toList(),
                        book.uses(),
                        book.resources(),
                        book.hours());
        return adopt(
                ask,
                parts,
                () -> PageHandling.redirect(RECIPES + "?retired=" + id),
                (status, said) -> handling.sentence(status, said, ask));
    }

    private Reply kitchen(Ask ask) throws PageHandling.Interrupted {
        RecipeBook book = book();
        Form form = new Form("", book, KitchenForm.of(book), List.of());
        return kitchen(ask, 200, form, Map.of());
    }

    private Reply kitchen(Ask ask, int status, Form form, Map<String, String> faults) {
        T t = ask.screen().t();
        List<EntryGroup> groups = KitchenForm.groups(t, form.typed(), faults);
        String title = t.get("recipes.kitchen");
        EntryPage page = new EntryPage(title, RECIPES + "/kitchen", groups, faults, form.said());
        return page(ask, status, page, form);
    }

    private Reply saveKitchen(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        RecipeBook before = book();
        if (!ask.field("more").isEmpty()) {
            return kitchen(ask, 200, new Form("", before, more(ask), List.of()), Map.of());
        }
        Map<String, String> typed = ask.fields();
        KitchenForm form = new KitchenForm(before, typed);
        List<String> orphans = form.orphans(new RecipeNames(before, menu(), t));
        List<String> said = new ArrayList<>(List.of(t.get("recipes.faults")));
        if (!orphans.isEmpty()) {
            said.add(t.of("recipes.kitchen.used", t.list(orphans)));
            return kitchen(ask, 422, new Form("", before, typed, said), Map.of());
        }
        Map<String, RecipeFault> faults = form.faults(menu());
        if (!faults.isEmpty()) {
            Form shown = new Form("", before, typed, said);
            return kitchen(ask, 422, shown, RecipePage.told(faults, t));
        }
        return adopt(
                ask,
                form.parts(),
                () -> PageHandling.redirect(RECIPES + "?saved=1"),
                (status, why) -> {
                    RecipeBook now = book();
                    List<String> changes = new ArrayList<>(List.of(why));
                    changes.addAll(
                            EntryPage.changes(
                                    KitchenForm.groups(t, KitchenForm.of(now), Map.of()),
                                    KitchenForm.groups(t, typed, Map.of()),
                                    t));
                    return kitchen(ask, status, new Form("", now, typed, changes), Map.of());
                });
    }
}
