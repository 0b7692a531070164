package sopwell.web.pages;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;

/**
 * What is made when, as a drawing: one row for each thing that is made, hours to the right. What
 * the list says in words; lengths are in the drawing's own units. Immutable.
 *
 * @param days the dates' names and where they begin
 * @param rows from above
 */
public record PrepTimeline(List<Day> days, List<Row> rows) {
    /** How wide the drawing is. */
    public static final int WIDTH = 1_200;

    /** Where the hours begin, to the right of the names. */
    public static final int LEFT = 150;

    /** How high one row is. */
    public static final int ROW = 34;

    /** Where the rows begin, below the dates. */
    public static final int TOP = 26;

    private static final int BAR_MIN = 3;

    public PrepTimeline {
        days = List.copyOf(days);
        rows = List.copyOf(rows);
    }

    /** A date's beginning. */
    public record Day(String name, int x) {}

    /** One thing that is made. */
    public record Row(String name, int y, List<Bar> bars) {
        public Row {
            bars = List.copyOf(bars);
        }
    }

    /**
     * One step.
     *
     * @param says what it is, when
     * @param occupies whether it takes up a resource, which is drawn full
     */
    public record Bar(int x, int width, String says, boolean occupies) {}

    /** How high the drawing is. */
    public int height() {
        return TOP + rows.size() * ROW + 4;
    }

    static PrepTimeline of(PrepView view) {
        List<Day> days = new ArrayList<>();
        LocalDate from = view.from();
        for (int d = 0; d < view.days(); d++) {
            LocalDate date = from.plusDays(d);
            days.add(new Day(view.t().day(date), x(view, start(view, date))));
        }
        Map<String, List<Bar>> bars = new LinkedHashMap<>();
        for (Task task : view.plan().plan().tasks()) {
            List<String> says = view.steps(task);
            for (int s = 0; s < task.steps().size(); s++) {
                StepTime step = task.steps().get(s);
                int x = x(view, step.from());
                int end = x(view, step.until());
                if (x >= LEFT && x < WIDTH) {
                    bars.computeIfAbsent(task.makes(), id -> new ArrayList<>())
                            .add(
                                    new Bar(
                                            x,
                                            Math.max(BAR_MIN, Math.min(WIDTH, end) - x),
                                            says.get(s),
                                            step.resource().isPresent()));
                }
            }
        }
        List<Row> rows = new ArrayList<>();
        bars.forEach((id, some) -> rows.add(new Row(view.name(id), TOP + rows.size() * ROW, some)));
        return new PrepTimeline(days, rows);
    }

    private static Instant start(PrepView view, LocalDate date) {
        return date.atStartOfDay(view.plan().zone()).toInstant();
    }

    private static int x(PrepView view, Instant at) {
        Instant from = start(view, view.from());
        long all =
                Duration.between(from, start(view, view.from().plusDays(view.days()))).toMinutes();
        long minutes = Duration.between(from, at).toMinutes();
        return (int) (LEFT + Math.floorDiv(minutes * (WIDTH - LEFT), all));
    }
}
