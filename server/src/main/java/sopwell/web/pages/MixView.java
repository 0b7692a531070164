package sopwell.web.pages;

import sopwell.mix.ItemCount;
import sopwell.mix.MixTable;
import sopwell.mix.WaitSummary;
import sopwell.web.T;

/** A day's mix in one language. Immutable. */
public record MixView(T t, MixPageData data) {
    /** From what share of a table's pieces on a cell is set heavy, in percent. */
    private static final int HEAVY_PERCENT = 15;

    /** What a table shows. */
    public String title(MixTable table) {
        return t.of(
                "mix.table", t.local(table.name()), t.local(table.down()), t.local(table.across()));
    }

    /** A cell's pieces; nothing is a dot, so that zeros don't shout. */
    public String cell(MixTable table, int row, int column) {
        int pieces = table.pieces().get(row).get(column);
        return pieces == 0 ? "·" : Integer.toString(pieces);
    }

    /** How heavy a cell is set. */
    public String weight(MixTable table, int row, int column) {
        int pieces = table.pieces().get(row).get(column);
        if (pieces == 0) {
            return "zero";
        }
        return pieces * 100 >= table.total() * HEAVY_PERCENT ? "heavy" : "";
    }

    /** All pieces of a row. */
    public int rowTotal(MixTable table, int row) {
        return table.pieces().get(row).stream().mapToInt(Integer::intValue).sum();
    }

    /** All pieces of a column. */
    public int columnTotal(MixTable table, int column) {
        return table.pieces().stream().mapToInt(row -> row.get(column)).sum();
    }

    /** A wait, or a dash when none was measured. */
    public String wait(WaitSummary summary, double seconds) {
        return summary.orders() == 0 ? "–" : t.minutes(seconds);
    }

    /** An item with its size. */
    public String item(ItemCount item) {
        String size = t.local(item.sizeName());
        return size.isEmpty() ? t.local(item.name()) : t.local(item.name()) + ", " + size;
    }
}
