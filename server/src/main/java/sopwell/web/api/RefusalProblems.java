package sopwell.web.api;

import java.util.EnumSet;
import java.util.Set;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Problem;
import sopwell.web.T;

/** Gives refusals their HTTP status. Stateless. */
public final class RefusalProblems {
    private static final Set<Reason> ABSENT =
            EnumSet.of(
                    Reason.UNKNOWN_ORDER,
                    Reason.UNKNOWN_PAPER,
                    Reason.UNKNOWN_PAN,
                    Reason.UNKNOWN_INGREDIENT,
                    Reason.UNKNOWN_BATCH,
                    Reason.UNKNOWN_OCCASION,
                    Reason.UNKNOWN_RESOURCE,
                    Reason.UNKNOWN_CLOCK,
                    Reason.UNKNOWN_PART,
                    Reason.UNKNOWN_STATION,
                    Reason.UNKNOWN_QUERY);

    private static final Set<Reason> WRONG =
            EnumSet.of(
                    Reason.CALENDAR_DATE,
                    Reason.CALENDAR_HOURS,
                    Reason.OCCASION_NAME,
                    Reason.OCCASION_PERCENT,
                    Reason.GUESS_RANGE,
                    Reason.TERMS_NUMBER,
                    Reason.TERMS_MONEY,
                    Reason.TERMS_TIME,
                    Reason.TERMS_MANY,
                    Reason.KITCHEN_HOURS,
                    Reason.OUT_MOMENT,
                    Reason.OUT_SPAN,
                    Reason.CLOCK_NAME,
                    Reason.NO_LINES,
                    Reason.TOO_MANY_LINES,
                    Reason.QUANTITY,
                    Reason.TEXT_TOO_LONG,
                    Reason.TEXT_UNCLEAR,
                    Reason.CARD_NUMBER,
                    Reason.REASON_MISSING,
                    Reason.TOLD_TIME,
                    Reason.TOLD_PRICE,
                    Reason.NOT_TODAY,
                    Reason.QUESTION_WRONG,
                    Reason.ANSWER_WRONG,
                    Reason.NOT_ON_MENU,
                    Reason.BAGS_RANGE,
                    Reason.LEVEL_RANGE,
                    Reason.UNKNOWN_MEASURE,
                    Reason.STOCK_AMOUNT,
                    Reason.NO_RECIPE,
                    Reason.LOTS_RANGE,
                    Reason.TEMPERATURE_RANGE,
                    Reason.LEFT_RANGE,
                    Reason.MINUTES_RANGE,
                    Reason.HANDS_RANGE,
                    Reason.REMAKE_PIECES,
                    Reason.DISCOUNT_TOO_LARGE,
                    Reason.AMOUNT_WRONG,
                    Reason.TENDERED_SHORT,
                    Reason.NOT_IN_CASH,
                    Reason.CASHIER_MISSING,
                    Reason.UNKNOWN_UNIT,
                    Reason.COUNT_WRONG);

    /** What the computer can't keep just now; the same will be taken later. */
    private static final Set<Reason> LATER = EnumSet.of(Reason.NO_ROOM, Reason.READING_ONLY);

    private RefusalProblems() {}

    /** Whether the same is to be sent again later. */
    public static boolean isForLater(Reason reason) {
        return LATER.contains(reason);
    }

    /** The problem document of a refusal. */
    static Problem of(Refusal refusal, T text) {
        return Problem.of(status(refusal.reason()), refusal.reason(), text.sentence(refusal));
    }

    /**
     * 404 for what does not exist, 412 for what was made from something older, 422 for what is
     * asked wrongly, 503 for what the computer can't keep just now, 409 for what can't be done as
     * things stand.
     */
    public static int status(Reason reason) {
        if (ABSENT.contains(reason)) {
            return 404;
        }
        if (reason == Reason.RECIPES_CHANGED) {
            return 412;
        }
        if (isForLater(reason)) {
            return 503;
        }
        return WRONG.contains(reason) ? 422 : 409;
    }
}
