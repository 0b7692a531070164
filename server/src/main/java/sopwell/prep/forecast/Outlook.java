package sopwell.prep.forecast;

import java.time.LocalDate;

/**
 * A weather forecast as it was issued. Immutable.
 *
 * @param issued on which day; later ones of the same day and kind count
 * @param kind such as {@code rain}
 * @param probability 0 to 1
 */
public record Outlook(LocalDate issued, LocalDate date, String kind, double probability) {}
