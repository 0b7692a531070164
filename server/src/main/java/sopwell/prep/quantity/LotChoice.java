package sopwell.prep.quantity;

/**
 * A number of lots, and the next best beside it. Immutable.
 *
 * @param lots how many, from 0
 * @param cost what it costs on average, in the stakes' money
 * @param otherLots the neighbour that came nearest
 * @param otherCost what that would cost
 */
public record LotChoice(long lots, double cost, long otherLots, double otherCost) {}
