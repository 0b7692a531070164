package sopwell.kitchen;

/** Why something is made again. Written in the log by its own name in small letters. */
public enum RemakeReason {
    /** It fell. */
    DROPPED,
    /** It was made otherwise than ordered. */
    WRONG,
    /** It went cold before it was handed. */
    COLD,
    /** It was burnt, torn, or not good otherwise. */
    SPOILED,
    /** The guest wants it otherwise after all. */
    MIND,
    /** None of these. */
    OTHER
}
