package sopwell.kitchen;

import sopwell.Limits;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;

/** What may be said about stations. Stateless and pure: looks, never changes. */
public final class StationRules {
    private StationRules() {}

    /** The events that a command comes to now, or why it is refused. */
    public static Decision decide(Orders orders, StationCommand command, Deciding with) {
        return switch (command.kind()) {
            case SET_HANDS -> setHands(orders, (StationCommand.SetHands) command, with);
        };
    }

    /** Opens the day if none is open: hands come before the first guest. */
    private static Decision setHands(Orders orders, StationCommand.SetHands set, Deciding with) {
        if (!with.menu().hasStation(set.station())) {
            return Decision.refused(Reason.UNKNOWN_STATION, set.station());
        }
        if (set.hands() < 1 || set.hands() > Limits.STATION_HANDS_MAX) {
            return Decision.refused(Reason.HANDS_RANGE, set.hands(), Limits.STATION_HANDS_MAX);
        }
        return Decision.accepted(new StationEvent.HandsSet(set.station(), set.hands()))
                .after(OrderRules.beforeToday(orders, with));
    }
}
