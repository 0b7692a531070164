package sopwell.prep.plan;

import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.stock.recipes.Supply;

/** A large question: a third of the ingredients is made, the others are bought. */
public final class BigAsk {
    private BigAsk() {}

    /** With so many ingredients that are sold, and so many open days. */
    public static PlanAsk of(int ingredients, int openDays) {
        ZoneId zone = ZoneId.of("America/Chicago");
        LocalDate today = LocalDate.of(2026, 6, 8);
        Kitchen kitchen =
                new Kitchen()
                        .open("06:00", "22:00", DayOfWeek.values())
                        .resource("oven", 12, 15)
                        .keep("raw", 0, Optional.empty());
        Supply daily = Kitchen.supply(List.of(DayOfWeek.values()), 1, 1_000, 500);
        List<DemandFor> demand = new ArrayList<>();
        for (int i = 0; i < ingredients; i++) {
            String id = "i" + i;
            boolean made = i % 3 == 0;
            kitchen.keep(id, 3 + i % 4, made ? Optional.empty() : Optional.of(daily));
            if (made) {
                Routing routing =
                        new Routing(
                                4,
                                "roast",
                                List.of(
                                        step("roast", 60 + i)
                                                .on("oven", 1)
                                                .attended(true, true)
                                                .done(),
                                        step("trim", 30).attended(true, true).done()));
                kitchen.make(id, "raw", 1_200, 1_000, routing);
            }
            List<Double> means = new ArrayList<>();
            List<Double> variances = new ArrayList<>();
            for (int d = 0; d < openDays; d++) {
                double mean = 500 + 97.0 * ((i * 7 + d * 3) % 11);
                means.add(mean);
                variances.add(.03 * mean * mean);
            }
            demand.add(new DemandFor(id, means, variances, .01));
        }
        List<OpenDay> days =
                today.datesUntil(today.plusDays(openDays))
                        .map(d -> new OpenDay(d, d.atTime(10, 15).atZone(zone).toInstant()))
                        .toList();
        Instant now = today.minusDays(2).atTime(8, 0).atZone(zone).toInstant();
        return new PlanAsk(
                kitchen.book(), zone, now, days, demand, List.of(), List.of(), BackwardTest.TERMS);
    }
}
