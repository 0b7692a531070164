package sopwell.web.pages;

import java.util.logging.Logger;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.desk.StandCommand;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/** Puts into the log what was changed of who may do what. Thread-safe. */
final class AccessNotes {
    private static final Logger LOGGER = Logger.getLogger(AccessNotes.class.getName());

    private final PageContext context;

    AccessNotes(PageContext context) {
        this.context = context;
    }

    /** Notes a change, and waits until it is kept. */
    void note(Who who, AccessChanged changed) throws PageHandling.Interrupted {
        Told.of(Happening.ACCESS_CHANGED)
                .with("change", changed.change())
                .id("person", changed.person())
                .id("device", changed.device())
                .id("token", changed.token())
                .id("byPerson", who.person())
                .id("byDevice", who.device())
                .id("byToken", who.token())
                .to(LOGGER);
        String key = context.keys().get();
        PageHandling.await(
                context.desk()
                        .submit(
                                key,
                                key,
                                new StandCommand.By(who, new StandCommand.ForAccess(changed))));
    }

    /** Notes that a device was let in. */
    void paired(Who who, String device) throws PageHandling.Interrupted {
        note(who, AccessChanged.ofDevice(Change.DEVICE_PAIRED, device));
    }
}
