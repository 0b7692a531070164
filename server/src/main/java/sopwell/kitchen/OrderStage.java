package sopwell.kitchen;

/** How far an order is; follows from its parts. */
public enum OrderStage {
    /** No part is begun. */
    WAITING,
    /** At least one part is begun. */
    STARTED,
    /** Every part is up: the order is whole. */
    UP,
    /** The guest has it. */
    HANDED,
    /** Cancelled. */
    VOID
}
