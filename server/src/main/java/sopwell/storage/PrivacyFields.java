package sopwell.storage;

/** The field {@code privacy} of a stand's settings. Stateless. */
final class PrivacyFields {
    private PrivacyFields() {}

    /** What the file says, or the usual where it says nothing. */
    static PrivacyRule read(Fields fields) {
        PrivacyRule usual = PrivacyRule.USUAL;
        if (!fields.has("privacy")) {
            return usual;
        }
        Fields privacy = fields.inner("privacy");
        PrivacyRule read =
                new PrivacyRule(
                        days(privacy, "guestNamesDays", usual.guestNamesDays()),
                        days(privacy, "staffNamesDays", usual.staffNamesDays()));
        privacy.close();
        return read;
    }

    private static int days(Fields fields, String field, int usual) {
        return fields.has(field)
                ? StandFile.within(fields, field, 1, PrivacyLimits.NAMES_DAYS_MAX)
                : usual;
    }
}
