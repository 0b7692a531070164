package sopwell.prep;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sopwell.prep.calendar.KitchenTerms;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Resource;

/** The book of recipes with what the owner has set of the kitchen. Stateless. */
final class SetBook {
    private static final int LAST_MINUTE = 1_439;

    private SetBook() {}

    /** The book with the kitchen's hours as they are set; the book itself when none are. */
    static RecipeBook of(RecipeBook book, KitchenTerms terms) {
        if (book.isEmpty() || terms.hours().isEmpty()) {
            return book;
        }
        Map<DayOfWeek, KitchenHours.Span> days = new EnumMap<>(DayOfWeek.class);
        terms.hours()
                .forEach(
                        (day, hours) ->
                                days.put(day, new KitchenHours.Span(from(hours), to(hours))));
        RecipeParts parts = book.parts();
        return new RecipeBook(
                book.revision(),
                new RecipeParts(
                        parts.ingredients(),
                        parts.recipes(),
                        parts.uses(),
                        parts.resources(),
                        new KitchenHours(days)));
    }

    private static LocalTime from(OpenHours hours) {
        return LocalTime.MIDNIGHT.plusMinutes(hours.fromMinute());
    }

    private static LocalTime to(OpenHours hours) {
        return LocalTime.MIDNIGHT.plusMinutes(Math.min(LAST_MINUTE, hours.toMinute()));
    }

    /** What the owner has set to be out of use; resources that the book has no more say nothing. */
    static List<Busy> out(RecipeBook book, PrepAsk ask) {
        List<Busy> busy = new ArrayList<>();
        for (KitchenTerms.Out one : ask.terms().kitchen().out()) {
            for (Resource resource : book.resources()) {
                if (resource.id().equals(one.resource())) {
                    int slots = one.slots() == 0 ? resource.slots() : one.slots();
                    Instant from = one.from().atZone(ask.when().zone()).toInstant();
                    Instant until = one.until().atZone(ask.when().zone()).toInstant();
                    // In the hour that a spring night leaves out, nothing is out.
                    if (from.isBefore(until)) {
                        int places = Math.min(slots, resource.slots());
                        busy.add(new Busy(one.resource(), places, from, until));
                    }
                }
            }
        }
        return busy;
    }
}
