package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.orders.Safety;
import sopwell.prep.MadePlan;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.plan.Bound;
import sopwell.prep.plan.Bound.Kind;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Resource;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;
import sopwell.web.Texts;

/** The reasons of a start, in words. */
class PrepBoundsTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant NINE = Instant.parse("2026-11-27T15:00:00Z");
    private static final Instant TEN = Instant.parse("2026-11-27T16:00:00Z");
    private static final Instant ELEVEN = Instant.parse("2026-11-27T17:00:00Z");

    private static List<String> said(Lang lang, String makes, Bound... bounds) {
        Task jus = task("jus", "drippings", TEN, ELEVEN, List.of());
        Task drippings = task("drippings", "bones", NINE, TEN, List.of(bounds));
        PrepPlan plan = new PrepPlan(List.of(drippings, jus), List.of(), List.of());
        MadePlan made =
                new MadePlan(
                        NINE,
                        CHICAGO,
                        book(),
                        List.of(),
                        Map.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        Set.of(),
                        PrepTerms.USUAL,
                        new MadePlan.Basis(
                                MadePlan.Ground.DAYS, 0, Optional.empty(), Optional.empty(), 0),
                        plan);
        StockWords words = new StockWords(Texts.load().in(lang), CHICAGO, Safety.USUAL);
        PrepView view = new PrepView(words, made, LocalDate.of(2026, 11, 27), 1);
        return new PrepBounds(view).of(makes.equals("jus") ? jus : drippings);
    }

    private static Task task(
            String makes, String takes, Instant from, Instant until, List<Bound> bounds) {
        LocalDate day = LocalDate.of(2026, 11, 27);
        return new Task(
                makes,
                1,
                Map.of(takes, BigDecimal.TEN),
                BigDecimal.TEN,
                List.of(new StepTime("simmer", Optional.of("stove"), from, until)),
                Optional.empty(),
                new PrepPlan.Why(until, day, day, 1, 1, 1, .9, 1, 0, 1, 0, 2, 0),
                bounds);
    }

    private static RecipeBook book() {
        return new RecipeBook(
                "test",
                new RecipeParts(
                        List.of(keep("jus"), keep("drippings"), keep("bones")),
                        List.of(make("jus", "drippings"), make("drippings", "bones")),
                        List.of(),
                        List.of(new Resource("stove", text("stove"), 1, 0)),
                        new KitchenHours(Map.of())));
    }

    private static LocalText text(String word) {
        return new LocalText(word, word);
    }

    private static Ingredient keep(String id) {
        return new Ingredient(
                id,
                text(id),
                Unit.G,
                List.of(),
                Optional.empty(),
                0,
                List.of(),
                new Ingredient.Place(text(""), 0),
                List.of());
    }

    private static Recipe make(String makes, String of) {
        PrepStep simmer =
                new PrepStep(
                        "simmer",
                        text("simmer"),
                        60,
                        0,
                        0,
                        Optional.of("stove"),
                        1,
                        false,
                        false,
                        0,
                        Watch.NONE);
        return new Recipe(
                makes,
                List.of(new Recipe.Input(of, BigDecimal.TEN)),
                List.of(),
                Optional.of(BigDecimal.TEN),
                new Recipe.Lot(text("pot"), 1, 1),
                List.of(simmer),
                "simmer");
    }

    @Test
    void whatAnotherTaskTakesSaysForWhichItIs() {
        assertEquals(
                List.of(
                        "It must be ready Fri, Nov 27 10:00: jus is started then and takes"
                                + " drippings.",
                        "So it starts Fri, Nov 27 9:00 at the latest."),
                said(Lang.EN, "drippings"));
        assertEquals(
                "It must be ready Fri, Nov 27 11:00, for what is sold that day.",
                said(Lang.EN, "jus").get(0));
    }

    @Test
    void eachKindIsSaidWithItsTimesInBothLanguages() {
        Bound oven = new Bound(Kind.RESOURCE, "simmer", "stove", TEN, ELEVEN, TEN);
        assertEquals(
                "simmer: the stove is taken from Fri, Nov 27 10:00 to Fri, Nov 27 11:00; without"
                        + " that it could start Fri, Nov 27 10:00.",
                said(Lang.EN, "drippings", oven).get(1));
        Bound wait = new Bound(Kind.WAIT, "simmer", "", NINE, ELEVEN, NINE);
        assertEquals(
                "simmer takes 2 h 00 min, from Fri, Nov 27 9:00 to Fri, Nov 27 11:00, with nobody"
                        + " at it.",
                said(Lang.EN, "drippings", wait).get(1));
        for (Kind kind : Kind.values()) {
            Bound bound = new Bound(kind, "simmer", "stove", TEN, ELEVEN, TEN);
            String english = said(Lang.EN, "drippings", bound).get(1);
            String spanish = said(Lang.ES, "drippings", bound).get(1);
            assertEquals(-1, english.indexOf('{'), english);
            assertEquals(-1, spanish.indexOf('{'), spanish);
            assertEquals(false, english.equals(spanish));
        }
    }
}
