package sopwell.orders;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sopwell.Limits;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.menu.Selection;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;

/**
 * What can be sold now: what the menu makes, less what is out. What was found to be on the menu is
 * remembered, since most guests ask for the same few things. Not thread-safe: its owner is one
 * thread.
 */
public final class Selling {
    private final Menu menu;
    private final Outs outs;
    private final Set<Selection> known = new HashSet<>();

    /** What this menu sells while nothing is out but this. */
    public Selling(Menu menu, Outs outs) {
        this.menu = menu;
        this.outs = outs;
    }

    /**
     * Why these lines can't be had although they are on the menu, if they can't; names what is near
     * and can be had.
     *
     * @param before what the same order had before; that much is taken already
     */
    public Optional<Refusal> shortage(List<OrderLine> before, List<Asked> lines, long nowMs) {
        return outs.excess(before, lines, nowMs).map(excess -> refusal(excess, lines, nowMs));
    }

    private Refusal refusal(Outs.Excess excess, List<Asked> lines, long nowMs) {
        Out out = excess.shortage().out();
        List<Object> args = new ArrayList<>();
        args.add(out);
        if (!excess.shortage().isGone()) {
            args.add(excess.shortage().left());
            args.add(excess.more());
        }
        lines.stream()
                .map(Asked::selection)
                .filter(out::isIn)
                .findFirst()
                .ifPresent(selection -> args.addAll(near(out, selection, nowMs)));
        Reason reason = excess.shortage().isGone() ? Reason.OUT : Reason.TOO_FEW_LEFT;
        return Refusal.of(reason, args.toArray());
    }

    /** What could stand in its place: of the same group, of the same item, or made the same way. */
    private List<Out> near(Out out, Selection selection, long nowMs) {
        Item item = menu.item(selection.item());
        Stream<Out> alike =
                switch (out.kind()) {
                    case OPTION ->
                            menu.groupOf(out.id()).options().stream()
                                    .map(option -> Out.option(option.id()));
                    case SIZE -> item.sizes().stream().map(size -> Out.size(item.id(), size.id()));
                    case ITEM ->
                            menu.items().stream()
                                    .filter(other -> other.groups().equals(item.groups()))
                                    .map(other -> Out.item(other.id()));
                };
        return alike.filter(one -> !one.equals(out))
                .filter(one -> !outs.isGone(one, nowMs))
                .limit(Limits.NEAR_MAX)
                .toList();
    }

    /** Whether the menu makes exactly this; it may have changed since the call was read. */
    boolean isOnMenu(Selection selection) {
        if (known.contains(selection)) {
            return true;
        }
        Wish wish = Wishes.asked(menu, selection);
        boolean sold =
                Wishes.fault(menu, wish).isEmpty() && Wishes.select(menu, wish).equals(selection);
        if (sold && known.size() < Limits.SELECTIONS_REMEMBERED_MAX) {
            known.add(selection);
        }
        return sold;
    }
}
