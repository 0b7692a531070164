package sopwell.web;

import java.util.List;
import sopwell.menu.MenuFault;

/**
 * Why a request can't be done, as RFC 9457 has it. Immutable.
 *
 * @param status the HTTP status, 400 to 599
 * @param code a short fixed name for programs
 * @param detail one sentence for people: what is wrong, where, and what would be right
 * @param place where in a call line, or null
 * @param faults what is wrong with a document, place by place; mostly none
 */
public record Problem(
        int status, String code, String detail, CallPlace place, List<MenuFault> faults) {
    public Problem {
        faults = List.copyOf(faults);
    }

    /** A problem without a list of faults. */
    public Problem(int status, String code, String detail, CallPlace place) {
        this(status, code, detail, place, List.of());
    }

    /** The same with what it is about, place by place. */
    public Problem with(List<MenuFault> places) {
        return new Problem(status, code, detail, place, places);
    }

    /** A problem of a document, with everything that is wrong with it. */
    public static Problem of(ProblemKind kind, T text, List<MenuFault> faults) {
        String detail = text.of("api." + kind.code(), faults.size());
        return new Problem(kind.status(), kind.code(), detail, null, faults);
    }

    /**
     * A place in a call line.
     *
     * @param column from 1, in UTF-16 units
     * @param length in UTF-16 units
     * @param suggestions what would be right, best first
     */
    public record CallPlace(int column, int length, List<String> suggestions) {
        public CallPlace {
            suggestions = List.copyOf(suggestions);
        }
    }

    /** A problem of the request itself, with its sentence. */
    public static Problem of(ProblemKind kind, T text, Object... args) {
        return of(kind, text.of("api." + kind.code(), args));
    }

    /** A problem of the request itself, with a sentence that says more than usual. */
    static Problem of(ProblemKind kind, String detail) {
        return new Problem(kind.status(), kind.code(), detail, null);
    }

    /** A refusal by the stand's rules, which is named by one of their lists. */
    public static Problem of(int status, Enum<?> why, String detail) {
        return new Problem(status, ProblemKind.code(why), detail, null);
    }
}
