package sopwell.prep.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.mix.DayTally;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.plan.PlanScore;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.larder.Compared;
import sopwell.stock.recipes.RecipeBook;

/**
 * Past days of prep beside their plans. Amounts in thousandths of base units. Immutable.
 *
 * @param days newest first
 * @param weeks oldest first; all that is made, together
 */
public record PastPrep(List<Day> days, List<Week> weeks) {
    private static final double THOUSAND = 1_000;

    public PastPrep {
        days = List.copyOf(days);
        weeks = List.copyOf(weeks);
    }

    /**
     * A day.
     *
     * @param isKept whether its plan was kept
     * @param rows by what is made, in the order of its name
     * @param compared its counts against the books
     */
    public record Day(LocalDate date, boolean isKept, List<Row> rows, List<Compared> compared) {
        public Day {
            rows = List.copyOf(rows);
            compared = List.copyOf(compared);
        }
    }

    /**
     * What became of one thing that is made.
     *
     * @param planned what was to be started that day
     * @param started what was, with what each batch gave in the end, if it came to one
     * @param used what orders and other recipes took
     * @param left what the books had at the day's end; empty when it was never counted
     * @param missing what guests would have taken, as far as is known
     */
    public record Row(
            String makes,
            List<KeptTask> planned,
            List<Done> started,
            long used,
            Optional<Long> left,
            Optional<Long> missing) {
        public Row {
            planned = List.copyOf(planned);
            started = List.copyOf(started);
        }

        /** What the day's batches gave together, of those that came to an end. */
        public long made() {
            return started.stream().mapToLong(one -> one.gave().orElse(0L)).sum();
        }

        /** What was to be made together. */
        public long wanted() {
            return planned.stream().mapToLong(KeptTask::thousandths).sum();
        }
    }

    /** A batch and what it gave; empty while it is on. */
    public record Done(DayPrep.Started batch, Optional<Long> gave) {}

    /**
     * A week's cost of waste and shortage, in cents.
     *
     * @param things how many things made were compared
     * @param days how many days of a thing were, of all of them together
     * @param ruleCost with "what this weekday took on average"
     */
    public record Week(LocalDate monday, int things, int days, double cost, double ruleCost) {}

    /**
     * What past days are reckoned with.
     *
     * @param days oldest first
     * @param sold what they sold
     * @param outs what was out on them
     * @param book in force now
     * @param stakes what a shortage and waste cost now, by ingredient
     */
    public record Known(
            List<DayPrep> days,
            List<DayTally> sold,
            Map<LocalDate, List<OutSpan>> outs,
            RecipeBook book,
            Map<String, Stakes> stakes) {}

    /** All of it. */
    public static PastPrep of(Known known) {
        Shortages shortages = new Shortages(known.book(), known.sold());
        Map<LocalDate, DayTally> sold = new HashMap<>();
        known.sold().forEach(tally -> sold.put(tally.date(), tally));
        Map<String, Long> gave = new HashMap<>();
        known.days().forEach(day -> gave.putAll(day.gave()));
        List<Day> days = new ArrayList<>();
        Map<String, List<PlanScore.Day>> scored = new TreeMap<>();
        for (DayPrep day : known.days()) {
            Map<String, Long> missing =
                    Optional.ofNullable(sold.get(day.date()))
                            .map(tally -> shortages.of(day, tally, outs(known, day)))
                            .orElse(Map.of());
            List<Row> rows = new ArrayList<>();
            for (String makes : made(known.book(), day)) {
                Row row = row(day, makes, gave, missing);
                rows.add(row);
                if (known.stakes().containsKey(makes) && row.left().isPresent()) {
                    scored.computeIfAbsent(makes, id -> new ArrayList<>()).add(score(day, row));
                }
            }
            days.add(0, new Day(day.date(), day.plan().isPresent(), rows, day.compared()));
        }
        return new PastPrep(days, weeks(scored, known.stakes()));
    }

    private static List<OutSpan> outs(Known known, DayPrep day) {
        return known.outs().getOrDefault(day.date(), List.of());
    }

    /** What was planned, started or used of what is made, by its id. */
    private static Set<String> made(RecipeBook book, DayPrep day) {
        Set<String> made = new TreeSet<>();
        day.plan().ifPresent(plan -> plan.tasks().forEach(task -> made.add(task.makes())));
        day.started().forEach(one -> made.add(one.makes()));
        book.recipes().stream()
                .map(recipe -> recipe.makes())
                .filter(id -> used(day, id) > 0)
                .forEach(made::add);
        return made;
    }

    private static long used(DayPrep day, String id) {
        return day.used().getOrDefault(id, 0L) + day.taken().getOrDefault(id, 0L);
    }

    private static Row row(
            DayPrep day, String makes, Map<String, Long> gave, Map<String, Long> missing) {
        List<KeptTask> planned =
                day.plan().stream()
                        .flatMap(plan -> plan.tasks().stream())
                        .filter(task -> task.makes().equals(makes))
                        .toList();
        List<Done> started =
                day.started().stream()
                        .filter(one -> one.makes().equals(makes))
                        .map(one -> new Done(one, Optional.ofNullable(gave.get(one.batch()))))
                        .toList();
        return new Row(
                makes,
                planned,
                started,
                used(day, makes),
                Optional.ofNullable(day.left().get(makes)),
                Optional.ofNullable(missing.get(makes)));
    }

    private static PlanScore.Day score(DayPrep day, Row row) {
        return new PlanScore.Day(
                day.date(),
                row.wanted() / THOUSAND,
                row.made() / THOUSAND,
                row.used() / THOUSAND,
                day.wasted().getOrDefault(row.makes(), 0L) / THOUSAND,
                row.missing().orElse(0L) / THOUSAND);
    }

    private static List<Week> weeks(
            Map<String, List<PlanScore.Day>> scored, Map<String, Stakes> stakes) {
        Map<LocalDate, Week> weeks = new TreeMap<>();
        scored.forEach(
                (makes, days) ->
                        PlanScore.weeks(days, stakes.get(makes))
                                .forEach(
                                        one ->
                                                weeks.merge(
                                                        one.monday(),
                                                        new Week(
                                                                one.monday(),
                                                                1,
                                                                one.days(),
                                                                one.cost(),
                                                                one.ruleCost()),
                                                        PastPrep::both)));
        return List.copyOf(weeks.values());
    }

    private static Week both(Week one, Week other) {
        return new Week(
                one.monday(),
                one.things() + other.things(),
                one.days() + other.days(),
                one.cost() + other.cost(),
                one.ruleCost() + other.ruleCost());
    }
}
