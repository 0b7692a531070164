package sopwell.sim;

/** What must hold after every step. */
public enum Invariant {
    /** The log: places without gaps, time that never runs backwards, a key for one command. */
    LOG,
    /**
     * A command that was answered stands in the log as answered, one that was refused not at all.
     */
    ANSWERS,
    /** Every order is what its events made of it. */
    ORDERS,
    /** No number on two open orders, none twice in a day while there are others. */
    NUMBERS,
    /** Every part is on exactly one board, or on none when it is done. */
    PARTS,
    /** No order is up, or handed, with a part missing. */
    WHOLE,
    /** A digit names one row of a board, and a row keeps its digit. */
    DIGITS,
    /** Rows that stay stand as they stood to each other. */
    PLACES,
    /** What was done at the pass: calls of whole orders, bags. */
    PASS,
    /** What is left hot is what was put in less what was made. */
    PANS,
    /** What is kept is what was counted, less what went out, and what came in since. */
    STOCK,
    /** The pass and the counter show the open orders, all of them. */
    ORDER_BOARDS,
    /** Prices, discounts, tax and totals to the cent. */
    PRICES,
    /** What is due on each order. */
    DUES,
    /** What should be in each till. */
    TILLS,
    /** What the day came to is what its orders came to. */
    REPORT,
    /** The mix is what was ordered and not void. */
    MIX,
    /** Queries wait for their answers, and nobody else's. */
    QUERIES,
    /** Nothing is sold that is out; counts go down and up. */
    OUTS,
    /** A day's plan of prep is kept once, while it is open, and stays as it was kept. */
    PLANS,
    /** Who did what must be answered for, and nobody else, stands behind it. */
    AUDIT,
    /** A copy says that it is one. */
    PAPERS,
    /** The log read again gives the same stand. */
    REPLAY,
    /** What is shown is what is decided by. */
    FOLLOWER,
    /** A screen ends with the true board, however slow it was. */
    SCREENS
}
