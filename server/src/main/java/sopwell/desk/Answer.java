package sopwell.desk;

import java.util.List;
import java.util.Optional;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.log.Recorded;
import sopwell.orders.Refusal;

/**
 * What came of a command. Immutable.
 *
 * @param events what the command came to, durable; a repeat gets those of the first time
 * @param outcome whether it was done, done before, refused, or its key was used for another
 * @param refusal why not, when refused
 */
public record Answer(Outcome outcome, List<Recorded> events, Optional<Refusal> refusal) {
    public Answer {
        events = List.copyOf(events);
    }

    /** The ways a command can end. */
    public enum Outcome {
        /** Done now, or there was nothing to do. */
        DONE,
        /** Done before under the same key; the first answer again. */
        REPEATED,
        /** The rules don't allow it. */
        REFUSED,
        /** The key stands for another command. */
        KEY_REUSED
    }

    static Answer done(List<Recorded> events) {
        return new Answer(Outcome.DONE, ofTheCommand(events), Optional.empty());
    }

    static Answer repeated(List<Recorded> events) {
        return new Answer(Outcome.REPEATED, ofTheCommand(events), Optional.empty());
    }

    /** Who it was is nothing that the command came to. */
    private static List<Recorded> ofTheCommand(List<Recorded> events) {
        return events.stream().filter(one -> !(one.event() instanceof DoneBy)).toList();
    }

    static Answer refused(Refusal refusal) {
        return new Answer(Outcome.REFUSED, List.of(), Optional.of(refusal));
    }

    static Answer keyReused() {
        return new Answer(Outcome.KEY_REUSED, List.of(), Optional.empty());
    }
}
