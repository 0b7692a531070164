package sopwell.web.pages;

import java.util.List;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.LarderLeft;

/**
 * What the shelves and the batches still want before the day closes, in one language. Immutable.
 */
public record CloseStockView(StockWords words, CloseStock stock, long nowMs) {
    /**
     * A batch that is on.
     *
     * @param id its number
     * @param what what it makes
     * @param advice what its clock asks for, or where it is when nothing is watched
     * @param urgent whether that must be done now, or is too late
     */
    public record On(String id, String what, String advice, boolean urgent) {}

    /** Something that was thrown away. */
    public record Wasted(String name, String amount) {}

    /** Whether there is a book of recipes with anything on the shelves. */
    public boolean hasShelves() {
        return !stock.now().left().isEmpty();
    }

    /** How many ingredients were counted today, of those that are ever counted. */
    public String counted() {
        return stock.known() == 0
                ? words.t().get("close.counts.never")
                : words.t().of("close.counts", stock.counted(), stock.known());
    }

    /** Whether nothing is left to count. */
    public boolean isCounted() {
        return stock.isCounted();
    }

    /** The batches that are on, most urgent first. */
    public List<On> batches() {
        BatchesView view = new BatchesView(words, stock.now(), nowMs);
        return stock.now().batches().stream().map(row -> on(view, row)).toList();
    }

    private On on(BatchesView view, BatchRow row) {
        String advice = row.standing().map(words::advice).orElseGet(() -> view.where(row));
        return new On(row.batch().id(), view.what(row), advice, row.isUrgent());
    }

    /** What was thrown away today, in the order of the shelves. */
    public List<Wasted> wasted() {
        return stock.now().left().stream()
                .map(LarderLeft::ingredient)
                .filter(one -> stock.wasted().getOrDefault(one.id(), 0L) > 0)
                .map(
                        one ->
                                new Wasted(
                                        words.t().local(one.name()),
                                        words.amount(one, stock.wasted().get(one.id()))))
                .toList();
    }
}
