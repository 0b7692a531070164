package sopwell.net;

/** How a link fails. */
public enum Cut {
    /** Carries nothing and says nothing; what was connected meanwhile never hears again. */
    SILENT,
    /** The same, but what was sent meanwhile arrives when the link is back. */
    HELD,
    /** Every connection is reset, and new ones are too. */
    RESET,
    /** Every connection is ended in good order, and new ones are too. */
    FIN
}
