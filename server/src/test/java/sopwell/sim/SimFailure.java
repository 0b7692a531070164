package sopwell.sim;

/** A day that went wrong, with what it takes to see it again. */
final class SimFailure extends AssertionError {
    private static final long serialVersionUID = 1L;

    SimFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
