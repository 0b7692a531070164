package sopwell.web.pages;

import sopwell.access.Refused;
import sopwell.web.ProblemKind;
import sopwell.web.T;

/** Why somebody is not let in, in words, and as a status. Stateless. */
final class DoorWords {
    private static final int SECONDS_SPOKEN_MAX = 90;
    private static final int SECONDS_MINUTE = 60;

    private DoorWords() {}

    static String of(Refused refused, T t) {
        return switch (refused.why()) {
            case WAIT, CODE_TRIES -> waiting(Long.parseLong(refused.args().get(0)), t);
            case WRONG_SECRET -> wrong(refused, t);
            default -> t.of("access." + ProblemKind.code(refused.why()), refused.args().toArray());
        };
    }

    /** How long to wait, in the unit in which people wait. */
    static String waiting(long seconds, T t) {
        return seconds <= SECONDS_SPOKEN_MAX
                ? t.of("access.wait", seconds)
                : t.of("access.wait-minutes", (seconds + SECONDS_MINUTE - 1) / SECONDS_MINUTE);
    }

    static int status(Refused refused) {
        return switch (refused.why()) {
            case WAIT, CODE_TRIES -> 429;
            case BUSY -> 503;
            default -> 422;
        };
    }

    private static String wrong(Refused refused, T t) {
        String left = refused.args().get(0);
        return left.equals("1")
                ? t.get("access.wrong-secret-last")
                : t.of("access.wrong-secret", left);
    }
}
