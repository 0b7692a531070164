package sopwell.sim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.audit.AuditEvent;
import sopwell.audit.Who;
import sopwell.boards.Board;
import sopwell.desk.Answer;
import sopwell.desk.Stand;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent;
import sopwell.mix.ItemCount;
import sopwell.mix.Mix;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderLine;
import sopwell.orders.PaperEvent;
import sopwell.orders.StandSettings;
import sopwell.sim.Complaints.Complaint;
import sopwell.sim.OrderBook.TrueOrder;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.web.live.SteppedScreens.Looker;

/**
 * Keeps its own books from the raw events, without the rules and without the stand's own folding,
 * and compares. Belongs to one thread.
 */
final class Validator {
    private final Complaints complaints = new Complaints();
    private final OrderBook orders;
    private final PriceBook prices;
    private final PartBook parts;
    private final PassBook pass;
    private final PanBook pans;
    private final StockBook stock;
    private final MoneyBook money;
    private final QueryBook queries;
    private final OutBook outs;
    private final PlanBook plans;
    private final AuditBook audit;
    private final Map<String, Integer> papers = new HashMap<>();
    private final Map<String, List<Recorded>> byKey = new HashMap<>();
    private BoardCheck boards;
    private long seq;
    private long atMs;
    private String key = "";
    private int ordinal;

    Validator(StandSettings settings) {
        orders = new OrderBook(settings, complaints);
        prices = new PriceBook(settings, orders, complaints);
        parts = new PartBook(orders, complaints);
        pass = new PassBook(orders, parts, complaints);
        pans = new PanBook(orders, complaints);
        stock = new StockBook(orders, complaints);
        money = new MoneyBook(orders, complaints);
        queries = new QueryBook(complaints);
        outs = new OutBook(orders, complaints);
        plans = new PlanBook(complaints);
        audit = new AuditBook(complaints);
        newBoards();
    }

    /** The boards are drawn by another process from now on. */
    void newBoards() {
        boards = new BoardCheck(orders, parts, complaints);
    }

    /** The last place of the log that it has seen. */
    long seq() {
        return seq;
    }

    /** Takes in the next event of the log. */
    void take(Recorded recorded) {
        complaints.same(seq + 1, recorded.seq(), Invariant.LOG, "the next place", "");
        complaints.that(
                recorded.atMs() >= atMs, Invariant.LOG, "time runs backwards at", recorded.seq());
        boolean goesOn = recorded.key().equals(key);
        complaints.same(goesOn ? ordinal + 1 : 0, recorded.ordinal(), Invariant.LOG, "ordinal", "");
        complaints.that(
                goesOn || !byKey.containsKey(recorded.key()),
                Invariant.LOG,
                "key",
                List.of(recorded.key(), "stands for two commands"));
        seq = recorded.seq();
        atMs = recorded.atMs();
        key = recorded.key();
        ordinal = recorded.ordinal();
        byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(recorded);
        prices.take(recorded);
        stock.before(recorded);
        orders.take(recorded);
        parts.take(recorded);
        pass.take(recorded);
        pans.take(recorded, parts);
        stock.take(recorded);
        money.take(recorded);
        queries.take(recorded, parts);
        outs.take(recorded);
        plans.take(recorded);
        audit.take(recorded);
        paper(recorded);
    }

    /** An order's guest has no name from now on, also in what was answered before. */
    void forget(String order) {
        byKey.values()
                .forEach(
                        events ->
                                events.replaceAll(
                                        one ->
                                                new Recorded(
                                                        one.seq(),
                                                        one.atMs(),
                                                        one.key(),
                                                        one.ordinal(),
                                                        nameless(one.event(), order))));
    }

    private static Event nameless(Event event, String order) {
        if (event instanceof OrderPlaced placed && placed.order().equals(order)) {
            return new OrderPlaced(
                    order,
                    placed.number(),
                    "",
                    placed.toGo(),
                    placed.lines(),
                    placed.totals(),
                    placed.quote(),
                    placed.menuRevision());
        }
        if (event instanceof OrderChanged changed && changed.order().equals(order)) {
            return new OrderChanged(
                    order,
                    changed.version(),
                    "",
                    changed.toGo(),
                    changed.lines(),
                    changed.totals(),
                    changed.reason(),
                    changed.menuRevision());
        }
        return event;
    }

    private void paper(Recorded recorded) {
        if (recorded.event() instanceof PaperEvent.PaperPrinted printed) {
            int copies = papers.merge(printed.order() + printed.paper(), 1, Integer::sum) - 1;
            complaints.same(copies, printed.copy(), Invariant.PAPERS, "the copy of", printed);
        }
    }

