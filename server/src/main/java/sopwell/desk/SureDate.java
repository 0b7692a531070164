package sopwell.desk;

import java.time.LocalDate;
import java.util.List;

/**
 * How far a date is believed where a mistake can't be undone: a box that says the year 2099 must
 * not have all names erased for their age. A date is believed that is near the one before it; after
 * a jump the stand must have been open on some days before it counts. Immutable.
 *
 * @param today what the stand goes by
 * @param sure what is believed: the same, or the last date before the jump
 */
public record SureDate(LocalDate today, LocalDate sure) {
    /**
     * How far today is believed.
     *
     * @param today what the stand goes by
     * @param days its business days, oldest first
     * @param known a date that was sure already, or {@link LocalDate#MIN}
     */
    public static SureDate of(LocalDate today, List<LocalDate> days, LocalDate known) {
        LocalDate sure = days.isEmpty() ? today : days.get(0);
        LocalDate before = sure;
        int since = NameLimits.SURE_AGAIN_DAYS;
        for (LocalDate day : days) {
            since = isNear(before, day) ? since + 1 : 1;
            if (since >= NameLimits.SURE_AGAIN_DAYS) {
                sure = day;
            }
            before = day;
        }
        LocalDate last = sure.isBefore(known) ? known : sure;
        return new SureDate(today, isNear(last, today) ? today : last);
    }

    /** What the stand goes by is believed. */
    public boolean isSure() {
        return sure.equals(today);
    }

    private static boolean isNear(LocalDate before, LocalDate date) {
        return !date.isAfter(before.plusDays(NameLimits.JUMP_DAYS_MAX));
    }
}
