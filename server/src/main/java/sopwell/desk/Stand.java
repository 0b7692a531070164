package sopwell.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.Part;
import sopwell.kitchen.Pass;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.StationEvent;
import sopwell.kitchen.WaitQuote;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.orders.Deciding;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;
import sopwell.orders.OutEvent;
import sopwell.orders.OutSpans;
import sopwell.orders.Outs;
import sopwell.orders.PaperEvent;
import sopwell.orders.Papers;
import sopwell.orders.Selling;
import sopwell.orders.StandSettings;
import sopwell.prep.HistoryEvent;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.stock.PanEvent;
import sopwell.stock.Pans;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.Larder;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.PieceTakes;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.till.Till;
import sopwell.till.TillEvent;

/**
 * Everything that is known of the stand's open day. Built by {@link #apply} alone, so that the same
 * events always give the same stand. Not thread-safe: its owner is one thread.
 */
public final class Stand {
    private final StandSettings settings;
    private final Orders orders = new Orders();
    private final Map<String, Menu> menus = new HashMap<>();
    private final Kitchen kitchen = new Kitchen(this::menuOf);
    private final Pass pass = new Pass();
    private final Pans pans = new Pans();
    private final Larder larder = new Larder();
    private final Till till = new Till();
    private final Papers papers = new Papers();
    private Menu menu;
    private RecipeBook recipes = RecipeBook.empty();
    private OwnerCalendar calendar = OwnerCalendar.EMPTY;
    private PieceTakes takings = new PieceTakes(recipes);
    private Optional<PlanKept> keptPlan = Optional.empty();
    private final Outs outs = new Outs();
    private final OutSpans outSpans = new OutSpans();
    private Selling selling;
    private String reopenedUnder = "";
    private long seq;
    private long atMs;

    /** A stand of which nothing is known yet. */
    public Stand(StandSettings settings) {
        this.settings = settings;
    }

    /** Takes in what happened; never refuses. */
    public void apply(Recorded recorded) {
        Event event = recorded.event();
        if (event instanceof OrderEvent orderEvent) {
            apply(orderEvent, recorded);
        } else if (event instanceof KitchenEvent kitchenEvent) {
            takeFromPans(kitchenEvent);
            kitchen.apply(kitchenEvent, recorded.atMs());
        } else if (event instanceof QueryEvent queryEvent) {
            kitchen.apply(queryEvent, recorded.atMs());
        } else if (event instanceof PaceEvent paceEvent) {
            kitchen.apply(paceEvent);
        } else if (event instanceof PassEvent passEvent) {
            pass.apply(passEvent, recorded.atMs());
        } else if (event instanceof StationEvent stationEvent) {
            kitchen.apply(stationEvent);
        } else if (event instanceof PanEvent panEvent) {
            pans.apply(panEvent, recorded.atMs());
        } else if (event instanceof LarderEvent larderEvent) {
            larder.apply(larderEvent, recorded.atMs());
        } else if (event instanceof BatchEvent batchEvent) {
            larder.apply(batchEvent, recorded.atMs());
        } else if (event instanceof OutEvent outEvent) {
            outs.apply(outEvent);
            outSpans.look(outs, recorded.atMs());
        } else if (event instanceof PaperEvent paperEvent) {
            papers.apply(paperEvent);
        } else if (event instanceof TillEvent tillEvent) {
            till.apply(tillEvent, recorded.atMs());
        } else if (event instanceof RecipeEvent.RecipesAdopted adopted) {
            recipes = adopted.book();
            takings = new PieceTakes(recipes);
        } else if (event instanceof CalendarEvent.CalendarSet set) {
            calendar = set.calendar();
        } else if (event instanceof PlanKept plan) {
            keptPlan = Optional.of(plan);
        } else if (event instanceof MenuEvent.MenuAdopted adopted) {
            menu = adopted.menu();
            menus.put(menu.revision(), menu);
            selling = new Selling(menu, outs);
        } else if (event instanceof AuditEvent auditEvent) {
            note(auditEvent, recorded.key());
        } else if (!(event instanceof HistoryEvent)) {
            // What was kept of days before this stand is read when it is asked for.
            throw new IllegalStateException("an event of no family: " + event.getClass());
        }
        seq = recorded.seq();
        atMs = recorded.atMs();
    }

