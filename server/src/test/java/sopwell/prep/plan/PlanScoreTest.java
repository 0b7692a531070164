package sopwell.prep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.PlanScore.Day;
import sopwell.prep.quantity.Stakes;

class PlanScoreTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    private static final Stakes STAKES = Stakes.oneDay("5", "2");

    @Test
    void planIsComparedWithTheWeekdaysAverageOnTheSameDays() {
        List<Day> days =
                List.of(
                        day(0, 40, 40, 38, 2, 0),
                        day(1, 50, 50, 50, 0, 4),
                        day(7, 42, 42, 42, 0, 2),
                        day(8, 50, 48, 45, 3, 0),
                        day(14, 40, 40, 36, 4, 0));
        List<PlanScore> weeks = PlanScore.weeks(days, STAKES);
        assertEquals(2, weeks.size());
        PlanScore second = weeks.get(0);
        assertEquals(MONDAY.plusDays(7), second.monday());
        assertEquals(2, second.days());
        assertEquals(92, second.planned());
        assertEquals(90, second.made());
        assertEquals(5 * 2 + 2 * 3, second.cost(), 1e-9);
        assertEquals(5 * (44 - 38) + 2 * (54 - 45), second.ruleCost(), 1e-9);
        PlanScore third = weeks.get(1);
        assertEquals(2 * 4, third.cost(), 1e-9);
        assertEquals(2 * (41 - 36), third.ruleCost(), 1e-9);
    }

    @Test
    void nothingSeenBeforeIsNoScore() {
        assertEquals(List.of(), PlanScore.weeks(List.of(), STAKES));
        assertEquals(List.of(), PlanScore.weeks(List.of(day(0, 1, 1, 1, 0, 0)), STAKES));
    }

    private static Day day(
            int after, double planned, double made, double used, double... wastedAndMissing) {
        return new Day(
                MONDAY.plusDays(after),
                planned,
                made,
                used,
                wastedAndMissing[0],
                wastedAndMissing[1]);
    }
}
