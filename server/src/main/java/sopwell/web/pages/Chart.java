package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.Check;

/**
 * A picture of numbers: a table that says everything by itself, from which the page's script draws.
 * Immutable; each method that adds something answers a chart with it.
 *
 * @param kind how it is drawn
 * @param finding what it shows, as one sentence
 * @param about what is counted, in which unit, over which days
 * @param axes what stands along the sides
 * @param series one column of numbers each, in their order
 * @param rows from left to right, or from top to bottom
 */
public record Chart(
        Kind kind, String finding, String about, Axes axes, List<Series> series, List<Row> rows) {
    private static final int HEIGHT = 240;
    private static final int BAR = 30;
    private static final int CELL = 34;
    private static final int BELOW = 34;

    public Chart {
        series = List.copyOf(series);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            Check.that(row.cells().size() == series.size(), "a chart's row has every series");
        }
    }

    /** How a chart is drawn. */
    public enum Kind {
        /** Upright bars of the values, a line for what they are compared with. */
        COLUMNS,
        /** Lying bars, one a row, each with its name and its number. */
        BARS,
        /** Lines of the values, a point for each. */
        LINES,
        /** Upright bars of all values on top of each other. */
        STACK,
        /** A field of cells, the series across and the rows down; darker is more. */
        HEAT;

        /** The word in the page. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a column of numbers is to the reader. */
    public enum Role {
        /** What the chart is about. */
        VALUE,
        /** What the values are seen against: a mean, a plan. */
        COMPARED,
        /** The lower end of a band. */
        LOW,
        /** The upper end of a band. */
        HIGH,
        /** Stands in the table and is not drawn. */
        TOLD;

        /** The word in the page. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * What stands along the sides.
     *
     * @param across what the rows are, as a head of their column
     * @param unit of the numbers, as it stands at their axis
     * @param target a number that should be reached or kept, or empty
     * @param targetName what the target is, as it stands beside its line
     */
    public record Axes(String across, String unit, String target, String targetName) {
        /** Axes without a target. */
        public static Axes of(String across, String unit) {
            return new Axes(across, unit, "", "");
        }

        /** The same with a line to reach or to keep below. */
        public Axes withTarget(double at, String name) {
            return new Axes(across, unit, plain(at), name);
        }
    }

    /** One column of numbers. */
    public record Series(String name, Role role) {}

    /**
     * One number.
     *
     * @param text as it is read
     * @param value as it is drawn, in plain digits with a point; empty when it is not known
     */
    public record Cell(String text, String value) {
        /** A number that reads as it is. */
        public static Cell of(long value) {
            return new Cell(Long.toString(value), Long.toString(value));
        }

        /** A number in words of its own. */
        public static Cell of(double value, String text) {
            return new Cell(text, plain(value));
        }

        /** Nothing is known here, or nothing is drawn. */
        public static Cell told(String text) {
            return new Cell(text, "");
        }
    }

    /**
     * One place along the axis.
     *
     * @param label in the table
     * @param brief at the axis
     * @param at where on an axis of numbers, in plain digits; empty when the rows simply follow
     * @param mark what is written beside the row's first number, or empty
     */
    public record Row(String label, String brief, String at, String mark, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** A row that reads alike in the table and at the axis. */
        public static Row of(String label, Cell... cells) {
            return new Row(label, label, "", "", List.of(cells));
        }

        /** The same with a shorter word at the axis. */
        public Row briefly(String word) {
            return new Row(label, word, at, mark, cells);
        }

        /** The same at a place on an axis of numbers. */
        public Row at(double place) {
            return new Row(label, brief, plain(place), mark, cells);
        }

        /** The same with something written beside its first number. */
        public Row marked(String words) {
            return new Row(label, brief, at, words, cells);
        }
    }

    /** A chart without numbers yet. */
    public static Chart of(Kind kind, String finding, String about, Axes axes) {
        return new Chart(kind, finding, about, axes, List.of(), List.of());
    }

    /** The same with one more column; before any row. */
    public Chart with(String name, Role role) {
        List<Series> more = new ArrayList<>(series);
        more.add(new Series(name, role));
        return new Chart(kind, finding, about, axes, more, rows);
    }

    /** The same with these rows. */
    public Chart rows(List<Row> those) {
        return new Chart(kind, finding, about, axes, series, those);
    }

    /** How high it is drawn, in CSS pixels; known before the script runs, so that nothing moves. */
    public int height() {
        return switch (kind) {
            case COLUMNS, LINES, STACK -> HEIGHT;
            case BARS -> rows.size() * BAR;
            case HEAT -> rows.size() * CELL + BELOW;
        };
    }

    /** Whether there is anything to draw. */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", "");
    }
}
