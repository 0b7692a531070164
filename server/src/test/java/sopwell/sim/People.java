package sopwell.sim;

import java.util.List;
import java.util.Optional;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.desk.StandCommand;

/** Who is at the stand, by ids. Stateless. */
final class People {
    static final List<Who> ALL =
            List.of(
                    new Who("s1", "d1", "", "owner"),
                    new Who("s2", "d1", "", "lead"),
                    new Who("s3", "d2", "", "counter"),
                    new Who("s4", "d3", "", "line"),
                    new Who("", "", "t1", "counter"),
                    Who.AT_THIS_MACHINE);

    private static final List<Change> CHANGES = List.of(Change.values());

    private People() {}

    /** Somebody new, a screen that is lost: whatever it is, the log only takes it down. */
    static StandCommand changeOfAccess(int turn) {
        Change change = CHANGES.get(turn % CHANGES.size());
        return new StandCommand.ForAccess(
                change.name().startsWith("DEVICE")
                        ? AccessChanged.ofDevice(change, "d" + turn)
                        : change.name().startsWith("TOKEN")
                                ? AccessChanged.ofToken(change, "t" + turn)
                                : AccessChanged.ofPerson(change, "s" + turn));
    }

    /** Who asks for something, if it is known. */
    static Optional<Who> behind(StandCommand command) {
        return command instanceof StandCommand.By by ? Optional.of(by.who()) : Optional.empty();
    }
}
