package sopwell.kitchen;

/**
 * That pieces of a part are made again. Immutable.
 *
 * @param pieces how many are made again, and wasted
 * @param toMake how many are to be made now: those alone when the others are up already
 */
public record Again(int pieces, int toMake, RemakeReason reason) {}
