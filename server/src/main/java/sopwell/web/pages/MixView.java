package sopwell.web.pages;

import sopwell.mix.ItemCount;
import sopwell.mix.MixTable;
import sopwell.mix.Share;
import sopwell.mix.WaitSummary;
import sopwell.web.DayFigures;
import sopwell.web.T;

/** A day's mix in one language. Immutable. */
public record MixView(T t, DayFigures data) {
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

    /** A share in whole percent, or a dash of nothing. */
    public String share(Share share) {
        return share.isKnown() ? t.percent((int) share.some(), (int) share.all()) : "–";
    }

    /** Between which shares the true one lies, as far as so few pieces can tell. */
    public String range(Share share) {
        return share.isKnown()
                ? t.of("mix.range", Math.round(share.low() * 100), Math.round(share.high() * 100))
                : "";
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
