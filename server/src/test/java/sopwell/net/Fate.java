package sopwell.net;

/** What becomes of a new connection. */
public enum Fate {
    /** It is carried as it is. */
    PASS,
    /** What is asked arrives; the answer comes this far, and then the connection is reset. */
    SWALLOW,
    /** What is asked arrives twice, the second time on a connection of its own. */
    DOUBLE,
    /** What is asked is held for a while, so that what was asked later overtakes it. */
    HOLD
}
