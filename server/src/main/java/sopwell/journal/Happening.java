package sopwell.journal;

import java.util.Locale;

/** Everything that a stand tells of, with how much it matters. Immutable. */
public enum Happening {
    LISTENING(Weight.INFO, "the stand takes requests"),
    STOPPED(Weight.INFO, "the stand was closed"),
    START_REFUSED(Weight.ERROR, "the stand does not start"),
    SIGNED_IN(Weight.INFO, "somebody signed in, or a screen was paired"),
    SIGN_IN_FAILED(Weight.WARNING, "a secret was not the right one"),
    LOCKED_OUT(Weight.WARNING, "too many wrong secrets: a lead or owner must unlock"),
    ACCESS_CHANGED(Weight.INFO, "who may do what was changed"),
    LOG_CHECKED(Weight.INFO, "the whole log is as it was written"),
    LOG_DAMAGED(Weight.ERROR, "the log is not as it was written"),
    LOG_UNCHECKED(Weight.ERROR, "the log could not be checked; tomorrow tries again"),
    LOSS_ACCEPTED(Weight.WARNING, "the stand goes on without what its log lost"),
    MARK_LOST(Weight.WARNING, "the note of how far the log has come is begun anew"),
    LOG_REPLACED(Weight.WARNING, "the log is not the one that was noted; it is taken as restored"),
    TALLIES_DAMAGED(Weight.WARNING, "what is kept of past days is damaged and counted anew"),
    BACKUP_MADE(Weight.INFO, "a backup was made and read again"),
    BACKUP_FAILED(Weight.WARNING, "no backup was made"),
    BACKUP_CUT_SHORT(Weight.WARNING, "a backup was cut short and does not count"),
    BACKUP_DAMAGED(Weight.WARNING, "a file among the backups does not count"),
    SEEN_UNNOTED(Weight.WARNING, "what a screen saw of a lost log could not be noted"),
    CONNECTIONS_CLOSED(Weight.WARNING, "connections are closed: there are too many already"),
    OUTCOME_UNKNOWN(Weight.WARNING, "nobody knows whether a command was kept"),
    PRESS_AGAIN(Weight.WARNING, "a screen had to be told to press again"),
    REQUEST_BROKE(Weight.ERROR, "a request broke"),
    SHOWN_BROKE(Weight.ERROR, "what is shown broke"),
    TICK_FAILED(Weight.WARNING, "the day could not be looked at; the next tick tries"),
    DAY_UNCOUNTED(Weight.WARNING, "a past day could not be counted; it is tried again"),
    CLOCK_WRONG(Weight.WARNING, "the box's clock is not believed"),
    BOX_SLEPT(Weight.INFO, "the box slept"),
    UNFINISHED(Weight.WARNING, "something was left unfinished at the end"),
    DISK_UNSEEN(Weight.WARNING, "the disk could not be looked at"),
    DISK_CHANGED(Weight.WARNING, "how the disk is has changed"),
    READING_ONLY(Weight.ERROR, "writing failed again and again: only reading now"),
    WRITING_AGAIN(Weight.INFO, "the disk is well again: writing as before"),
    READ_AGAIN(Weight.WARNING, "what did not look right is looked at once more"),
    NAMES_ERASED(Weight.INFO, "names were kept as long as they may be and are erased"),
    NAMES_STAY(Weight.WARNING, "names could not be erased; tomorrow tries again"),
    NAMES_WAIT(Weight.WARNING, "the date is not believed; names stay that would be due by it"),
    PLAN_UNKEPT(Weight.WARNING, "a day's plan of prep could not be kept"),
    AUTHORITY_MADE(Weight.INFO, "a new authority was made: every tablet must trust it once"),
    CERTIFICATE_MADE(Weight.INFO, "a new certificate was made"),
    CERTIFICATE_DAMAGED(Weight.WARNING, "a certificate is damaged and made anew"),
    CERTIFICATE_STAYS(Weight.WARNING, "the certificate could not be renewed; the old one stays"),
    THREAD_BROKE(Weight.ERROR, "a thread ended by a fault"),
    LIBRARY(Weight.WARNING, "a library has something to say");

    private final Weight weight;
    private final String sentence;

    Happening(Weight weight, String sentence) {
        this.weight = weight;
        this.sentence = sentence;
    }

    /** The name in lines. */
    public String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How much it matters. */
    public Weight weight() {
        return weight;
    }

    /** What it is, in English. */
    public String sentence() {
        return sentence;
    }
}
