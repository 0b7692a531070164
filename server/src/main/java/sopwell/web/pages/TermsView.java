package sopwell.web.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sopwell.prep.MadePlan;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Resource;
import sopwell.web.T;

/**
 * What the owner has set for the plan, in one language. Immutable.
 *
 * @param book in force, as it was written
 * @param plan as it stands now, for what it works out by itself
 * @param typed what was just typed and is wrong, by field; stays where it was
 */
public record TermsView(
        StockWords words,
        OwnerTerms terms,
        RecipeBook book,
        MadePlan plan,
        Map<String, String> typed) {
    public TermsView {
        typed = Map.copyOf(typed);
    }

    /** The texts. */
    public T t() {
        return words.t();
    }

    /** What stands in a field: what was typed wrong in this form, else what is set. */
    public String value(String form, String field, String set) {
        return form.equals(typed.get("do")) ? typed.getOrDefault(field, set) : set;
    }

    /** What a guest who goes without costs, as it is typed. */
    public String goodwill() {
        return dollars(terms.numbers().goodwillCents());
    }

    private static String dollars(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }

    /** How many hands the owner has set; empty for what the book says. */
    public String hands() {
        int hands = terms.numbers().hands();
        return hands == 0 ? "" : Integer.toString(hands);
    }

    /** How many hands there are by the book, or by Sopwell's own choice. */
    public String bookHands() {
        return t().of("terms.hands.book", PrepTerms.handsOf(book));
    }

    /** The stand's first day as it is typed; empty when it is open. */
    public String opensOn() {
        return terms.kitchen().opensOn().map(LocalDate::toString).orElse("");
    }

    /** Whether the kitchen's hours are the book's own. */
    public boolean isByBook() {
        return terms.kitchen().hours().isEmpty();
    }

    /** A weekday's name. */
    public String weekday(DayOfWeek day) {
        return t().date(plan.today().with(day), "date.weekday-long");
    }

    /** When somebody comes on a weekday, as it is typed. */
    public String from(DayOfWeek day) {
        return isByBook()
                ? book.hours().on(day).map(KitchenHours.Span::from).map(Object::toString).orElse("")
                : Optional.ofNullable(terms.kitchen().hours().get(day))
                        .map(hours -> hours.from())
                        .orElse("");
    }

    /** When the last one leaves on a weekday, as it is typed. */
    public String to(DayOfWeek day) {
        return isByBook()
                ? book.hours().on(day).map(KitchenHours.Span::to).map(Object::toString).orElse("")
                : Optional.ofNullable(terms.kitchen().hours().get(day))
                        .map(hours -> hours.to())
                        .orElse("");
    }

    /** The dates on which nobody comes, from today on. */
    public List<LocalDate> away() {
        return List.copyOf(terms.kitchen().away().tailSet(plan.today()));
    }

    /** What can be out of order. */
    public List<Resource> resources() {
        return book.resources().stream().filter(one -> !PrepTerms.isHands(one)).toList();
    }

    /** An outage in words. */
    public String out(Out out) {
        String name =
                book.resources().stream()
                        .filter(one -> one.id().equals(out.resource()))
                        .map(one -> t().local(one.name()))
                        .findFirst()
                        .orElse(out.resource());
        String places =
                out.slots() == 0
                        ? t().get("terms.out.whole")
                        : t().of("terms.out.places", out.slots());
        return t().of("terms.out.line", name, places, moment(out.from()), moment(out.until()));
    }

    private String moment(LocalDateTime at) {
        return t().day(at.toLocalDate()) + " " + at.toLocalTime();
    }

    /** What is made by a recipe. */
    public List<Ingredient> made() {
        return book.recipes().stream().map(recipe -> book.ingredient(recipe.makes())).toList();
    }

    /** What is made for several days, a line each, with its id. */
    public Map<String, Integer> reviews() {
        return terms.kitchen().reviewDays();
    }

    /** A batch for several days in words. */
    public String review(String ingredient, int days) {
        return t().of("terms.review.line", name(ingredient), days);
    }

    private String name(String id) {
        return book.hasIngredient(id) ? t().local(book.ingredient(id).name()) : id;
    }

    /**
     * What one too few and one too many of an ingredient cost.
     *
     * @param unit what one is
     * @param shortage worked out, as it is shown in the empty field
     * @param setShort as the owner set it, empty where it is worked out
     */
    public record Each(
            String id,
            String name,
            String unit,
            String shortage,
            String waste,
            String setShort,
            String setWaste) {}

    /** What is sold, or set, by name. */
    public List<Each> each() {
        List<Each> rows = new ArrayList<>();
        for (Ingredient one : book.ingredients()) {
            Stakes stakes = plan.stakes().get(one.id());
            Optional<Cost> set = Optional.ofNullable(terms.kitchen().costs().get(one.id()));
            if (stakes != null || set.isPresent()) {
                rows.add(
                        new Each(
                                one.id(),
                                t().local(one.name()),
                                words.unit(one, sopwell.stock.larder.Measures.id(one.unit())),
                                stakes == null ? "" : cents(stakes.shortage(), one),
                                stakes == null ? "" : cents(stakes.waste(), one),
                                set.map(Cost::shortCents).map(TermsView::typed).orElse(""),
                                set.map(Cost::wasteCents).map(TermsView::typed).orElse("")));
            }
        }
        rows.sort((a, b) -> a.name().compareToIgnoreCase(b.name()));
        return rows;
    }

    private static String cents(BigDecimal base, Ingredient one) {
        return base.multiply(one.unit().inBase())
                .movePointLeft(2)
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String typed(OptionalInt cents) {
        return cents.isEmpty() ? "" : dollars(cents.getAsInt());
    }
}
