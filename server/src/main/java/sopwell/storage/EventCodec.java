package sopwell.storage;

import java.io.IOException;
import java.time.DateTimeException;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.StationEvent;
import sopwell.log.Event;
import sopwell.log.LogFault;
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
 * Turns events into their written form and back. Stateless, thread-safe.
 *
 * <p>Every form that was ever written stays readable: {@code docs/events.md} lists them, and one
 * golden file for each is never edited.
 */
final class EventCodec {
    private EventCodec() {}

    /** The name of an event. */
    static EventName name(Event event) {
        java.util.Optional<EventName> name = EventName.of(event.getClass());
        Check.that(name.isPresent(), "every event that happens has a name in the log");
        return name.get();
    }

    /** An event's body in its newest version, as JSON in UTF-8. */
    static byte[] encode(Event event) {
        try {
            return BodyWriter.bytes(body -> write(body, event));
        } catch (IOException e) {
            throw new LogFault("An event can't be written: " + e.getMessage(), e);
        }
    }

    /**
     * The event that was written.
     *
     * @param seq its place in the log, for the fault's sentence
     * @throws LogFault when the name or the version is not known, or the body is damaged
     */
    static Event decode(long seq, String written, int version, byte[] body) {
        EventName name =
                EventName.read(written)
                        .orElseThrow(
                                () ->
                                        new LogFault(
                                                "Event "
                                                        + seq
                                                        + " is a \""
                                                        + written
                                                        + "\", which this Sopwell does not"
                                                        + " know: a newer one wrote it."));
        if (version < 1 || version > name.version()) {
            throw new LogFault(
                    "Event "
                            + seq
                            + " is a \""
                            + written
                            + "\" of version "
                            + version
                            + "; this Sopwell reads up to version "
                            + name.version()
                            + ".");
        }
        try (BodyReader reader = new BodyReader(body)) {
            Event event = read(reader, name);
            reader.end();
            return event;
        } catch (IOException | DateTimeException | Check.Broken e) {
            throw new LogFault(
                    "Event " + seq + ", a \"" + written + "\", can't be read: " + e.getMessage(),
                    e);
        }
    }

    private static void write(BodyWriter body, Event event) throws IOException {
        if (event instanceof OrderEvent order) {
            OrderBodies.write(body, order);
        } else if (event instanceof KitchenEvent kitchen) {
            KitchenBodies.write(body, kitchen);
        } else if (event instanceof QueryEvent query) {
            QueryBodies.write(body, query);
        } else if (event instanceof PassEvent pass) {
            PassBodies.write(body, pass);
        } else if (event instanceof PaceEvent pace) {
            PaceBodies.write(body, pace);
        } else if (event instanceof StationEvent station) {
            StationBodies.write(body, station);
        } else if (event instanceof PanEvent pan) {
            PanBodies.write(body, pan);
        } else if (event instanceof RecipeEvent recipes) {
            RecipeBodies.write(body, recipes);
        } else if (event instanceof CalendarEvent calendar) {
            CalendarBodies.write(body, calendar);
        } else if (event instanceof PlanEvent plan) {
            PlanBodies.write(body, plan);
        } else if (event instanceof LarderEvent larder) {
            LarderBodies.write(body, larder);
        } else if (event instanceof BatchEvent batch) {
            BatchBodies.write(body, batch);
        } else if (event instanceof PaperEvent paper) {
            PaperBodies.write(body, paper);
        } else if (event instanceof OutEvent out) {
            OutBodies.write(body, out);
        } else if (event instanceof HistoryEvent history) {
            HistoryBodies.write(body, history);
        } else if (event instanceof AuditEvent audit) {
            AuditBodies.write(body, audit);
        } else if (event instanceof TillEvent till) {
            TillBodies.write(body, till);
        } else {
            MenuBodies.write(body, (MenuEvent) event);
        }
    }

