package sopwell.access;

/** One thing that somebody may do, or not. {@link AccessRules} says who, and where. Immutable. */
public enum Right {
    /** To reach what must be open to everybody: signing in, pairing, files, whether all is well. */
    OPEN(false),
    /** To read the stand's figures for programs that watch over it. */
    WATCH(false),
    /** To come in: the first page, and the screen's own settings. */
    ENTER(false),
    /** To look at the numbers that are ready, as guests do. */
    LOOK_READY(false),
    /** To look at the boards and the open orders. */
    LOOK_BOARDS(false),
    /** To work at the stations and the pass: start, up, handed, queries, outs, pans. */
    WORK_LINE(false),
    /** To look at what is to be prepared and what is there. */
    LOOK_PREP(false),
    /** To prepare: counts, batches, temperatures, waste. */
    PREP(false),
    /** To take orders and to change them. */
    TAKE_ORDERS(false),
    /** To take money and to see the own till. */
    TAKE_MONEY(false),
    /** To void an order that nothing was paid of. */
    VOID(false),
    /** To see what was sold, and how long it took, also as files. */
    SEE_FIGURES(false),
    /** To see a day's money. */
    SEE_MONEY(false),
    /** To open and close the day. */
    CLOSE_DAY(false),
    /** To take money out of a till. */
    MONEY_OUT(true),
    /** To give money back. */
    REFUND(true),
    /** To void an order that was paid, in part or whole. */
    VOID_PAID(true),
    /** To open a closed day again. */
    REOPEN_DAY(true),
    /** To change the menu or the recipes. */
    CHANGE_PRICES(true),
    /** To change the calendar, the guesses and the plan's settings. */
    SETTINGS(true),
    /** To say who may do what: staff, devices, tokens. */
    ACCESS(true);

    private final boolean needsPassword;

    Right(boolean needsPassword) {
        this.needsPassword = needsPassword;
    }

    /** Whether the password must have been typed in the last minutes. */
    public boolean needsPassword() {
        return needsPassword;
    }
}
