package sopwell.prep.past;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.mix.DayTally;
import sopwell.mix.Ways;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.past.DayPrep.Started;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.prep.quantity.Stakes;

/** What became of plans, worked out by hand. */
class PastPrepTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 16);
    private static final String BEEF = "beef-sliced";
    private static final Stakes STAKES = Stakes.oneDay("9", "1");

    @Test
    void aBatchStandsOnTheDayOnWhichItWasStartedWithWhatItGaveLater() {
        DayPrep first =
                day(MONDAY, plan(MONDAY), List.of(new Started("b1", BEEF, 2, 8_000, 5)), Map.of());
        DayPrep second = day(MONDAY.plusDays(1), Optional.empty(), List.of(), Map.of("b1", 7_500L));
        PastPrep past = of(List.of(first, second), List.of(), Map.of());
        assertEquals(MONDAY.plusDays(1), past.days().get(0).date(), "newest first");
        assertEquals(false, past.days().get(0).isKept());
        PastPrep.Row row = past.days().get(1).rows().get(0);
        assertEquals(7_500, row.made());
        assertEquals(12_000, row.wanted());
        assertEquals(Optional.of(2_000L), row.left());
    }

    @Test
    void aBatchThatIsStillOnGaveNothingYet() {
        DayPrep day =
                day(MONDAY, Optional.empty(), List.of(new Started("b1", BEEF, 2, 8, 5)), Map.of());
        PastPrep.Row row = of(List.of(day), List.of(), Map.of()).days().get(0).rows().get(0);
        assertEquals(Optional.empty(), row.started().get(0).gave());
        assertEquals(0, row.made());
    }

    /** Ten used on both Mondays; the second threw 2 g away, by the rule it would have none over. */
    @Test
    void aWeekIsHeldAgainstTheWeekdaysAverage() {
        DayPrep first = used(MONDAY, 10_000, 0);
        DayPrep second = used(MONDAY.plusDays(7), 13_000, 2_000);
        List<PastPrep.Week> weeks = of(List.of(first, second), List.of(), Map.of()).weeks();
        assertEquals(1, weeks.size());
        assertEquals(MONDAY.plusDays(7), weeks.get(0).monday());
        assertEquals(2, weeks.get(0).cost(), 1e-9, "2 g wasted at 1");
        assertEquals(27, weeks.get(0).ruleCost(), 1e-9, "3 g short at 9");
    }

    /** As much is usually sold at 11:00 as at 12:00; it was out from 12:00 on. */
    @Test
    void whatWasMissingIsEstimatedFromTheTimeAtWhichItWasOut() {
        List<DayTally> sold = List.of(tally(MONDAY.minusDays(7), 22, 24), tally(MONDAY, 22));
        DayPrep day =
                new DayPrep(
                        MONDAY,
                        Optional.empty(),
                        List.of(),
                        Map.of(),
                        Map.of(BEEF, 1_000_000L),
                        Map.of(),
                        Map.of(),
                        Map.of(BEEF, 50_000L),
                        List.of());
        Map<LocalDate, List<OutSpan>> outs =
                Map.of(MONDAY, List.of(new OutSpan("beef", 720, 1_440)));
        PastPrep.Row row = of(List.of(day), sold, outs).days().get(0).rows().get(0);
        java.math.BigDecimal each =
                sopwell.stock.recipes.Usage.of(
                                Script.demoRecipes().get(0),
                                new sopwell.menu.Selection("beef", "regular", List.of(), List.of()))
                        .get(BEEF);
        assertEquals(Optional.of(each.longValueExact() * 10 * 1_000), row.missing());
        DayPrep plenty =
                new DayPrep(
                        MONDAY,
                        Optional.empty(),
                        List.of(),
                        Map.of(),
                        Map.of(BEEF, 1_000_000L),
                        Map.of(),
                        Map.of(),
                        Map.of(BEEF, 500_000L),
                        List.of());
        PastPrep.Row enough = of(List.of(plenty), sold, outs).days().get(0).rows().get(0);
        assertEquals(Optional.empty(), enough.missing(), "half of the day's use was left");
    }

    private static DayTally tally(LocalDate date, int... halves) {
        List<DayTally.HalfHour> counted =
                java.util.Arrays.stream(halves)
                        .mapToObj(
                                half ->
                                        new DayTally.HalfHour(
                                                half,
                                                DayTally.Counts.NONE,
                                                List.of(
                                                        new DayTally.Sold(
                                                                "beef",
                                                                "regular",
                                                                List.of(Ways.NONE),
                                                                false,
                                                                10,
                                                                1_000))))
                        .toList();
        return new DayTally(date, counted);
    }

    private static PastPrep of(
            List<DayPrep> days, List<DayTally> sold, Map<LocalDate, List<OutSpan>> outs) {
        return PastPrep.of(
                new PastPrep.Known(
                        days, sold, outs, Script.demoRecipes().get(0), Map.of(BEEF, STAKES)));
    }

    private static Optional<PlanKept> plan(LocalDate date) {
        return Optional.of(
                new PlanKept(date, List.of(new KeptTask(BEEF, 3, 12_000, 1, 2, date.plusDays(1)))));
    }

    private static DayPrep day(
            LocalDate date,
            Optional<PlanKept> plan,
            List<Started> started,
            Map<String, Long> gave) {
        return new DayPrep(
                date,
                plan,
                started,
                gave,
                Map.of(BEEF, 6_000L),
                Map.of(),
                Map.of(),
                Map.of(BEEF, 2_000L),
                List.of());
    }

    private static DayPrep used(LocalDate date, long used, long wasted) {
        return new DayPrep(
                date,
                Optional.empty(),
                List.of(),
                Map.of(),
                Map.of(BEEF, used),
                Map.of(),
                Map.of(BEEF, wasted),
                Map.of(BEEF, 0L),
                List.of());
    }
}