    private static Event read(BodyReader body, EventName name) throws IOException {
        return switch (name) {
            case DAY_OPENED -> OrderBodies.read(body, OrderEvent.Kind.DAY_OPENED);
            case DAY_CLOSED -> OrderBodies.read(body, OrderEvent.Kind.DAY_CLOSED);
            case DAY_REOPENED -> OrderBodies.read(body, OrderEvent.Kind.DAY_REOPENED);
            case MENU_ADOPTED -> MenuBodies.read(body, MenuEvent.Kind.ADOPTED);
            case RECIPES_ADOPTED -> RecipeBodies.read(body);
            case CALENDAR_SET -> CalendarBodies.read(body);
            case PLAN_KEPT -> PlanBodies.read(body);
            case ORDER_PLACED -> OrderBodies.read(body, OrderEvent.Kind.PLACED);
            case ORDER_TOLD -> OrderBodies.read(body, OrderEvent.Kind.TOLD);
            case ORDER_CHANGED -> OrderBodies.read(body, OrderEvent.Kind.CHANGED);
            case ORDER_DISCOUNTED -> OrderBodies.read(body, OrderEvent.Kind.DISCOUNTED);
            case ORDER_VOIDED -> OrderBodies.read(body, OrderEvent.Kind.VOIDED);
            case ORDER_HANDED -> OrderBodies.read(body, OrderEvent.Kind.HANDED);
            case ORDER_BROUGHT_BACK -> OrderBodies.read(body, OrderEvent.Kind.BROUGHT_BACK);
            case OUT_MARKED -> OutBodies.read(body, OutEvent.Kind.MARKED);
            case OUT_LIFTED -> OutBodies.read(body, OutEvent.Kind.LIFTED);
            case ORDER_PAID -> TillBodies.read(body, TillEvent.Kind.PAID);
            case ORDER_REFUNDED -> TillBodies.read(body, TillEvent.Kind.REFUNDED);
            case TILL_OPENED -> TillBodies.read(body, TillEvent.Kind.OPENED);
            case TILL_PAID_IN -> TillBodies.read(body, TillEvent.Kind.PAID_IN);
            case TILL_PAID_OUT -> TillBodies.read(body, TillEvent.Kind.PAID_OUT);
            case TILL_CLOSED -> TillBodies.read(body, TillEvent.Kind.CLOSED);
            case NUMBER_CALLED -> PassBodies.read(body, PassEvent.Kind.CALLED);
            case BAGS_COUNTED -> PassBodies.read(body, PassEvent.Kind.BAGGED);
            case PAN_REFILLED -> PanBodies.read(body);
            case INGREDIENT_COUNTED -> LarderBodies.read(body, LarderEvent.Kind.COUNTED);
            case INGREDIENT_WASTED -> LarderBodies.read(body, LarderEvent.Kind.WASTED);
            case INGREDIENT_DELIVERED -> LarderBodies.read(body, LarderEvent.Kind.DELIVERED);
            case SLICER_CLEANED -> LarderBodies.read(body, LarderEvent.Kind.SLICER_CLEANED);
            case CLOCK_STARTED -> LarderBodies.read(body, LarderEvent.Kind.CLOCK_STARTED);
            case CLOCK_MEASURED -> LarderBodies.read(body, LarderEvent.Kind.CLOCK_MEASURED);
            case CLOCK_STOPPED -> LarderBodies.read(body, LarderEvent.Kind.CLOCK_STOPPED);
            case STOCK_CARRIED -> LarderBodies.read(body, LarderEvent.Kind.CARRIED);
            case BATCH_STARTED -> BatchBodies.read(body, BatchEvent.Kind.STARTED);
            case BATCH_MOVED -> BatchBodies.read(body, BatchEvent.Kind.MOVED);
            case TEMPERATURE_TAKEN -> BatchBodies.read(body, BatchEvent.Kind.MEASURED);
            case BATCH_YIELDED -> BatchBodies.read(body, BatchEvent.Kind.YIELDED);
            case BATCH_DISCARDED -> BatchBodies.read(body, BatchEvent.Kind.DISCARDED);
            case BATCH_USED_UP -> BatchBodies.read(body, BatchEvent.Kind.USED_UP);
            case PAPER_PRINTED -> PaperBodies.read(body);
            case PART_STARTED -> KitchenBodies.read(body, KitchenEvent.Kind.STARTED);
            case PART_UP -> KitchenBodies.read(body, KitchenEvent.Kind.UP);
            case PART_BROUGHT_BACK -> KitchenBodies.read(body, KitchenEvent.Kind.BROUGHT_BACK);
            case PART_SEEN -> KitchenBodies.read(body, KitchenEvent.Kind.SEEN);
            case PACE_CARRIED -> PaceBodies.read(body, PaceEvent.Kind.CARRIED);
            case PART_REMADE -> KitchenBodies.read(body, KitchenEvent.Kind.REMADE);
            case HANDS_SET -> StationBodies.read(body, StationEvent.Kind.HANDS_SET);
            case QUERY_ASKED -> QueryBodies.read(body, QueryEvent.Kind.ASKED);
            case QUERY_ANSWERED -> QueryBodies.read(body, QueryEvent.Kind.ANSWERED);
            case DONE_BY -> AuditBodies.read(body, AuditEvent.Kind.DONE_BY);
            case ACCESS_CHANGED -> AuditBodies.read(body, AuditEvent.Kind.ACCESS_CHANGED);
            case NAMES_ERASED -> AuditBodies.read(body, AuditEvent.Kind.NAMES_ERASED);
            case PAST_DAY_KEPT -> HistoryBodies.read(body, HistoryEvent.Kind.KEPT);
        };
    }
}
