package sopwell.web;

import java.util.Locale;

/**
 * What can be wrong with a request itself, or with answering it; why the stand's rules refuse
 * something is named by their own lists. The name of each, in lower case and with hyphens, is its
 * code; its sentence is the text {@code api.} and the code. Immutable.
 */
public enum ProblemKind {
    /** The body can't be read as one JSON object. */
    BAD_JSON(400),
    /** A field is missing, unknown, or of the wrong type. */
    BAD_FIELD(400),
    /** A change was sent without an idempotency key. */
    KEY_MISSING(400),
    /** The idempotency key has characters that a key can't have, or too many. */
    KEY_WRONG(400),
    /** Nobody is known by what the request shows. */
    SIGN_IN_NEEDED(401),
    /** Whoever asks may not do this. */
    NOT_ALLOWED(403),
    /** Whoever asks may do this after typing their password. */
    PASSWORD_NEEDED(403),
    /** A change that comes with a cookie does not show that it is from our own page. */
    ORIGIN_MISSING(403),
    /** A page of another origin asks for a change or a socket. */
    FOREIGN_ORIGIN(403),
    /** There is nothing at the path. */
    NOT_FOUND(404),
    /** There is no such board. */
    NO_SUCH_BOARD(404),
    /** The date had no business day. */
    NO_SUCH_DAY(404),
    /** The path does not take the method. */
    METHOD_WRONG(405),
    /** The body is larger than any request needs. */
    TOO_LARGE(413),
    /** The body is not sent as JSON. */
    NOT_JSON(415),
    /** The request asks for a host that this is not. */
    WRONG_HOST(421),
    /** Both a call and lines, or neither. */
    CALL_OR_LINES(422),
    /** The date in the path can't be read. */
    DATE_WRONG(422),
    /** The book of recipes has faults; each is listed. */
    RECIPES_FAULTY(422),
    /** The idempotency key stands for another request. */
    KEY_REUSED(422),
    /** The dates of a plan lie outside what is planned. */
    PLAN_DATES_WRONG(422),
    /** The parameter {@code open} has another value than true. */
    OPEN_WRONG(422),
    /** The days that are asked for can't be looked up. */
    PERIOD_WRONG(422),
    /** The price was told by a menu that was never in force here. */
    TOLD_UNKNOWN(422),
    /** A line has more modifiers than it may. */
    TOO_MANY_MODIFIERS(422),
    /** A change does not say what it was made from. */
    IF_MATCH_MISSING(428),
    /** A fault of the program. */
    BROKEN(500),
    /** Too much is waiting; nothing was done. */
    BUSY(503),
    /** Whether the change was kept is not known. */
    UNKNOWN_OUTCOME(503);

    private final int status;

    ProblemKind(int status) {
        this.status = status;
    }

    /** The HTTP status, 400 to 599. */
    public int status() {
        return status;
    }

    /** The fixed name for programs. */
    public String code() {
        return code(this);
    }

    /** How a constant is written as a code: {@code TOO_LARGE} is {@code too-large}. */
    public static String code(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
