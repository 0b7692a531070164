package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.desk.Answer;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.menu.Menu;
import sopwell.orders.Refusal;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeFault;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.api.RefusalProblems;

/** Recipes: read, and edited one ingredient at a time. Thread-safe. */
final class RecipeRoutes {
    private final PageContext context;
    private final PageHandling handling;

    RecipeRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/recipes", handling.handler(this::list));
        routes.get("/recipes/{ingredient}", handling.handler(this::page));
        routes.post("/recipes/{ingredient}", handling.handler(this::save));
    }

    private RecipeBook book() throws PageHandling.Interrupted {
        return PageHandling.await(context.follower().ask(Stand::recipes));
    }

    private Reply list(Ask ask) throws PageHandling.Interrupted {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        RecipeBook book = book();
        params.put("view", new RecipeView(book, menu(), ask.screen().t()));
        params.put("said", said(book, ask));
        return PageHandling.html(200, context.pages().render("recipes/list", params));
    }

    /** What came of a press on another page that led here. */
    private static String said(RecipeBook book, Ask ask) {
        T t = ask.screen().t();
        if (!ask.in("saved").isEmpty()) {
            return t.get("recipes.saved");
        }
        String retired = ask.in("retired");
        return retired.matches("[a-z0-9-]+") && !book.hasIngredient(retired)
                ? t.of("recipes.retired", retired)
                : "";
    }

    private Reply page(Ask ask) throws PageHandling.Interrupted {
        RecipeBook book = book();
        String id = ask.in("ingredient");
        if (!book.hasIngredient(id)) {
            return unknown(ask);
        }
        List<String> said = new ArrayList<>();
        if (!ask.in("saved").isEmpty()) {
            T t = ask.screen().t();
            said.add(t.get("recipes.saved"));
            said.addAll(new RecipeView(book, menu(), t).notices(id));
        }
        return page(ask, 200, book, new Shown(Map.of(), Map.of(), said));
    }

    private Reply unknown(Ask ask) {
        T t = ask.screen().t();
        return handling.sentence(404, t.of("recipes.unknown", ask.in("ingredient")), ask);
    }

    /** What of the last press is still shown: what was typed, what is wrong, what is said. */
    private record Shown(
            Map<String, String> typed, Map<String, RecipeFault> faults, List<String> said) {}

    private Reply page(Ask ask, int status, RecipeBook book, Shown shown) {
        T t = ask.screen().t();
        String id = ask.in("ingredient");
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("view", new RecipeView(book, menu(), t));
        params.put(
                "page",
                new RecipePage(
                        book.ingredient(id),
                        book.recipe(id).isPresent(),
                        RecipePage.grouped(RecipeForm.of(book, menu(), id, t), shown.typed()),
                        RecipePage.told(shown.faults(), t),
                        book.revision(),
                        context.keys().get(),
                        shown.said()));
        params.put("typed", shown.typed());
        params.put(
                "cautions",
                new CautionView(t, context.settings().safety(), book.ingredient(id).cautions()));
        return PageHandling.html(status, context.pages().render("recipes/page", params));
    }

    private Reply save(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String id = ask.in("ingredient");
        RecipeBook before = book();
        if (!before.hasIngredient(id)) {
            return unknown(ask);
        }
        if (!ask.hasKey()) {
            return handling.sentence(400, t.get("api.key-missing"), ask);
        }
        Map<String, String> typed = ask.fields();
        RecipeEdit edit = new RecipeEdit(before, id, typed);
        Map<String, RecipeFault> faults = edit.faults(menu());
        if (!faults.isEmpty()) {
            return page(
                    ask, 422, before, new Shown(typed, faults, List.of(t.get("recipes.faults"))));
        }
        StandCommand command =
                new StandCommand.AdoptRecipes(
                        context.recipes().book().apply(edit.parts()), ask.field("revision"));
        Answer answer =
                PageHandling.await(
                        context.desk().submit(ask.key(), ask.fingerprint(), ask.by(command)));
        return switch (answer.outcome()) {
            case DONE, REPEATED ->
                    page(ask, 200, book(), new Shown(Map.of(), Map.of(), said(before, id, t)));
            case REFUSED -> {
                Refusal refusal = answer.refusal().orElseThrow();
                yield RefusalProblems.isForLater(refusal.reason())
                        ? handling.refused(refusal, ask)
                        : meanwhile(ask, typed);
            }
            case KEY_REUSED -> handling.sentence(422, t.get("send.key"), ask);
        };
    }

    /** Somebody else was first: tells what saving again would change, theirs too. */
    private Reply meanwhile(Ask ask, Map<String, String> typed) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String id = ask.in("ingredient");
        RecipeBook now = book();
        if (!now.hasIngredient(id)) {
            return unknown(ask);
        }
        List<RecipeForm.Field> fields = RecipeForm.of(now, menu(), id, t);
        Map<String, String> values = new LinkedHashMap<>();
        fields.forEach(field -> values.put(field.name(), field.value()));
        List<String> said = new ArrayList<>();
        said.add(t.get("recipes.meanwhile"));
        for (List<RecipeForm.Field> group : RecipePage.grouped(fields, typed).values()) {
            for (RecipeForm.Field field : group) {
                String value = values.get(field.name());
                if (!value.equals(field.value())) {
                    String is = word(field.value(), t);
                    said.add(t.of("recipes.change", field.label(), word(value, t), is));
                }
            }
        }
        return page(ask, 412, now, new Shown(typed, Map.of(), said));
    }

    /** What is otherwise now than it was. */
    private List<String> said(RecipeBook before, String id, T t) throws PageHandling.Interrupted {
        Map<String, RecipeForm.Field> old = new LinkedHashMap<>();
        RecipeForm.of(before, menu(), id, t).forEach(field -> old.put(field.name(), field));
        List<String> changes = new ArrayList<>();
        String nothing = t.get("recipes.field.nothing");
        for (RecipeForm.Field now : RecipeForm.of(book(), menu(), id, t)) {
            RecipeForm.Field was = old.remove(now.name());
            String value = was == null ? nothing : was.value();
            if (!value.equals(now.value())) {
                String is = word(now.value(), t);
                changes.add(t.of("recipes.change", now.label(), word(value, t), is));
            }
        }
        old.values()
                .forEach(
                        was ->
                                changes.add(
                                        t.of("recipes.change", was.label(), was.value(), nothing)));
        List<String> said = new ArrayList<>();
        said.add(t.get(changes.isEmpty() ? "recipes.unchanged" : "recipes.saved"));
        said.addAll(changes);
        return said;
    }

    /** A delivery day's box says whether it is ticked. */
    private static String word(String value, T t) {
        return value.isEmpty() ? t.get("recipes.field.nothing") : value.equals("on") ? "✓" : value;
    }

    private Menu menu() {
        return context.follower().menu();
    }
}
