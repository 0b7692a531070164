package sopwell.orders;

import java.util.List;
import java.util.concurrent.TimeUnit;
import sopwell.Limits;
import sopwell.log.Event;

/** What may be marked as out. Stateless and pure: looks, never changes. */
public final class OutRules {
    private OutRules() {}

    /** The events that a command comes to now, or why it is refused. */
    public static Decision decide(Outs outs, Orders orders, OutCommand command, Deciding with) {
        return switch (command.kind()) {
            case MARK -> mark(outs, orders, (OutCommand.Mark) command, with);
            case LIFT -> lift(outs, (OutCommand.Lift) command);
            case LIFT_DUE -> {
                List<OutEvent.OutLifted> due =
                        outs.due(with.nowMs()).stream()
                                .map(out -> new OutEvent.OutLifted(out, true))
                                .toList();
                yield Decision.accepted().after(due);
            }
        };
    }

    private static Decision mark(Outs outs, Orders orders, OutCommand.Mark mark, Deciding with) {
        if (!mark.out().isOn(with.menu())) {
            return Decision.refused(Reason.NOT_ON_MENU, mark.out());
        }
        if (mark.left() < 0 || mark.left() > Limits.OUT_LEFT_MAX) {
            return Decision.refused(Reason.LEFT_RANGE, mark.left(), Limits.OUT_LEFT_MAX);
        }
        if (mark.minutes() < 0 || mark.minutes() > Limits.OUT_MINUTES_MAX) {
            return Decision.refused(Reason.MINUTES_RANGE, mark.minutes(), Limits.OUT_MINUTES_MAX);
        }
        boolean known = outs.find(mark.out()).isPresent();
        if (!known && outs.all().size() >= Limits.OUTS_MAX) {
            return Decision.refused(Reason.TOO_MANY_OUT, Limits.OUTS_MAX);
        }
        long untilMs =
                mark.minutes() == 0 ? 0 : with.nowMs() + TimeUnit.MINUTES.toMillis(mark.minutes());
        List<Event> day = OrderRules.beforeToday(orders, with);
        return Decision.accepted(new OutEvent.OutMarked(mark.out(), mark.left(), untilMs))
                .after(day);
    }

    private static Decision lift(Outs outs, OutCommand.Lift lift) {
        return outs.find(lift.out()).isPresent()
                ? Decision.accepted(new OutEvent.OutLifted(lift.out(), false))
                : Decision.refused(Reason.NOT_OUT, lift.out());
    }
}
