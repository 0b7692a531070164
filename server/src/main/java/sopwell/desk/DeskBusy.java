package sopwell.desk;

/** The desk can't take the command now: its queue is full or it is closed. Safe to try again. */
public final class DeskBusy extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Says why. */
    public DeskBusy(String sentence) {
        super(sentence);
    }
}
