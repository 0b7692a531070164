package sopwell.storage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.StationEvent;
import sopwell.log.Event;
import sopwell.menu.MenuEvent;
import sopwell.orders.OrderEvent;
import sopwell.orders.OutEvent;
import sopwell.orders.PaperEvent;
import sopwell.prep.HistoryEvent;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.past.PlanEvent;
import sopwell.stock.PanEvent;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.till.TillEvent;

/**
 * The frozen name of every event, and the newest version of its written form. A name or a version
 * that was ever written is never given another meaning; a new form gets the next version.
 */
enum EventName {
    DAY_OPENED("day-opened", 1, OrderEvent.DayOpened.class),
    DAY_CLOSED("day-closed", 1, OrderEvent.DayClosed.class),
    DAY_REOPENED("day-reopened", 1, OrderEvent.DayReopened.class),
    MENU_ADOPTED("menu-adopted", 1, MenuEvent.MenuAdopted.class),
    RECIPES_ADOPTED("recipes-adopted", 2, RecipeEvent.RecipesAdopted.class),
    CALENDAR_SET("calendar-set", 1, CalendarEvent.CalendarSet.class),
    PLAN_KEPT("plan-kept", 1, PlanEvent.PlanKept.class),
    ORDER_PLACED("order-placed", 1, OrderEvent.OrderPlaced.class),
    ORDER_TOLD("order-told", 1, OrderEvent.OrderTold.class),
    ORDER_CHANGED("order-changed", 1, OrderEvent.OrderChanged.class),
    ORDER_DISCOUNTED("order-discounted", 1, OrderEvent.OrderDiscounted.class),
    ORDER_VOIDED("order-voided", 1, OrderEvent.OrderVoided.class),
    ORDER_HANDED("order-handed", 1, OrderEvent.OrderHanded.class),
    ORDER_BROUGHT_BACK("order-brought-back", 1, OrderEvent.OrderBroughtBack.class),
    OUT_MARKED("out-marked", 1, OutEvent.OutMarked.class),
    OUT_LIFTED("out-lifted", 1, OutEvent.OutLifted.class),
    ORDER_PAID("order-paid", 1, TillEvent.OrderPaid.class),
    ORDER_REFUNDED("order-refunded", 1, TillEvent.OrderRefunded.class),
    TILL_OPENED("till-opened", 1, TillEvent.TillOpened.class),
    TILL_PAID_IN("till-paid-in", 1, TillEvent.PaidIn.class),
    TILL_PAID_OUT("till-paid-out", 1, TillEvent.PaidOut.class),
    TILL_CLOSED("till-closed", 1, TillEvent.TillClosed.class),
    NUMBER_CALLED("number-called", 1, PassEvent.NumberCalled.class),
    BAGS_COUNTED("bags-counted", 1, PassEvent.BagsCounted.class),
    PAN_REFILLED("pan-refilled", 1, PanEvent.PanRefilled.class),
    INGREDIENT_COUNTED("ingredient-counted", 1, LarderEvent.IngredientCounted.class),
    INGREDIENT_WASTED("ingredient-wasted", 1, LarderEvent.IngredientWasted.class),
    INGREDIENT_DELIVERED("ingredient-delivered", 1, LarderEvent.IngredientDelivered.class),
    SLICER_CLEANED("slicer-cleaned", 1, LarderEvent.SlicerCleaned.class),
    CLOCK_STARTED("clock-started", 1, LarderEvent.ClockStarted.class),
    CLOCK_MEASURED("clock-measured", 1, LarderEvent.ClockMeasured.class),
    CLOCK_STOPPED("clock-stopped", 1, LarderEvent.ClockStopped.class),
    STOCK_CARRIED("stock-carried", 1, LarderEvent.StockCarried.class),
    BATCH_STARTED("batch-started", 1, BatchEvent.BatchStarted.class),
    BATCH_MOVED("batch-moved", 1, BatchEvent.BatchMoved.class),
    TEMPERATURE_TAKEN("temperature-taken", 1, BatchEvent.TemperatureTaken.class),
    BATCH_YIELDED("batch-yielded", 1, BatchEvent.BatchYielded.class),
    BATCH_DISCARDED("batch-discarded", 1, BatchEvent.BatchDiscarded.class),
    BATCH_USED_UP("batch-used-up", 1, BatchEvent.BatchUsedUp.class),
    PAPER_PRINTED("paper-printed", 1, PaperEvent.PaperPrinted.class),
    PART_STARTED("part-started", 1, KitchenEvent.PartStarted.class),
    PART_UP("part-up", 1, KitchenEvent.PartUp.class),
    PART_BROUGHT_BACK("part-brought-back", 1, KitchenEvent.PartBroughtBack.class),
    PART_SEEN("part-seen", 1, KitchenEvent.PartSeen.class),
    PACE_CARRIED("pace-carried", 1, PaceEvent.PaceCarried.class),
    HANDS_SET("hands-set", 1, StationEvent.HandsSet.class),
    PART_REMADE("part-remade", 1, KitchenEvent.PartRemade.class),
    QUERY_ASKED("query-asked", 1, QueryEvent.QueryAsked.class),
    QUERY_ANSWERED("query-answered", 1, QueryEvent.QueryAnswered.class),
    PAST_DAY_KEPT("past-day-kept", 1, HistoryEvent.PastDayKept.class),
    DONE_BY("done-by", 1, AuditEvent.DoneBy.class),
    ACCESS_CHANGED("access-changed", 1, AuditEvent.AccessChanged.class),
    NAMES_ERASED("names-erased", 1, AuditEvent.NamesErased.class);

    /** The events of which there are a few for a day at most; the log can list these. */
    static final List<EventName> RARE =
            List.of(
                    DAY_OPENED,
                    DAY_CLOSED,
                    MENU_ADOPTED,
                    RECIPES_ADOPTED,
                    CALENDAR_SET,
                    OUT_MARKED,
                    OUT_LIFTED,
                    PAST_DAY_KEPT,
                    DONE_BY,
                    NAMES_ERASED);

    private static final Map<String, EventName> BY_WRITTEN = byWritten();
    private static final Map<Class<? extends Event>, EventName> BY_TYPE = byType();

    private final String written;
    private final int version;
    private final Class<? extends Event> type;

    EventName(String written, int version, Class<? extends Event> type) {
        this.written = written;
        this.version = version;
        this.type = type;
    }

    /** The name as it stands in the log. */
    String written() {
        return written;
    }

    /** The version that is written today, from 1. */
    int version() {
        return version;
    }

    Class<? extends Event> type() {
        return type;
    }

    /** The event with this name, if there ever was one. */
    static Optional<EventName> read(String written) {
        return Optional.ofNullable(BY_WRITTEN.get(written));
    }

    /** The name of a type of event, if it has one. */
    static Optional<EventName> of(Class<? extends Event> type) {
        return Optional.ofNullable(BY_TYPE.get(type));
    }

    /** The name of a type of event, which has one. */
    static EventName needed(Class<? extends Event> type) {
        Check.that(BY_TYPE.containsKey(type), "every type of event has a name in the log");
        return BY_TYPE.get(type);
    }

    private static Map<String, EventName> byWritten() {
        Map<String, EventName> names = new HashMap<>();
        Stream.of(values()).forEach(name -> names.put(name.written, name));
        return Map.copyOf(names);
    }

    private static Map<Class<? extends Event>, EventName> byType() {
        Map<Class<? extends Event>, EventName> names = new HashMap<>();
        Stream.of(values()).forEach(name -> names.put(name.type, name));
        return Map.copyOf(names);
    }
}
