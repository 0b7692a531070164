package sopwell.prep.forecast;

/**
 * A day of one series. Immutable.
 *
 * @param weekday 0 for Monday to 6 for Sunday
 * @param count pieces sold while it could be sold
 * @param exposure how much of a plain day of the usual hours that was, above 0
 * @param known what was particular, as it turned out
 * @param ahead the same as it was known so many days before: the first one day before
 * @param guessed whether the count is a guess, as of a day that sold out at an unknown time
 */
record Seen(
        int weekday,
        double count,
        double exposure,
        Known known,
        java.util.List<Known> ahead,
        boolean guessed) {
    Seen {
        ahead = java.util.List.copyOf(ahead);
    }
}
