/**
 * What the next days will ask for, as distributions, from what past days sold.
 *
 * <p>Purpose: a forecast that learns day by day, without fitting, and says why. Rules: a closed day
 * is missing and never nought; what was sold before a sell-out is a part of a day, not a small day;
 * nothing that comes after a day is read to forecast from it; the same history gives the same
 * numbers bit for bit; pure. Threading: a {@link sopwell.prep.forecast.Forecaster} belongs to one
 * thread; what it gives is immutable. The method is described in {@code docs/forecast.md}.
 */
package sopwell.prep.forecast;
