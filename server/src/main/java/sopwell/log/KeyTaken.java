package sopwell.log;

/** A key offered to the log is there already: the command was accepted before. */
public final class KeyTaken extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String key;

    /** The log refused this key. */
    public KeyTaken(String key) {
        super("the key is in the log already");
        this.key = key;
    }

    /** The key that is taken. */
    public String key() {
        return key;
    }
}
