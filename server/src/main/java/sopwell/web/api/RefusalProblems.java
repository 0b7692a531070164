package sopwell.web.api;

import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Problem;
import sopwell.web.T;

/** Gives refusals their HTTP status. Stateless. */
public final class RefusalProblems {
    private RefusalProblems() {}

    /** The problem document of a refusal. */
    static Problem of(Refusal refusal, T text) {
        return Problem.of(status(refusal.reason()), refusal.reason(), text.sentence(refusal));
    }

    /**
     * 404 for what does not exist, 422 for what is asked wrongly, 409 for what can't be done as
     * things stand.
     */
    public static int status(Reason reason) {
        return switch (reason) {
            case UNKNOWN_ORDER, UNKNOWN_PAPER, UNKNOWN_PART, UNKNOWN_QUERY -> 404;
            case NO_LINES,
                    TOO_MANY_LINES,
                    QUANTITY,
                    TEXT_TOO_LONG,
                    TEXT_UNCLEAR,
                    CARD_NUMBER,
                    REASON_MISSING,
                    TOLD_TIME,
                    TOLD_PRICE,
                    NOT_TODAY,
                    QUESTION_WRONG,
                    ANSWER_WRONG,
                    NOT_ON_MENU,
                    LEFT_RANGE,
                    MINUTES_RANGE,
                    DISCOUNT_TOO_LARGE,
                    AMOUNT_WRONG,
                    TENDERED_SHORT,
                    NOT_IN_CASH,
                    CASHIER_MISSING,
                    UNKNOWN_UNIT,
                    COUNT_WRONG ->
                    422;
            case DAY_CLOSED,
                    NO_DAY_OPEN,
                    ORDERS_OPEN,
                    STALE_VERSION,
                    MENU_CHANGED,
                    OUT,
                    TOO_FEW_LEFT,
                    NOT_OUT,
                    TOO_MANY_OUT,
                    NUMBERS_USED_UP,
                    ORDER_VOID,
                    ORDER_HANDED,
                    ORDER_NOT_HANDED,
                    NUMBER_TAKEN,
                    NOTHING_CHANGED,
                    NOT_WHOLE,
                    CHANGE_UNSEEN,
                    NOTHING_TO_SEE,
                    PART_CANCELLED,
                    ALREADY_STARTED,
                    ALREADY_UP,
                    NOT_UP,
                    NOTHING_TO_BRING_BACK,
                    QUERY_OPEN,
                    QUERY_ANSWERED,
                    QUERY_LAPSED,
                    NOTHING_DUE,
                    MORE_THAN_DUE,
                    MORE_THAN_PAID,
                    TILL_SHORT,
                    TILL_OPEN,
                    TILL_NOT_OPEN,
                    NO_TILL_OPEN,
                    WHICH_TILL,
                    TILLS_OPEN ->
                    409;
        };
    }
}
