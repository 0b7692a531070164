package sopwell.prep.forecast;

import java.util.Arrays;
import java.util.List;
import sopwell.prep.forecast.PastDay.Sold;

/** What a day sold, counted by bin and item. Built once, then only read. */
final class DayCounts {
    private final int[] all;
    private final int[][] items;
    private final List<Sold> sold;

    DayCounts(PastDay day, Names names, int bins) {
        this.all = new int[bins];
        this.items = new int[names.size()][];
        this.sold = day.sold();
        for (Sold pieces : sold) {
            int bin = bin(pieces);
            int item = names.number(pieces.item());
            if (items[item] == null) {
                items[item] = new int[bins];
            }
            items[item][bin] += pieces.pieces();
            all[bin] += pieces.pieces();
        }
        for (int i = 0; i < items.length; i++) {
            items[i] = items[i] == null ? new int[0] : items[i];
        }
    }

    /** Pieces of everything in each bin; not to be written to. */
    int[] all() {
        return all;
    }

    /** Pieces of an item in each bin, or empty for none at all; not to be written to. */
    int[] item(int item) {
        return items[item];
    }

    List<Sold> sold() {
        return sold;
    }

    /** The bin in which pieces were ordered, within the day. */
    int bin(Sold pieces) {
        return Math.max(0, Math.min(all.length - 1, pieces.bin()));
    }

    /** Pieces in the bins of a window; an empty window is the whole day. */
    static int in(int[] counts, double[] window) {
        if (window.length == 0) {
            return Arrays.stream(counts).sum();
        }
        int sum = 0;
        for (int b = 0; b < counts.length; b++) {
            sum += window[b] > 0 ? counts[b] : 0;
        }
        return sum;
    }
}
