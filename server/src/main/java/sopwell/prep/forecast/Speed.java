package sopwell.prep.forecast;

/**
 * How fast one of the bank's members learns. Immutable.
 *
 * @param levelDays after so many open days what was seen of the level weighs half
 * @param weekdayWeeks after so many weeks what was seen of a weekday weighs half
 * @param trend how much of a surprise goes into the growth per day; 0 for no growth
 */
record Speed(double levelDays, double weekdayWeeks, double trend) {}
