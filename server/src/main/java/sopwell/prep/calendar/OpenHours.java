package sopwell.prep.calendar;

import sopwell.Check;

/**
 * From when to when the stand is open on one date. Immutable.
 *
 * @param fromMinute of the day, 0 to 1439
 * @param toMinute later than that, up to 1440
 */
public record OpenHours(int fromMinute, int toMinute) {
    private static final int DAY_MINUTES = 1_440;
    private static final int HOUR_MINUTES = 60;

    public OpenHours {
        Check.that(
                0 <= fromMinute && fromMinute < toMinute && toMinute <= DAY_MINUTES,
                "a stand opens before it closes");
    }

    /** When it opens: {@code 10:30}. */
    public String from() {
        return text(fromMinute);
    }

    /** When it closes: {@code 20:00}. */
    public String to() {
        return text(toMinute);
    }

    private static String text(int minute) {
        int hour = minute / HOUR_MINUTES;
        int rest = minute % HOUR_MINUTES;
        return (hour < 10 ? "0" : "") + hour + ":" + (rest < 10 ? "0" : "") + rest;
    }
}
