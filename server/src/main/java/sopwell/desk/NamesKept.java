package sopwell.desk;

import java.util.Optional;

/**
 * How long a stand keeps people's names by its settings. Immutable.
 *
 * @param guestDays guests' names, in days
 * @param staffDays names of staff, in days
 * @param looked how far the date was believed when the stand last looked for names that are due;
 *     empty before it has
 */
public record NamesKept(int guestDays, int staffDays, Optional<SureDate> looked) {}
