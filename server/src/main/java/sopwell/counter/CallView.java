package sopwell.counter;

import java.util.List;
import java.util.Optional;

/**
 * What the counter shows of a call as it stands. Immutable.
 *
 * @param lines what was understood
 * @param subtotal money as it is shown; empty without lines
 * @param totalCents the total in cents, 0 without lines
 * @param quote the wait to tell the guest; empty while it is not known
 * @param fault what can't be read, if anything
 * @param live ids of the words that may come next, see {@link LiveIds}
 * @param hasItem whether the line that is being said has its item, so that another needs a comma
 */
public record CallView(
        List<Line> lines,
        String subtotal,
        String tax,
        String total,
        long totalCents,
        String quote,
        Optional<Fault> fault,
        List<String> live,
        boolean hasItem) {
    public CallView {
        lines = List.copyOf(lines);
        live = List.copyOf(live);
    }

    /**
     * One line.
     *
     * @param each the price of one piece, empty when there is one
     */
    public record Line(String text, String each, String price) {}

    /**
     * What can't be read.
     *
     * @param quiet whether it may just be unfinished: no alarm while somebody types
     * @param mirror the call in pieces, so that the place can be marked; empty when quiet
     */
    public record Fault(String sentence, boolean quiet, List<Piece> mirror, List<Fix> fixes) {
        public Fault {
            mirror = List.copyOf(mirror);
            fixes = List.copyOf(fixes);
        }
    }

    /** A piece of the call. */
    public record Piece(String text, boolean marked) {}

    /**
     * One tap that mends the call.
     *
     * @param label what is on it
     * @param text the whole call afterwards
     */
    public record Fix(String label, String text) {}

    /** Whether the call can be placed as it is. */
    public boolean placeable() {
        return fault.isEmpty() && !lines.isEmpty();
    }

    /** The same with the wait to tell the guest. */
    public CallView withQuote(String wait) {
        return new CallView(lines, subtotal, tax, total, totalCents, wait, fault, live, hasItem);
    }

    /** The live ids in one string, parted by spaces. */
    public String liveIds() {
        return String.join(" ", live);
    }
}
