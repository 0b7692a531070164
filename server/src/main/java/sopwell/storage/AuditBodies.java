package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.AuditEvent.Of;
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
            case NAMES_ERASED -> {
                NamesErased erased = (NamesErased) event;
                body.text("of", erased.of().name().toLowerCase(Locale.ROOT));
                body.text("date", erased.date().toString());
                body.textIfAny("order", erased.order());
                body.number("fromSeq", erased.fromSeq());
                body.number("toSeq", erased.toSeq());
                body.number("names", erased.names());
                body.text("digest", erased.digest());
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
            case NAMES_ERASED ->
                    new NamesErased(
                            of(body.text("of")),
                            LocalDate.parse(body.text("date")),
                            body.textOr("order"),
                            body.number("fromSeq"),
                            body.number("toSeq"),
                            body.whole("names"),
                            body.text("digest"));
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

    private static Of of(String written) {
        Optional<Of> of =
                Stream.of(Of.values())
                        .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(written))
                        .findFirst();
        Check.that(of.isPresent(), "it is known whose names were taken out");
        return of.orElseThrow();
    }
}