    /** Compares a stand with the books. */
    void check(Stand stand) {
        complaints.same(seq, stand.seq(), Invariant.LOG, "the stand's place", "");
        orders.check(stand);
        parts.check(stand);
        pass.check(stand);
        pans.check(stand);
        stock.check(stand);
        money.check(stand);
        queries.check(stand);
        outs.check(stand);
        plans.check(stand);
    }

    /** Compares the boards with the books. */
    void check(List<Board> drawn) {
        boards.check(drawn);
    }

    /** Compares the day's mix with the books. */
    void check(Mix mix) {
        Map<String, Long> pieces = new HashMap<>();
        Map<String, Long> cents = new HashMap<>();
        long subtotal = 0;
        int voids = 0;
        int meals = 0;
        for (TrueOrder order : orders.all()) {
            if (order.isVoid()) {
                voids++;
                continue;
            }
            if (order.isStaffMeal()) {
                meals++;
                continue;
            }
            subtotal += order.totals.subtotalCents();
            for (OrderLine line : order.lines) {
                String what = line.selection().item() + " " + line.selection().size();
                pieces.merge(what, (long) line.quantity(), Long::sum);
                cents.merge(what, line.quantity() * line.unitCents(), Long::sum);
            }
        }
        Map<String, Long> foundPieces = new HashMap<>();
        Map<String, Long> foundCents = new HashMap<>();
        for (ItemCount count : mix.items()) {
            foundPieces.put(count.item() + " " + count.size(), (long) count.pieces());
            foundCents.put(count.item() + " " + count.size(), count.cents());
        }
        complaints.same(pieces, foundPieces, Invariant.MIX, "what was sold", "");
        complaints.same(cents, foundCents, Invariant.MIX, "what it was sold for", "");
        complaints.same(
                subtotal, mix.counts().subtotalCents(), Invariant.MIX, "sales before tax", "");
        complaints.same(voids, mix.counts().voids(), Invariant.MIX, "void orders", "");
        complaints.same(meals, mix.counts().staffOrders(), Invariant.MIX, "staff meals", "");
        int sold = orders.all().size() - voids - meals;
        complaints.same(sold, mix.counts().orders(), Invariant.MIX, "orders", "");
    }

    /** Compares two stands that must be the same in everything. */
    void same(Stand expected, Stand found, Invariant invariant) {
        String one = DeepState.of(expected);
        String other = DeepState.of(found);
        if (!one.equals(other)) {
            complaints.that(false, invariant, "", DeepState.difference(one, other));
        }
    }

    /** Compares what a screen shows with the true board. */
    void check(Looker looker, Board board) {
        complaints.same(
                List.copyOf(board.rows()),
                looker.rows(),
                Invariant.SCREENS,
                "",
                List.of(looker.id(), "of", looker.board()));
    }

    /** Says what somebody else found. */
    void that(boolean holds, Invariant invariant, String says) {
        complaints.that(holds, invariant, says, "");
    }

    /** Compares what was done with who asked for it. */
    void askedBy(String asked, Optional<Who> who) {
        audit.answered(asked, who);
    }

    /** Compares an answer with the log. */
    void answered(String asked, Answer answer) {
        List<Recorded> kept = byKey.getOrDefault(asked, List.of());
        switch (answer.outcome()) {
            case DONE, REPEATED ->
                    complaints.same(
                            plain(kept),
                            plain(answer.events()),
                            Invariant.ANSWERS,
                            "the answer to",
                            asked);
            case REFUSED ->
                    complaints.same(List.of(), kept, Invariant.ANSWERS, "refused but kept", asked);
            case KEY_REUSED ->
                    complaints.that(!kept.isEmpty(), Invariant.ANSWERS, "was never used", asked);
        }
    }

    /** Events as they are answered: menus and books by their revision, without who it was. */
    private static List<Object> plain(List<Recorded> events) {
        List<Object> plain = new ArrayList<>();
        for (Recorded one : events) {
            if (one.event() instanceof AuditEvent.DoneBy) {
                continue;
            }
            plain.add(List.of(one.seq(), one.atMs(), one.key(), one.ordinal()));
            if (one.event() instanceof MenuEvent.MenuAdopted adopted) {
                plain.add(adopted.menu().revision());
            } else if (one.event() instanceof RecipeEvent.RecipesAdopted adopted) {
                plain.add(adopted.book().revision());
            } else {
                plain.add(one.event());
            }
        }
        return plain;
    }

    List<Complaint> complaints() {
        return complaints.all();
    }
}
