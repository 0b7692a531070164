package sopwell.orders;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Out;
import sopwell.menu.Selection;
import sopwell.menu.Shortage;

/**
 * What is out on the open day, and how many are left of what is counted. Not thread-safe: its owner
 * is one thread.
 *
 * <p>A count goes down with every piece that is ordered and up with every piece that is taken off
 * an order again, made or not: somebody who threw one away says so by counting anew.
 */
public final class Outs {
    private final Map<Out, Shortage> shortages = new LinkedHashMap<>();

    /** What is out as somebody else found it. */
    public static Outs of(List<Shortage> known) {
        Outs outs = new Outs();
        known.forEach(shortage -> outs.shortages.put(shortage.out(), shortage));
        return outs;
    }

    /** Takes in a mark or its lifting; never refuses. */
    public void apply(OutEvent event) {
        switch (event.kind()) {
            case MARKED -> {
                OutEvent.OutMarked marked = (OutEvent.OutMarked) event;
                shortages.put(
                        marked.out(), new Shortage(marked.out(), marked.left(), marked.untilMs()));
            }
            case LIFTED -> shortages.remove(event.out());
        }
    }

    /**
     * Takes in what happened to an order or the day; never refuses.
     *
     * @param before the order's lines before, none when it is new
     * @param after the order's lines from now on, none when it is void
     */
    public void apply(OrderEvent event, List<OrderLine> before, List<OrderLine> after) {
        switch (event.kind()) {
            case DAY_OPENED, DAY_CLOSED -> shortages.clear();
            case PLACED, CHANGED, VOIDED ->
                    shortages.replaceAll(
                            (out, shortage) ->
                                    shortage.less(ordered(out, after) - ordered(out, before)));
            case DAY_REOPENED, TOLD, DISCOUNTED, HANDED, BROUGHT_BACK -> {}
        }
    }

    /** What is out or counted, in the order in which it was first marked. */
    public List<Shortage> all() {
        return List.copyOf(shortages.values());
    }

    /** How short something is, if it is. */
    public Optional<Shortage> find(Out out) {
        return Optional.ofNullable(shortages.get(out));
    }

    /**
     * What these lines ask too much of, if anything.
     *
     * @param before what the same order had before; that much is taken already
     */
    Optional<Excess> excess(List<OrderLine> before, List<Asked> lines, long nowMs) {
        for (Shortage shortage : shortages.values()) {
            Out out = shortage.out();
            int more = asked(out, lines) - ordered(out, before);
            if (more > Math.max(0, shortage.left()) && shortage.holds(nowMs)) {
                return Optional.of(new Excess(shortage, more));
            }
        }
        return Optional.empty();
    }

    /** Whether nothing of it can be sold now. */
    boolean isGone(Out out, long nowMs) {
        Shortage shortage = shortages.get(out);
        return shortage != null && shortage.isGone() && shortage.holds(nowMs);
    }

    /**
     * More is asked than there is.
     *
     * @param more how many pieces are asked for that are not taken yet
     */
    record Excess(Shortage shortage, int more) {}

    /** What is sold again by now. */
    List<Out> due(long nowMs) {
        Collection<Shortage> all = shortages.values();
        return all.stream().filter(s -> !s.holds(nowMs)).map(Shortage::out).toList();
    }

    private static int ordered(Out out, List<OrderLine> lines) {
        return lines.stream().mapToInt(l -> pieces(out, l.selection(), l.quantity())).sum();
    }

    private static int asked(Out out, List<Asked> lines) {
        return lines.stream().mapToInt(l -> pieces(out, l.selection(), l.quantity())).sum();
    }

    private static int pieces(Out out, Selection selection, int quantity) {
        return out.isIn(selection) ? quantity : 0;
    }
}
