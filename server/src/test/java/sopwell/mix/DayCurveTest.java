package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;

class DayCurveTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);

    private static HalfHour half(int index, int pieces, int staff) {
        return new HalfHour(
                index,
                Counts.NONE,
                List.of(
                        new Sold("beef", "", List.of(), false, pieces, 0),
                        new Sold("beef", "", List.of(), true, staff, 0)));
    }

    @Test
    void runsOverEveryHalfHourInWhichAnyOfTheDaysSoldAndAveragesTheOthers() {
        DayTally day = new DayTally(DAY, List.of(half(24, 6, 3), half(25, 6, 0)));
        DayTally before = new DayTally(DAY.minusDays(7), List.of(half(23, 4, 0), half(24, 3, 9)));
        DayTally earlier = new DayTally(DAY.minusDays(14), List.of(half(24, 0, 2)));
        DayCurve curve = DayCurve.of(Period.day(DAY), day, List.of(before, earlier));
        assertEquals(new DayCurve(23, List.of(0, 6, 6), List.of(2.0, 1.5, 0.0)), curve);
        assertEquals(OptionalInt.of(1), curve.busiest(), "the first of two alike");
    }

    @Test
    void aPartOfTheDayIsComparedWithTheSamePart() {
        DayTally day = new DayTally(DAY, List.of(half(24, 6, 0), half(30, 8, 0)));
        DayTally before = new DayTally(DAY.minusDays(7), List.of(half(24, 2, 0), half(30, 9, 0)));
        DayCurve curve = DayCurve.of(new Period(DAY, DAY, 20, 26), day, List.of(before));
        assertEquals(new DayCurve(24, List.of(6), List.of(2.0)), curve);
    }

    @Test
    void aDayOfNothingHasNoCurve() {
        DayTally day = new DayTally(DAY, List.of(half(24, 0, 5)));
        DayCurve curve = DayCurve.of(Period.day(DAY), day, List.of());
        assertTrue(curve.pieces().isEmpty() && curve.before().isEmpty());
        assertTrue(curve.busiest().isEmpty());
    }
}
