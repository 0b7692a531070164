/**
 * What is on the shelves and what is being made: counts, deliveries, waste, batches.
 *
 * <p>Pure: no I/O, no clock, no randomness. {@code decide} looks and never changes; {@code apply}
 * changes and never refuses. Amounts are {@code long} thousandths of an ingredient's base unit
 * (grams, millilitres, pieces), so that sums are exact. {@link sopwell.stock.larder.Larder} belongs
 * to one thread; everything else is immutable.
 */
package sopwell.stock.larder;
