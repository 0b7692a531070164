package sopwell;

/** The stand can't start as it is asked to; the sentence is for whoever started it. */
final class StartRefused extends Exception {
    private static final long serialVersionUID = 1L;

    StartRefused(String sentence) {
        super(sentence);
    }
}
