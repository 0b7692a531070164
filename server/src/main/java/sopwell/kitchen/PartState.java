package sopwell.kitchen;

/** How far a part is. */
public enum PartState {
    /** Nobody has begun. */
    WAITING,
    /** Work has begun. */
    STARTED,
    /** Made and on the pass. */
    UP
}
