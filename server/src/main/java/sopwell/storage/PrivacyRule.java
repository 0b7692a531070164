package sopwell.storage;

/**
 * How long people's names are kept. Immutable.
 *
 * @param guestNamesDays a guest's name is taken out of the log after so many days
 * @param staffNamesDays after so many days, also of somebody who was taken off the roster
 */
public record PrivacyRule(int guestNamesDays, int staffNamesDays) {
    /** Where the owner said nothing. */
    public static final PrivacyRule USUAL =
            new PrivacyRule(PrivacyLimits.GUEST_NAMES_DAYS, PrivacyLimits.STAFF_NAMES_DAYS);
}
