package sopwell.prep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.menu.Out;
import sopwell.orders.OutEvent.OutLifted;
import sopwell.orders.OutEvent.OutMarked;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay.OutSpan;

/** From marks of what is out to times of the business day; Chicago is six hours behind UTC. */
class SellOutsTest {
    private final SellOuts outs = new SellOuts(DemoBook.ZONE, 4);

    private static long at(String utc) {
        return Instant.parse(utc).toEpochMilli();
    }

    @Test
    void whatRanOutIsOutUntilItIsLiftedOrTheDayEnds() {
        outs.apply(new OutMarked(Out.item("beef"), 0, 0), at("2026-11-24T19:15:00Z"));
        outs.apply(new OutMarked(Out.option("hot"), 6, 0), at("2026-11-24T19:20:00Z"));
        outs.apply(new OutLifted(Out.item("beef"), false), at("2026-11-24T20:00:00Z"));
        long five = at("2026-11-24T23:00:00Z");
        outs.apply(new OutMarked(Out.size("beef", "large"), 0, five), at("2026-11-24T22:00:00Z"));
        outs.apply(new OutMarked(Out.item("fries"), 0, 0), at("2026-11-25T09:00:00Z"));
        List<OutSpan> day = outs.spans().get(LocalDate.of(2026, 11, 24));
        assertEquals(3, day.size(), "six left is not out: " + day);
        assertEquals(new OutSpan("beef", 13 * 60 + 15, 14 * 60), day.get(0));
        // Three in the night belongs to the day before, and nothing lifted it.
        assertEquals(
                List.of(
                        new OutSpan("beef large", 16 * 60, 17 * 60),
                        new OutSpan("fries", 27 * 60, History.DAY_MINUTES)),
                day.stream().skip(1).sorted((a, b) -> a.what().compareTo(b.what())).toList());
    }
}
