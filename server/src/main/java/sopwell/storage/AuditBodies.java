package sopwell.storage;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.Who;

/** The written form of who did what, version 1. Stateless. */
final class AuditBodies {
    private AuditBodies() {}

    static void write(BodyWriter body, AuditEvent event) throws IOException {
        switch (event.kind()) {
            case DONE_BY -> {
                Who who = ((DoneBy) event).who();
                ids(body, who.person(), who.device(), who.token());
                body.textIfAny("role", who.role());
            }
            case ACCESS_CHANGED -> {
                AccessChanged changed = (AccessChanged) event;
                body.text("change", written(changed.change()));
                ids(body, changed.person(), changed.device(), changed.token());
            }
        }
    }

    static AuditEvent read(BodyReader body, AuditEvent.Kind kind) throws IOException {
        return switch (kind) {
            case DONE_BY ->
                    new DoneBy(
                            new Who(
                                    body.textOr("person"),
                                    body.textOr("device"),
                                    body.textOr("token"),
                                    body.textOr("role")));
            case ACCESS_CHANGED ->
                    new AccessChanged(
                            change(body.text("change")),
                            body.textOr("person"),
                            body.textOr("device"),
                            body.textOr("token"));
        };
    }

    private static void ids(BodyWriter body, String person, String device, String token)
            throws IOException {
        body.textIfAny("person", person);
        body.textIfAny("device", device);
        body.textIfAny("token", token);
    }

    private static String written(Change change) {
        return change.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Change change(String written) {
        Optional<Change> change =
                Stream.of(Change.values()).filter(one -> written(one).equals(written)).findFirst();
        Check.that(change.isPresent(), "a change of access has a name that is known");
        return change.orElseThrow();
    }
}
