package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import sopwell.web.T;
import sopwell.web.pages.Chart.Axes;
import sopwell.web.pages.Chart.Cell;
import sopwell.web.pages.Chart.Kind;
import sopwell.web.pages.Chart.Role;
import sopwell.web.pages.Chart.Row;
import sopwell.whatif.Tried;
import sopwell.whatif.Waits;

/** The waits of a day that was tried again, as a chart. Stateless. */
final class WhatIfChart {
    private static final double MINUTE = 60;

    private WhatIfChart() {}

    /** What nine of ten waited at most, half hour by half hour, in minutes. */
    static Chart of(WhatIfView view) {
        T t = view.t();
        Tried tried = view.tried();
        boolean changed = !tried.changes().isNone();
        Axes axes =
                Axes.of(t.get("whatif.half-hour"), t.get("unit.min"))
                        .withTarget(view.targetSeconds() / MINUTE, t.get("whatif.target"));
        Chart chart =
                Chart.of(Kind.LINES, finding(view), t.get("whatif.chart"), axes)
                        .with(t.get(changed ? "whatif.tried" : "whatif.as-it-was"), Role.VALUE)
                        .with("10 %", Role.LOW)
                        .with("90 %", Role.HIGH)
                        .with(t.get("whatif.seen"), changed ? Role.TOLD : Role.COMPARED);
        if (changed) {
            chart = chart.with(t.get("whatif.as-it-was"), Role.COMPARED);
        }
        List<Row> rows = new ArrayList<>();
        for (Tried.Row row : tried.rows()) {
            List<Cell> cells = new ArrayList<>();
            cells.add(cell(t, row.after().middle()));
            cells.add(cell(t, row.after().low()));
            cells.add(cell(t, row.after().high()));
            cells.add(cell(t, row.measured()));
            if (changed) {
                cells.add(cell(t, row.before().middle()));
            }
            rows.add(Row.of(view.time(row.begin()), cells.toArray(Cell[]::new)));
        }
        return chart.rows(rows);
    }

    private static String finding(WhatIfView view) {
        Tried.Row worst = view.tried().rush();
        for (Tried.Row row : view.tried().rows()) {
            if (seconds(row) > seconds(worst)) {
                worst = row;
            }
        }
        long minutes = (long) Math.ceil(seconds(worst) / MINUTE);
        return view.t().of("whatif.worst", view.time(worst.begin()), minutes);
    }

    private static double seconds(Tried.Row row) {
        return row.after().middle().ninetiethSeconds();
    }

    private static Cell cell(T t, Waits waits) {
        return waits.orders() == 0
                ? Cell.told("–")
                : Cell.of(waits.ninetiethSeconds() / MINUTE, t.minutes(waits.ninetiethSeconds()));
    }
}
