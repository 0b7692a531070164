package sopwell.orders;

/** Why a command is refused, in the order in which the reasons are looked for. */
public enum Reason {
    /** There is no such order today. */
    UNKNOWN_ORDER,
    /** The order belongs to a day that is closed. */
    DAY_CLOSED,
    /** No day is open, so there is none to close. */
    NO_DAY_OPEN,
    /** Orders are still open; args: their numbers. */
    ORDERS_OPEN,
    /** There is no such part today. */
    UNKNOWN_PART,
    /** The order was edited meanwhile; args: asked version, present version. */
    STALE_VERSION,
    /** The menu changed and can't do a line any more; args: line, item. */
    MENU_CHANGED,
    /** A line's item is not sold today; args: item, weekdays. */
    NOT_TODAY,
    /** An order needs a line. */
    NO_LINES,
    /** More lines than an order may have; args: lines, limit. */
    TOO_MANY_LINES,
    /** A quantity outside 1 to 99; args: quantity, limit. */
    QUANTITY,
    /** A text is longer than it may be; args: field, limit. */
    TEXT_TOO_LONG,
    /** A text has characters that can't be shown; args: field. */
    TEXT_UNCLEAR,
    /** A reason must be given. */
    REASON_MISSING,
    /** Every number is on an open order. */
    NUMBERS_USED_UP,
    /** The order is void; args: number. */
    ORDER_VOID,
    /** The order was handed to the guest; args: number. */
    ORDER_HANDED,
    /** The order was not handed, so there is nothing to bring back; args: number. */
    ORDER_NOT_HANDED,
    /** The number is on another order now; args: number. */
    NUMBER_TAKEN,
    /** The edit changes nothing; args: number. */
    NOTHING_CHANGED,
    /** Parts are missing; args: number, then the stations. */
    NOT_WHOLE,
    /** A change to the part was not seen yet. */
    CHANGE_UNSEEN,
    /** The part has no change to be seen. */
    NOTHING_TO_SEE,
    /** The part is cancelled. */
    PART_CANCELLED,
    /** The part is begun already. */
    ALREADY_STARTED,
    /** The part is up already. */
    ALREADY_UP,
    /** The part is not up, so there is nothing to bring back. */
    NOT_UP,
    /** Nothing of this station was put up today. */
    NOTHING_TO_BRING_BACK,
    /** There is no such query today. */
    UNKNOWN_QUERY,
    /** The part waits for an answer already; args: number. */
    QUERY_OPEN,
    /** The query was answered already; args: number. */
    QUERY_ANSWERED,
    /** The part went up or was taken off before the answer; args: number. */
    QUERY_LAPSED,
    /** The question is about options that the station does not work with; args: options. */
    QUESTION_WRONG,
    /** The answer is not one to the question; args: options. */
    ANSWER_WRONG
}
