package sopwell.web.pages;

import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.desk.StandCommand;

/** Puts into the log what was changed of who may do what. Thread-safe. */
final class AccessNotes {
    private final PageContext context;

    AccessNotes(PageContext context) {
        this.context = context;
    }

    /** Notes a change, and waits until it is kept. */
    void note(Who who, AccessChanged changed) throws PageHandling.Interrupted {
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
