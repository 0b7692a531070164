package sopwell.page;

import org.teavm.jso.JSBody;

/** Takes letters and their accents apart as browsers do. Stands in for Java's own. Stateless. */
public final class Normalizer {
    private Normalizer() {}

    /** The one form that is asked for. */
    public enum Form {
        NFD
    }

    /** The text with every letter and its accents as characters of their own. */
    public static String normalize(CharSequence text, Form form) {
        return apart(text.toString());
    }

    @JSBody(params = "text", script = "return text.normalize('NFD');")
    private static native String apart(String text);
}
