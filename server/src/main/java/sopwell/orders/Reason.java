package sopwell.orders;

/** Why a command is refused, in the order in which the reasons are looked for. */
public enum Reason {
    /** There is no such order today. */
    UNKNOWN_ORDER,
    /** The order belongs to a day that is closed. */
    DAY_CLOSED,
    /** No day is open, so there is none to close. */
    NO_DAY_OPEN,
    /** A day is open, so there is none to reopen; args: its date. */
    DAY_OPEN,
    /** Only the newest day can be reopened; args: the date asked. */
    NOT_NEWEST_DAY,
    /** The day's cut hour has passed, so it stays closed; args: its date. */
    DAY_CUT,
    /** Orders are still open; args: their numbers. */
    ORDERS_OPEN,
    /** There is no such part today. */
    UNKNOWN_PART,
    /** There is no such station on the menu; args: station. */
    UNKNOWN_STATION,
    /** A station can't have so many hands; args: hands, limit. */
    HANDS_RANGE,
    /** The order was edited meanwhile; args: asked version, present version. */
    STALE_VERSION,
    /** The menu changed and can't do a line any more; args: line, item. */
    MENU_CHANGED,
    /** The call was taken too long ago, or not yet; args: limit in hours. */
    TOLD_TIME,
    /** What was told is not what its menu comes to; args: told, right, in cents. */
    TOLD_PRICE,
    /** A line's item is not sold today; args: item, weekdays. */
    NOT_TODAY,
    /** Something of it is out; args: what, see {@link sopwell.menu.Out}, then what is near. */
    OUT,
    /**
     * Fewer are left than are asked for; args: what, how many left, how many more, what is near.
     */
    TOO_FEW_LEFT,
    /** What is to be marked out is not on the menu; args: what. */
    NOT_ON_MENU,
    /** It is not out, so it can't be back; args: what. */
    NOT_OUT,
    /** So many can't be left; args: how many, limit. */
    LEFT_RANGE,
    /** Nothing is out for so long; args: minutes, limit. */
    MINUTES_RANGE,
    /** No more can be out at once; args: limit. */
    TOO_MANY_OUT,
    /** There is no such paper to print; args: what was asked for. */
    UNKNOWN_PAPER,
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
    /** A text holds what looks like a payment card's number; args: field. */
    CARD_NUMBER,
    /** A reason must be given. */
    REASON_MISSING,
    /** Every number is on an open order. */
    NUMBERS_USED_UP,
    /** The order is void; args: number. */
    ORDER_VOID,
    /** The order was handed to the guest; args: number. */
    ORDER_HANDED,
    /** The order was paid, so only a lead or owner voids it; args: number. */
    PAID_VOID,
    /** The order was not handed, so there is nothing to bring back; args: number. */
    ORDER_NOT_HANDED,
    /** The number is on another order now; args: number. */
    NUMBER_TAKEN,
    /** The edit changes nothing; args: number. */
    NOTHING_CHANGED,
    /** Parts are missing; args: number, then the stations. */
    NOT_WHOLE,
    /** An order can't be in so many bags; args: how many, limit. */
    BAGS_RANGE,
    /** There is no such pan; args: what was asked for. */
    UNKNOWN_PAN,
    /** A pan can't be so full; args: percent. */
    LEVEL_RANGE,
    /** The recipes were changed meanwhile; args: the revision in force. */
    RECIPES_CHANGED,
    /** What is on the shelves or being made can't leave the book so; args: ingredient. */
    INGREDIENT_KEPT,
    /** There is no such ingredient in the book of recipes; args: what was asked for. */
    UNKNOWN_INGREDIENT,
    /** The ingredient is not counted in this; args: unit, what it is counted in. */
    UNKNOWN_MEASURE,
    /** An amount is none, or none that can be; args: what was typed, least, most. */
    STOCK_AMOUNT,
    /** It is bought and not made, so there is no batch of it; args: ingredient. */
    NO_RECIPE,
    /** A batch can't have so many lots; args: lots, limit. */
    LOTS_RANGE,
    /** No more batches can be on at once; args: limit. */
    TOO_MANY_BATCHES,
    /** There is no such batch; args: what was asked for. */
    UNKNOWN_BATCH,
    /** The batch was made already; args: batch. */
    BATCH_MADE,
    /** The batch is still being made; args: batch. */
    BATCH_NOT_MADE,
    /** The batch can't go to that step from where it is; args: step, the step that is next. */
    WRONG_STEP,
    /** A temperature is none, or none that can be; args: what was typed, least, most, unit. */
    TEMPERATURE_RANGE,
    /** No more can be measured in one step; args: limit. */
    TOO_MANY_READINGS,
    /** A change to the part was not seen yet. */
    CHANGE_UNSEEN,
    /** What goes into the part is not up; args: number, then the stations that have it. */
    WAITS_FOR,
    /** The part waits for nothing; args: number. */
    NOTHING_AWAITED,
    /** Nothing of it is made yet, so nothing can be made again; args: number. */
    NOT_BEGUN,
    /** So many pieces can't be made again; args: pieces, how many there are. */
    REMAKE_PIECES,
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
    ANSWER_WRONG,
    /** More is taken off than the order has; args: number, subtotal in cents. */
    DISCOUNT_TOO_LARGE,
    /** An amount is not one to be paid; args: the most, in cents. */
    AMOUNT_WRONG,
    /** Nothing is due on the order; args: number. */
    NOTHING_DUE,
    /** More is to be paid than is due; args: amount and due, in cents. */
    MORE_THAN_DUE,
    /** What was handed over is not enough; args: tendered and needed, in cents. */
    TENDERED_SHORT,
    /** An amount can't be handed over in the stand's notes and coins; args: the least, in cents. */
    NOT_IN_CASH,
    /** More is to be given back than was paid this way; args: number, cents paid, means. */
    MORE_THAN_PAID,
    /** The till should not hold that much; args: cashier, expected in cents. */
    TILL_SHORT,
    /** A name is needed to open a till. */
    CASHIER_MISSING,
    /** The cashier has a till open already; args: cashier. */
    TILL_OPEN,
    /** The cashier has no till open; args: cashier. */
    TILL_NOT_OPEN,
    /** No till is open. */
    NO_TILL_OPEN,
    /** Several tills are open, and none was named; args: their cashiers. */
    WHICH_TILL,
    /** Tills are open, so the day can't be closed; args: their cashiers. */
    TILLS_OPEN,
    /** The stand has no such note or coin; args: its value in cents. */
    UNKNOWN_UNIT,
    /** A count of notes or coins is not a count; args: the most. */
    COUNT_WRONG,
    /** A date can't be planned for; args: as typed, the first and the last that can. */
    CALENDAR_DATE,
    /** Hours are no times, or end before they begin; args: opens and closes, as typed. */
    CALENDAR_HOURS,
    /** An occasion has no name. */
    OCCASION_NAME,
    /** An owner's guess at an occasion is none; args: as typed, the least and most percent. */
    OCCASION_PERCENT,
    /** A date has as many occasions as it can have; args: the most. */
    OCCASIONS_MANY,
    /** A date has no such occasion; args: name, date. */
    UNKNOWN_OCCASION,
    /** A guess at a day's pieces is none; args: as typed, the most. */
    GUESS_RANGE,
    /** The disk is nearly full; what is left is for what was begun. */
    NO_ROOM,
    /** The disk does not take what is written; nothing is tried until it does. */
    READING_ONLY,
    /** A setting is no number in its range; args: field, as typed, least, most. */
    TERMS_NUMBER,
    /** A setting is no amount of money; args: field, as typed. */
    TERMS_MONEY,
    /** A setting is no time of day; args: field, as typed. */
    TERMS_TIME,
    /** The kitchen's hours are no times, or end before they begin; args: weekday, from, to. */
    KITCHEN_HOURS,
    /** More is set of something than can be; args: the most. */
    TERMS_MANY,
    /** The book of recipes has no such resource; args: its id. */
    UNKNOWN_RESOURCE,
    /** A date with its time can't be read; args: as typed, an example. */
    OUT_MOMENT,
    /** Something would be in order again before it breaks; args: from, until. */
    OUT_SPAN,
    /** A clock is not said what it is for, or at too great length; args: the most characters. */
    CLOCK_NAME,
    /** As many clocks run as can; args: the most. */
    TOO_MANY_CLOCKS,
    /** No such clock runs; args: its id. */
    UNKNOWN_CLOCK
}
