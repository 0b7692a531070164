package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A date that jumped is not believed at once, and a stand that rests is not doubted for ever. */
class SureDateTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 10, 1);
    private static final LocalDate LATE = LocalDate.of(2099, 1, 1);

    /** So many days of selling from a date on. */
    private static List<LocalDate> days(LocalDate from, int count) {
        return IntStream.range(0, count).mapToObj(from::plusDays).toList();
    }

    private static List<LocalDate> days(List<LocalDate> some, List<LocalDate> others) {
        List<LocalDate> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    private static SureDate of(LocalDate today, List<LocalDate> days) {
        return SureDate.of(today, days, LocalDate.MIN);
    }

    @Test
    void aDateNearTheLastDayIsSure() {
        List<LocalDate> days = days(FIRST, 10);
        LocalDate last = FIRST.plusDays(9);
        assertTrue(of(last, days).isSure());
        assertTrue(of(last.plusDays(NameLimits.JUMP_DAYS_MAX), days).isSure());
        SureDate over = of(last.plusDays(NameLimits.JUMP_DAYS_MAX + 1), days);
        assertFalse(over.isSure());
        assertEquals(last, over.sure(), "what was due on the last day is due");
        assertEquals(last, of(LATE, days).sure());
    }

    @Test
    void aDateBeforeTheLastDayCountsAsItIs() {
        LocalDate earlier = FIRST.plusDays(3);
        assertEquals(new SureDate(earlier, earlier), of(earlier, days(FIRST, 10)));
    }

    @Test
    void aStandThatNeverSoldHasNothingToDoubt() {
        assertTrue(of(LATE, List.of()).isSure());
        assertTrue(of(FIRST, days(FIRST, 1)).isSure());
    }

    @Test
    void sevenDaysOfSellingMakeADateSureAgain() {
        List<LocalDate> autumn = days(FIRST, 10);
        LocalDate spring = FIRST.plusDays(200);
        for (int sold = 1; sold < NameLimits.SURE_AGAIN_DAYS; sold++) {
            SureDate date = of(spring.plusDays(sold), days(autumn, days(spring, sold)));
            assertEquals(FIRST.plusDays(9), date.sure(), "after " + sold);
        }
        List<LocalDate> sold = days(autumn, days(spring, NameLimits.SURE_AGAIN_DAYS));
        assertTrue(of(spring.plusDays(7), sold).isSure());
    }

    @Test
    void eachJumpIsDoubtedAnew() {
        List<LocalDate> days = days(days(FIRST, 3), days(LATE, 6));
        days = days(days, days(LATE.plusYears(5), 6));
        assertEquals(FIRST.plusDays(2), of(LATE.plusYears(5).plusDays(6), days).sure());
    }

    @Test
    void aStandThatRunsFollowsTheDateThoughItDoesNotSell() {
        List<LocalDate> days = days(FIRST, 1);
        LocalDate known = FIRST;
        for (int night = 1; night < 200; night++) {
            SureDate date = SureDate.of(FIRST.plusDays(night), days, known);
            assertTrue(date.isSure(), date.toString());
            known = date.sure();
        }
        assertFalse(SureDate.of(FIRST.plusDays(200), days, LocalDate.MIN).isSure());
        assertEquals(known, SureDate.of(LATE, days, known).sure());
    }
}
