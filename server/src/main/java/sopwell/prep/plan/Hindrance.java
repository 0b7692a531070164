package sopwell.prep.plan;

/** What stands in the way of being ready in time. */
public enum Hindrance {
    /** An oven or another resource is taken, out, or too small. */
    RESOURCE,
    /** Nobody is in the kitchen when somebody must be. */
    HOURS,
    /** There are too few hands. */
    HANDS,
    /** It should have been started before now. */
    TIME,
    /** The steps, their waits and the shelf life leave no time at all, or several things do. */
    ROUTE
}