    private void apply(OrderEvent orderEvent, Recorded recorded) {
        List<OrderLine> before = lines(orderEvent);
        forgetMenus(orderEvent);
        orders.apply(orderEvent, recorded.atMs());
        till.apply(orderEvent);
        outSpans.apply(orderEvent);
        papers.apply(orderEvent);
        pass.apply(orderEvent);
        pans.apply(orderEvent, this::menuOf, recorded.atMs());
        larder.apply(orderEvent, lines(orderEvent), takings::of, recorded.atMs());
        Optional<Order> order = orderEvent.about().flatMap(orders::find);
        outs.apply(orderEvent, before, lines(orderEvent));
        outSpans.look(outs, recorded.atMs());
        kitchen.apply(orderEvent, order, recorded.atMs());
        if (orderEvent instanceof OrderEvent.DayOpened) {
            reopenedUnder = "";
        } else if (orderEvent instanceof OrderEvent.DayReopened) {
            reopenedUnder = recorded.key();
        }
    }

    /** Of what was done by somebody, only the reopening of the day is told before it is asked. */
    private void note(AuditEvent event, String key) {
        if (event instanceof AuditEvent.DoneBy done && reopenedUnder.equals(key)) {
            orders.reopenedBy(done.who());
        }
    }

    /** What goes up was made from the pans; what is brought back was not, after all. */
    private void takeFromPans(KitchenEvent event) {
        int sign =
                switch (event.kind()) {
                    case UP -> 1;
                    case BROUGHT_BACK -> -1;
                    case STARTED, SEEN, REMADE -> 0;
                };
        Part part = kitchen.find(event.part()).orElse(null);
        if (sign != 0 && part != null) {
            pans.made(
                    menuOf(part.making().menuRevision()),
                    part.id().station(),
                    part.making().selection(),
                    sign * part.pieces());
        }
    }

    /** Another date's orders name no menu of before but the one in force, and its plan is new. */
    private void forgetMenus(OrderEvent event) {
        if (event instanceof OrderEvent.DayOpened opened
                && orders.date().filter(opened.date()::equals).isEmpty()) {
            menus.values().removeIf(old -> !old.equals(menu));
            keptPlan = Optional.empty();
        }
    }

    /** What the order of an event has on it as far as is known now. */
    private List<OrderLine> lines(OrderEvent event) {
        return event.about()
                .flatMap(orders::find)
                .filter(order -> !order.isVoid())
                .map(Order::lines)
                .orElse(List.of());
    }

    public StandSettings settings() {
        return settings;
    }

    public Orders orders() {
        return orders;
    }

    /** The book of recipes in force; an empty one before the first. */
    public RecipeBook recipes() {
        return recipes;
    }

    /** What the owner has said of days; an empty one before the first word. */
    public OwnerCalendar calendar() {
        return calendar;
    }

    /** The plan of prep that was kept last; of the open day, if its date is. */
    public Optional<PlanKept> keptPlan() {
        return keptPlan;
    }

    /** What can be sold now; a menu must be in force. */
    public Selling selling() {
        Check.that(selling != null, "a stand that sells has a menu");
        return selling;
    }

    /** What was printed today. */
    public Papers papers() {
        return papers;
    }

    /** What is out today. */
    public Outs outs() {
        return outs;
    }

    /** From when to when something was out today. */
    public OutSpans outSpans() {
        return outSpans;
    }

    public Kitchen kitchen() {
        return kitchen;
    }

    /** What is kept hot today. */
    public Pans pans() {
        return pans;
    }

    /** What is on the shelves and what is being made. */
    public Larder larder() {
        return larder;
    }

    /** What was done at the pass today. */
    public Pass pass() {
        return pass;
    }

    public Till till() {
        return till;
    }

    /** Whether a menu was ever adopted; without one nothing can be sold. */
    public boolean hasMenu() {
        return menu != null;
    }

    /** The menu in force. */
    public Menu menu() {
        Check.that(menu != null, "a stand that sells has a menu");
        return menu;
    }

    /** The menu of a revision that an order of the day names. */
    public Menu menuOf(String revision) {
        Menu found = menus.get(revision);
        Check.that(found != null, "the day's orders name menus that were adopted");
        return found;
    }

    /** The place of the last event taken in. */
    public long seq() {
        return seq;
    }

    /** When the last event was decided, milliseconds since 1970-01-01 UTC. */
    public long atMs() {
        return atMs;
    }

    Deciding deciding(long nowMs) {
        return new Deciding(
                settings,
                menu(),
                nowMs,
                selling,
                lines -> WaitQuote.quote(kitchen, menu(), lines, nowMs));
    }
}
