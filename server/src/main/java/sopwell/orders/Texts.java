package sopwell.orders;

import java.util.Optional;
import sopwell.Limits;
import sopwell.money.CardNumber;

/**
 * What free texts may hold: printable characters, not too many, and never what looks like the
 * number of a payment card. Stateless.
 */
public final class Texts {
    private Texts() {}

    /** What is wrong with a guest's name, if anything. */
    static Optional<Refusal> name(String name) {
        return fault("name", name, Limits.NAME_CHARS_MAX);
    }

    /** What is wrong with a cashier's name, if anything. */
    public static Optional<Refusal> cashier(String cashier) {
        return fault("cashier", cashier, Limits.NAME_CHARS_MAX);
    }

    /** What is wrong with a reason, if anything. */
    public static Optional<Refusal> reason(String reason) {
        return fault("reason", reason, Limits.REASON_CHARS_MAX);
    }

    /** What is wrong with a note about what is kept or made, if anything. */
    public static Optional<Refusal> note(String note) {
        return fault("note", note, Limits.REASON_CHARS_MAX);
    }

    /** What is wrong with the name of whoever measured, if anything. */
    public static Optional<Refusal> by(String by) {
        return fault("by", by, Limits.NAME_CHARS_MAX);
    }

    /** What is wrong with an occasion's name, if anything. */
    public static Optional<Refusal> occasion(String name) {
        return fault("occasion", name, Limits.NAME_CHARS_MAX);
    }

    /** What is wrong with a station's question, if anything. */
    public static Optional<Refusal> question(String question) {
        return fault("question", question, Limits.QUERY_CHARS_MAX);
    }

    /** What is wrong with an answer to a station, if anything. */
    public static Optional<Refusal> answer(String answer) {
        return fault("answer", answer, Limits.QUERY_CHARS_MAX);
    }

    private static Optional<Refusal> fault(String field, String text, int charsMax) {
        if (CardNumber.isIn(text)) {
            return Optional.of(Refusal.of(Reason.CARD_NUMBER, field));
        }
        if (text.length() > charsMax) {
            return Optional.of(Refusal.of(Reason.TEXT_TOO_LONG, field, charsMax));
        }
        return isClear(text)
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.TEXT_UNCLEAR, field));
    }

    /** Whether everything in a text can be shown: no signs that only steer. */
    public static boolean isClear(String text) {
        return text.codePoints()
                .noneMatch(
                        point ->
                                Character.isISOControl(point)
                                        || Character.getType(point) == Character.FORMAT
                                        || Character.getType(point) == Character.SURROGATE);
    }
}
