/**
 * The clocks that food is watched by: cooling, roasting, reheating, holding, dating, time as a
 * control, and the cleaning of a slicer. Pure: no I/O, no clock, no randomness; every limit is a
 * setting ({@link sopwell.orders.FoodLimits}, {@link sopwell.orders.Safety}).
 *
 * <p>Times are milliseconds since 1970-01-01 UTC, so that four hours are four hours also on the
 * night when the clocks change. Everything is immutable.
 */
package sopwell.stock.safety;
