package sopwell.storage;

import sopwell.log.LogFault;

/** A log that ends before events that were kept; nothing was changed yet. */
public final class LogLoss extends LogFault {
    private static final long serialVersionUID = 1L;

    LogLoss(long last, long kept) {
        super(
                "The log ends at event "
                        + last
                        + ", but "
                        + kept
                        + " were kept: "
                        + (kept - last)
                        + " at its end are lost. Nothing was changed. Restore a backup, or go on"
                        + " without them with serve --accept-loss.");
    }
}
