package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
import sopwell.mix.MixTable.Way;
import sopwell.mix.ShareChart.Verdict;

/** A Saturday beside the Saturdays before it. */
class AgainstTest {
    private static final LocalDate SATURDAY = LocalDate.of(2026, 3, 7);
    private final Names names = new Names(List.of(Script.demoMenu()));

    @Test
    void saysWhatHasReallyMoved() {
        Against against = against(day(SATURDAY, 94, 106), saturdays(8, 76, 124));
        assertEquals(4, against.lastFour().days());
        Way dipped = against.lastFour().table("beef").orElseThrow().rows().get(1);
        assertEquals("dipped", dipped.id());
        assertEquals(new Share(4 * 76, 4 * 200), against.rowShare("beef", dipped));
        List<Against.Moved> dip =
                against.moved().stream().filter(m -> m.way().en().equals("dipped")).toList();
        assertTrue(dip.isEmpty(), "47 % of 200 is not beyond three deviations of 38 %");

        Against more = against(day(SATURDAY, 376, 424), saturdays(8, 76, 124));
        Against.Moved moved =
                more.moved().stream()
                        .filter(m -> m.way().en().equals("dipped"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Verdict.UP, moved.verdict(), "47 % of 800 is");
        assertEquals(0.38, moved.before(), 1e-9);
        assertEquals(0.47, moved.now().value(), 1e-9);
    }

    @Test
    void comparesTheSamePartOfTheDay() {
        List<DayTally> before = saturdays(5, 50, 50);
        DayTally today = day(SATURDAY, 10, 10);
        Period lunch = new Period(SATURDAY, SATURDAY, 22, 28);
        Period evening = new Period(SATURDAY, SATURDAY, 30, 40);
        Mix atLunch = Mix.of(lunch, List.of(today), names);
        assertEquals(4 * 100, Against.of(atLunch, before, names).orElseThrow().lastFour().pieces());
        Mix later = Mix.of(evening, List.of(today), names);
        assertEquals(0, Against.of(later, before, names).orElseThrow().lastFour().pieces());
    }

    @Test
    void aFirstSaturdayHasNothingBesideIt() {
        Mix now = Mix.of(Period.day(SATURDAY), List.of(day(SATURDAY, 1, 1)), names);
        assertEquals(Optional.empty(), Against.of(now, List.of(), names));
        assertEquals(
                Optional.empty(),
                Against.of(now, List.of(day(SATURDAY.plusWeeks(1), 5, 5)), names),
                "a later day is not before");
    }

    @Test
    void looksBackWeekByWeek() {
        List<LocalDate> dates = Against.weekdaysBefore(SATURDAY);
        assertEquals(LocalDate.of(2026, 2, 28), dates.get(0));
        assertTrue(dates.stream().allMatch(d -> d.getDayOfWeek() == SATURDAY.getDayOfWeek()));
        assertEquals(24, dates.size());
    }

    private Against against(DayTally day, List<DayTally> before) {
        Mix now = Mix.of(Period.day(day.date()), List.of(day), names);
        return Against.of(now, before, names).orElseThrow();
    }

    private static List<DayTally> saturdays(int weeks, int dipped, int dry) {
        List<DayTally> days = new ArrayList<>();
        for (int week = 1; week <= weeks; week++) {
            days.add(day(SATURDAY.minusWeeks(week), dipped, dry));
        }
        return days;
    }

    private static DayTally day(LocalDate date, int dipped, int dry) {
        List<Sold> sold = List.of(beef("dipped", dipped), beef("dry", dry));
        return new DayTally(date, List.of(new HalfHour(24, new Counts(9, 0, 0, 0, 0, 900), sold)));
    }

    private static Sold beef(String dip, int pieces) {
        List<String> ways = List.of("dip=" + dip, "peppers=hot", "cheese=none", "amount=none");
        return new Sold("beef", "regular", ways, false, pieces, 100);
    }
}
