package sopwell.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.log.Event;

/**
 * What the rules say to a command: the events it comes to, or why not. Immutable.
 *
 * @param events in order; none when refused, and none when there is nothing to do
 */
public record Decision(List<Event> events, Optional<Refusal> refusal) {
    public Decision {
        events = List.copyOf(events);
    }

    /** The command comes to these events. */
    public static Decision accepted(Event... events) {
        return new Decision(List.of(events), Optional.empty());
    }

    /** The command is refused. */
    public static Decision refused(Reason reason, Object... args) {
        return new Decision(List.of(), Optional.of(Refusal.of(reason, args)));
    }

    public boolean isRefused() {
        return refusal.isPresent();
    }

    /** The same events after others. */
    public Decision after(List<? extends Event> earlier) {
        List<Event> all = new ArrayList<>(earlier);
        all.addAll(events);
        return new Decision(all, refusal);
    }
}
