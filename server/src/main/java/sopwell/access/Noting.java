package sopwell.access;

/** Notes a change of who may do what before it is made. Implementations are thread-safe. */
@FunctionalInterface
public interface Noting {
    /** For the command line, which changes a stand that does not run. */
    Noting NOWHERE = id -> {};

    /**
     * Returns once the note is kept. What it throws when that can't be done ends the change, of
     * which nothing is made then.
     *
     * @param id of the person, device or program's token that is about to change
     */
    void note(String id);
}
