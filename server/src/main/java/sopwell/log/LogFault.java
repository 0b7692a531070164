package sopwell.log;

/** The store failed. Whether the last append was kept is unknown until the log is read again. */
public class LogFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** A fault with its cause. */
    public LogFault(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** A fault found by Sopwell itself. */
    public LogFault(String sentence) {
        super(sentence);
    }
}
