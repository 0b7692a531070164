package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.KitchenRules;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.PassRules;
import sopwell.kitchen.QueryRules;
import sopwell.kitchen.StationRules;
import sopwell.log.Event;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.OrderRules;
import sopwell.orders.OutRules;
import sopwell.orders.PaperRules;
import sopwell.orders.Refusal;
import sopwell.prep.calendar.CalendarRules;
import sopwell.prep.past.PlanRules;
import sopwell.stock.PanRules;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.LarderRules;
import sopwell.stock.recipes.RecipeRules;
import sopwell.till.TillRules;

/** Sends each command to the rules of its slice. Stateless and pure. */
final class StandRules {
    private StandRules() {}

    static Decision decide(Stand stand, StandCommand command, long nowMs) {
        return carryingOn(stand, decided(stand, command, nowMs));
    }

    /**
     * What was learned and what is kept goes on into a day that opens, so that the log of the day
     * has it.
     */
    private static Decision carryingOn(Stand stand, Decision decision) {
        if (decision.events().stream().noneMatch(DayOpened.class::isInstance)) {
            return decision;
        }
        PaceEvent.PaceCarried pace = stand.kitchen().learned();
        LarderEvent.StockCarried stock = stand.larder().carried();
        List<Event> events = new ArrayList<>();
        for (Event event : decision.events()) {
            events.add(event);
            if (event instanceof DayOpened && !pace.isNothing()) {
                events.add(pace);
            }
            if (event instanceof DayOpened && !stock.isNothing()) {
                events.add(stock);
            }
        }
        return new Decision(events, decision.refusal());
    }

    private static Decision decided(Stand stand, StandCommand command, long nowMs) {
        return switch (command.kind()) {
            case ORDER -> orders(stand, ((StandCommand.ForOrders) command).command(), nowMs);
            case KITCHEN -> kitchen(stand, ((StandCommand.ForKitchen) command).command(), nowMs);
            case PASS -> pass(stand, ((StandCommand.ForPass) command).command());
            case PAN ->
                    PanRules.decide(
                            stand.orders(),
                            ((StandCommand.ForPans) command).command(),
                            stand.deciding(nowMs));
            case LARDER ->
                    LarderRules.decide(
                            stand.larder(),
                            stand.orders(),
                            stand.recipes(),
                            ((StandCommand.ForLarder) command).command(),
                            stand.deciding(nowMs));
            case QUERY ->
                    QueryRules.decide(
                            stand.kitchen(),
                            stand.orders(),
                            ((StandCommand.ForQueries) command).command(),
                            stand.deciding(nowMs));
            case STATION ->
                    StationRules.decide(
                            stand.orders(),
                            ((StandCommand.ForStations) command).command(),
                            stand.deciding(nowMs));
            case OUT ->
                    OutRules.decide(
                            stand.outs(),
                            stand.orders(),
                            ((StandCommand.ForOuts) command).command(),
                            stand.deciding(nowMs));
            case TILL ->
                    TillRules.decide(
                            stand.till(),
                            stand.orders(),
                            ((StandCommand.ForTill) command).command(),
                            stand.deciding(nowMs));
            case PAPER ->
                    PaperRules.decide(
                            stand.papers(),
                            stand.orders(),
                            ((StandCommand.ForPaper) command).command(),
                            stand.menu());
            case MENU -> adopt(stand, ((StandCommand.AdoptMenu) command).menu());
            case CALENDAR ->
                    CalendarRules.decide(
                            stand.calendar(),
                            stand.recipes(),
                            ((StandCommand.ForCalendar) command).command(),
                            stand.deciding(nowMs));
            case PLAN -> plan(stand, (StandCommand.ForPlan) command);
            case RECIPES -> recipes(stand, (StandCommand.AdoptRecipes) command);
            case BY -> by(stand, (StandCommand.By) command, nowMs);
            case NAMES -> Decision.accepted(((StandCommand.ForNames) command).erased());
            case ACCESS -> Decision.accepted(((StandCommand.ForAccess) command).changed());
        };
    }

    private static Decision by(Stand stand, StandCommand.By by, long nowMs) {
        Optional<Refusal> kept = PaidVoid.refused(stand, by.who(), by.command());
        if (kept.isPresent()) {
            return new Decision(List.of(), kept);
        }
        return Answerable.noted(decided(stand, by.command(), nowMs), by.who());
    }

    private static Decision pass(Stand stand, PassCommand command) {
        return PassRules.decide(stand.pass(), stand.kitchen(), stand.orders(), command);
    }

    private static Decision plan(Stand stand, StandCommand.ForPlan keep) {
        return PlanRules.decide(stand.orders(), stand.keptPlan(), keep.command());
    }

    private static Decision recipes(Stand stand, StandCommand.AdoptRecipes adopt) {
        Decision decision = RecipeRules.decide(stand.recipes(), adopt.book(), adopt.expected());
        return decision.isRefused()
                ? decision
                : LarderRules.lost(stand.larder(), stand.recipes(), adopt.book())
                        .map(refusal -> new Decision(List.of(), Optional.of(refusal)))
                        .orElse(decision);
    }

    private static Decision orders(Stand stand, OrderCommand command, long nowMs) {
        Decision decision = OrderRules.decide(stand.orders(), command, stand.deciding(nowMs));
        if (command.kind() == OrderCommand.Kind.CHANGE && !decision.isRefused()) {
            return withAnswers(stand, decision);
        }
        if (command.kind() == OrderCommand.Kind.CLOSE_DAY && !decision.isRefused()) {
            Optional<Refusal> stillOpen = TillRules.stillOpen(stand.till());
            return stillOpen.isPresent() ? new Decision(List.of(), stillOpen) : decision;
        }
        if (command.kind() != OrderCommand.Kind.HAND || decision.isRefused()) {
            return decision;
        }
        String id = ((OrderCommand.Hand) command).order();
        Optional<Refusal> notWhole =
                KitchenRules.notWhole(stand.kitchen(), stand.orders().find(id).orElseThrow());
        return notWhole.isPresent() ? new Decision(List.of(), notWhole) : decision;
    }

    /** An order of which something is made again is open, also if it was handed a moment ago. */
    private static Decision kitchen(Stand stand, KitchenCommand command, long nowMs) {
        Decision decision = KitchenRules.decide(stand.kitchen(), stand.orders(), command);
        if (command.kind() != KitchenCommand.Kind.REMAKE || decision.isRefused()) {
            return decision;
        }
        String id = ((KitchenCommand.Remake) command).parts().get(0).order();
        if (!stand.orders().find(id).orElseThrow().isHanded()) {
            return decision;
        }
        Decision back =
                OrderRules.decide(
                        stand.orders(), new OrderCommand.BringBack(id), stand.deciding(nowMs));
        return back.isRefused() ? back : decision.after(back.events());
    }

    /** Whoever edits what a station has asked about has answered. */
    private static Decision withAnswers(Stand stand, Decision decision) {
        List<Event> events = new ArrayList<>(decision.events());
        for (Event event : decision.events()) {
            if (event instanceof OrderChanged changed) {
                Order before = stand.orders().find(changed.order()).orElseThrow();
                events.addAll(QueryRules.answeredBy(stand.kitchen(), before, changed));
            }
        }
        return new Decision(events, Optional.empty());
    }

    private static Decision adopt(Stand stand, Menu menu) {
        boolean inForce = stand.hasMenu() && stand.menu().revision().equals(menu.revision());
        return inForce ? Decision.accepted() : Decision.accepted(new MenuAdopted(menu));
    }
}
