package sopwell.web.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.prep.MadePlan;
import sopwell.prep.forecast.Accuracy;
import sopwell.prep.past.KeptTask;
import sopwell.prep.past.PastPrep;
import sopwell.stock.larder.Compared;
import sopwell.stock.recipes.Recipe;
import sopwell.web.PastPreps;
import sopwell.web.T;

/**
 * What became of past plans, in one language. Immutable.
 *
 * @param menu in force, for items' names
 * @param plan the plan as of now, for the book of recipes and what costs it takes
 * @param last the newest date that is shown
 */
public record PastPrepView(
        StockWords words, Menu menu, MadePlan plan, PastPreps.Found found, LocalDate last) {
    private static final int DAYS_SHOWN = 7;
    private static final int ITEMS_SHOWN = 8;

    /** The texts. */
    public T t() {
        return words.t();
    }

    /** The days that are shown, newest first. */
    public List<PastPrep.Day> days() {
        List<PastPrep.Day> all = found.prep().days();
        return all.subList(0, Math.min(DAYS_SHOWN, all.size()));
    }

    /** What the page stands on, in a sentence. */
    public String ground() {
        List<PastPrep.Day> all = found.prep().days();
        long kept = all.stream().filter(PastPrep.Day::isKept).count();
        return all.isEmpty()
                ? t().get("past-prep.ground.none")
                : t().of("past-prep.ground", all.size(), kept);
    }

    /** Where the days before these are looked at; empty when there are none. */
    public String earlier() {
        List<PastPrep.Day> all = found.prep().days();
        return all.size() > DAYS_SHOWN ? all.get(DAYS_SHOWN).date().toString() : "";
    }

    /** What an ingredient is called; one that the book has no more by its id. */
    public String name(String ingredient) {
        return plan.book().hasIngredient(ingredient)
                ? t().local(plan.book().ingredient(ingredient).name())
                : ingredient;
    }

    /** An amount of it; a dash for one that the book has no more. */
    public String amount(String ingredient, long thousandths) {
        return plan.book().hasIngredient(ingredient)
                ? words.amount(plan.book().ingredient(ingredient), thousandths)
                : "–";
    }

    /** What was to be started, a line each. */
    public List<String> planned(PastPrep.Day day, PastPrep.Row row) {
        if (!day.isKept()) {
            return List.of(t().get("past-prep.not-kept"));
        }
        List<String> said = new ArrayList<>();
        for (KeptTask task : row.planned()) {
            said.add(
                    t().of(
                                    "past-prep.planned.line",
                                    words.time(task.startMs()),
                                    lots(row.makes(), task.lots()),
                                    amount(row.makes(), task.thousandths()),
                                    t().day(task.firstDay())));
        }
        return said.isEmpty() ? List.of(t().get("past-prep.nothing")) : said;
    }

    /** What was started, a line each, with what it gave. */
    public List<String> made(PastPrep.Row row) {
        List<String> said = new ArrayList<>();
        for (PastPrep.Done done : row.started()) {
            String gave =
                    done.gave()
                            .map(much -> amount(row.makes(), much))
                            .orElseGet(() -> t().get("past-prep.on"));
            said.add(
                    t().of(
                                    "past-prep.made.line",
                                    words.time(done.batch().atMs()),
                                    lots(row.makes(), done.batch().lots()),
                                    gave));
        }
        return said;
    }

    private String lots(String makes, int lots) {
        String name =
                plan.book()
                        .recipe(makes)
                        .map(Recipe::lot)
                        .map(lot -> t().local(lot.name()))
                        .orElse("");
        return lots + " × " + name;
    }

    /** What was left; a word where nobody counted it. */
    public String left(PastPrep.Row row) {
        return row.left()
                .map(much -> amount(row.makes(), much))
                .orElseGet(() -> t().get("stock.unknown"));
    }

    /** What was missing; a dash when nothing is known of it. */
    public String missing(PastPrep.Row row) {
        return row.missing()
                .map(much -> t().of("past-prep.about", amount(row.makes(), much)))
                .orElse("–");
    }

    /** The day in words; of today it is said that it is not over. */
    public String day(PastPrep.Day day) {
        boolean isToday = day.date().equals(plan.today());
        return t().day(day.date()) + (isToday ? t().get("past-prep.so-far") : "");
    }

    /** A count against the books, in a line. */
    public String compared(Compared one) {
        String id = one.ingredient();
        String difference =
                plan.book().hasIngredient(id)
                        ? words.difference(plan.book().ingredient(id), one.difference())
                        : "–";
        return t().of(
                        "past-prep.compared",
                        name(one.ingredient()),
                        amount(one.ingredient(), one.counted()),
                        difference);
    }

    /** What a week's waste and shortage cost. */
    public String cost(double cents) {
        return t().money(Math.round(cents));
    }

    /** The lines of the forecast's accuracy: everything, then what is sold most. */
    public List<Accuracy.Line> judged() {
        Optional<Accuracy> accuracy = found.accuracy();
        List<Accuracy.Line> lines = new ArrayList<>();
        accuracy.filter(one -> one.total().days() > 0).ifPresent(one -> lines.add(one.total()));
        accuracy.ifPresent(
                one ->
                        lines.addAll(
                                one.items().subList(0, Math.min(ITEMS_SHOWN, one.items().size()))));
        return lines;
    }

    /** What a judged line is called. */
    public String name(Accuracy.Line line) {
        boolean all = found.accuracy().map(Accuracy::total).filter(line::equals).isPresent();
        if (all) {
            return t().get("past-prep.total");
        }
        return menu.hasItem(line.name()) ? t().local(menu.item(line.name()).name()) : line.name();
    }

    /** How far off, in pieces a day, and which share was within the interval. */
    public String score(Accuracy.Score score) {
        return t().of("past-prep.score", tenths(score.absolute()), t().percent(score.covered()));
    }

    /** Which way was nearest on a line, in words. */
    public String nearest(Accuracy.Line line) {
        double ours = line.ours().pinball();
        double best = Math.min(line.lastWeek().pinball(), line.meanOf8().pinball());
        return best <= 0
                ? "–"
                : t().of(
                                ours <= best ? "past-prep.better" : "past-prep.worse",
                                t().percent(Math.abs(1 - ours / best)));
    }

    private static String tenths(double number) {
        return Long.toString(Math.round(number * 10) / 10) + "." + Math.round(number * 10) % 10;
    }
}
