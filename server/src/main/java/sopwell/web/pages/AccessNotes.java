package sopwell.web.pages;

import java.util.function.Function;
import java.util.logging.Logger;
import sopwell.access.Noting;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/** Puts into the log what is about to change of who may do what. Thread-safe. */
final class AccessNotes {
    private static final Logger LOGGER = Logger.getLogger(AccessNotes.class.getName());

    private final PageContext context;

    AccessNotes(PageContext context) {
        this.context = context;
    }

    /** What was about to change could not be noted, so it was not changed. */
    static final class NotNoted extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotNoted(Throwable cause) {
            super(cause);
        }
    }

    /** Notes what somebody changes of a person. */
    Noting person(Who who, Change change) {
        return noting(who, id -> AccessChanged.ofPerson(change, id));
    }

    /** Notes what somebody changes of a device. */
    Noting device(Who who, Change change) {
        return noting(who, id -> AccessChanged.ofDevice(change, id));
    }

    /** Notes what somebody changes of a program's token. */
    Noting token(Who who, Change change) {
        return noting(who, id -> AccessChanged.ofToken(change, id));
    }

    private Noting noting(Who who, Function<String, AccessChanged> changed) {
        return id -> keep(who, changed.apply(id));
    }

    /** Waits until the note is kept. */
    private void keep(Who who, AccessChanged changed) {
        StandCommand noted = new StandCommand.By(who, new StandCommand.ForAccess(changed));
        String key = context.keys().get();
        try {
            Answer answer = PageHandling.await(context.desk().submit(key, key, noted));
            if (answer.outcome() != Answer.Outcome.DONE) {
                throw new NotNoted(new IllegalStateException(answer.toString()));
            }
            Told.of(Happening.ACCESS_CHANGED)
                    .with("change", changed.change())
                    .id("person", changed.person())
                    .id("device", changed.device())
                    .id("token", changed.token())
                    .id("byPerson", who.person())
                    .id("byDevice", who.device())
                    .id("byToken", who.token())
                    .to(LOGGER);
        } catch (PageHandling.Interrupted unkept) {
            throw new NotNoted(unkept);
        }
    }
}
