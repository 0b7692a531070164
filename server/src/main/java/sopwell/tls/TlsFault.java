package sopwell.tls;

/** A certificate or key can't be made or read; the sentence is for whoever started the stand. */
public final class TlsFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TlsFault(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
