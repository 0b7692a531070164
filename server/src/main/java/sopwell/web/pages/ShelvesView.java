package sopwell.web.pages;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Caution;
import sopwell.stock.larder.Compared;
import sopwell.stock.larder.LarderLeft;
import sopwell.stock.larder.StockNow;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.web.T;

/** What is kept, shelf by shelf, in one language. Immutable. */
public record ShelvesView(StockWords words, StockNow now, long nowMs) {
    /** The texts. */
    public T t() {
        return words.t();
    }

    /** Everything by its shelf, in the order in which somebody comes by. */
    public Map<String, List<LarderLeft>> shelves() {
        Map<String, List<LarderLeft>> shelves = new LinkedHashMap<>();
        for (LarderLeft left : now.left()) {
            shelves.computeIfAbsent(shelf(left.ingredient()), key -> new ArrayList<>()).add(left);
        }
        return shelves;
    }

    /** What the shelf of an ingredient is called; empty when it has none. */
    public String shelf(Ingredient ingredient) {
        return t().local(ingredient.place().shelf());
    }

    /** What an ingredient is called. */
    public String name(Ingredient ingredient) {
        return t().local(ingredient.name());
    }

    /** What is left by the books; that it was never counted. */
    public String left(LarderLeft left) {
        return left.left()
                .map(amount -> words.amount(left.ingredient(), amount))
                .orElseGet(() -> t().get("stock.unknown"));
    }

    /** Until when it lasts at the pace of late, when that is before the kitchen closes. */
    public String runsOut(LarderLeft left) {
        return runsOutToday(left) ? t().of("stock.runs-out", words.time(left.runsOutAtMs())) : "";
    }

    /** Whether it runs out before the kitchen closes today. */
    public boolean runsOutToday(LarderLeft left) {
        ZonedDateTime here = Instant.ofEpochMilli(nowMs).atZone(words.zone());
        LocalTime closes =
                now.book()
                        .hours()
                        .on(here.getDayOfWeek())
                        .map(KitchenHours.Span::to)
                        .orElse(LocalTime.MAX);
        long closesMs = here.with(closes).toInstant().toEpochMilli();
        return left.isOutBefore(closesMs);
    }

    /** When it was counted last. */
    public String counted(LarderLeft left) {
        return left.held()
                .map(
                        held ->
                                t().day(
                                                        Instant.ofEpochMilli(held.countedAtMs())
                                                                .atZone(words.zone())
                                                                .toLocalDate())
                                        + " "
                                        + words.time(held.countedAtMs()))
                .orElse("");
    }

    /** What it was counted against today, if it was. */
    public Optional<Compared> compared(Ingredient ingredient) {
        return now.compared().stream()
                .filter(one -> one.ingredient().equals(ingredient.id()))
                .findFirst();
    }

    /** What the books said and what was there, with what is missing or too much. */
    public String compared(LarderLeft left) {
        Ingredient ingredient = left.ingredient();
        return compared(ingredient)
                .map(one -> words.difference(ingredient, one.difference()))
                .orElse("");
    }

    /** What the books have of an ingredient, said before it is counted. */
    public String expected(LarderLeft left) {
        return left.held()
                .map(
                        held ->
                                t().of(
                                                "counts.books",
                                                words.amount(left.ingredient(), held.expected())))
                .orElseGet(() -> t().get("counts.first"));
    }

    /** The ingredient with an id, or the first when there is none. */
    public Optional<LarderLeft> at(String id) {
        return now.left().stream()
                .filter(left -> left.ingredient().id().equals(id))
                .findFirst()
                .or(() -> id.isEmpty() ? now.left().stream().findFirst() : Optional.empty());
    }

    /** Which one of how many it is. */
    public String place(LarderLeft left) {
        return t().of("counts.place", now.left().indexOf(left) + 1, now.left().size());
    }

    /** The id of the one after it, or empty at the end of the walk. */
    public String after(LarderLeft left) {
        int next = now.left().indexOf(left) + 1;
        return next < now.left().size() ? now.left().get(next).ingredient().id() : "";
    }

    /** The id of the one before it, or empty at the start. */
    public String before(LarderLeft left) {
        int before = now.left().indexOf(left) - 1;
        return before < 0 ? "" : now.left().get(before).ingredient().id();
    }

    /** The cautions of one ingredient. */
    public CautionView cautions(Ingredient ingredient) {
        return new CautionView(t(), words.safety(), ingredient.cautions());
    }

    /** The cautions of everything that is kept. */
    public CautionView cautions() {
        Set<Caution> all = new LinkedHashSet<>();
        now.left().forEach(left -> all.addAll(left.ingredient().cautions()));
        return new CautionView(t(), words.safety(), List.copyOf(all));
    }
}
