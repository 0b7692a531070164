package sopwell;

/** Checks that are always on. A failed check is a bug in Sopwell, never bad input. Thread-safe. */
public final class Check {
    private Check() {}

    /** A rule of the program was broken; the desk throws its state away and rebuilds it. */
    public static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Broken(String sentence) {
            super(sentence);
        }
    }

    /**
     * States what must hold here.
     *
     * @throws Broken with the sentence when it does not hold
     */
    public static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new Broken(sentence);
        }
    }
}
