package sopwell.prep.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.quantity.LotRule.AsNeeded;
import sopwell.prep.quantity.LotRule.AtLeast;
import sopwell.prep.quantity.LotRule.Whole;
import sopwell.prep.quantity.Requirements.Part;

/** Explosion, netting, lead times and lots against published exercises. */
class RequirementsTest {
    /** Heizer and Render, Operations Management, problems 14.1 to 14.4: gross. */
    @Test
    void bracketWithNothingOnHand() {
        Map<String, Netting> found = bracket(longs(50), false, 0, 0);
        assertEquals(
                List.of(50L, 50L, 100L, 250L, 100L, 250L, 250L, 200L, 100L),
                found.values().stream().map(Netting::net).toList());
    }

    /** Heizer and Render, problem 14.5: 25 bases and 100 clamps on hand. */
    @Test
    void bracketIsNettedLevelByLevel() {
        Map<String, Netting> found = bracket(longs(50), false, 25, 100);
        assertEquals(
                List.of(50L, 25L, 100L, 125L, 50L, 125L, 125L, 100L, 50L),
                found.values().stream().map(Netting::net).toList());
    }

    /** Heizer and Render, problem 14.6: due at the start of week 10, castings start in week 4. */
    @Test
    void bracketLeadTimesAddUp() {
        List<Long> due = longs(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 50);
        Map<String, Netting> found = bracket(due, true, 0, 0);
        List<Long> castings = found.get("casting").releases();
        assertEquals(50, castings.get(4));
        assertEquals(0, sum(castings.subList(0, 4)));
        assertEquals(200, castings.get(5));
        assertEquals(0, found.get("casting").late());
    }

    private static Map<String, Netting> bracket(
            List<Long> due, boolean leads, long bases, long clamps) {
        int n = due.size();
        int one = leads ? 1 : 0;
        return Requirements.of(
                List.of(
                        part("bracket", n, 0, one, Map.of("base", 1L, "spring", 2L, "clamp", 4L)),
                        part("base", n, bases, one, Map.of("clamp", 1L, "housing", 2L)),
                        part("spring", n, 0, one, Map.of()),
                        part("clamp", n, clamps, one, Map.of("handle", 1L, "casting", 1L)),
                        part("housing", n, 0, 2 * one, Map.of("bearing", 2L, "shaft", 1L)),
                        part("handle", n, 0, one, Map.of()),
                        part("casting", n, 0, 3 * one, Map.of()),
                        part("bearing", n, 0, one, Map.of()),
                        part("shaft", n, 0, one, Map.of())),
                Map.of("bracket", due));
    }

    /** Krajewski and others, Operations Management: the seat subassembly, lot 230. */
    @Test
    void seatsInFixedLots() {
        List<Long> gross = longs(150, 0, 0, 120, 0, 150, 120, 0);
        List<Long> scheduled = longs(230, 0, 0, 0, 0, 0, 0, 0);
        Netting seat = Netting.of(gross, new Netting.Start(37, scheduled, 2, new Whole(230)));
        assertEquals(longs(117, 117, 117, 227, 227, 77, 187, 187), seat.onHand());
        assertEquals(longs(0, 0, 0, 230, 0, 0, 230, 0), seat.receipts());
        assertEquals(longs(0, 230, 0, 0, 230, 0, 0, 0), seat.releases());
        assertEquals(0, seat.late());
    }

    /** The Aldershot chairs, a course exercise: two levels, lot for lot, lead time 2. */
    @Test
    void chairsAndTheirParts() {
        List<Long> gross = longs(150, 0, 70, 0, 175, 0, 90, 60);
        AsNeeded rule = new AsNeeded();
        Map<String, Netting> found =
                Requirements.of(
                        List.of(
                                new Part(
                                        "chair",
                                        new Netting.Start(
                                                260, longs(0, 0, 0, 0, 0, 0, 0, 0), 2, rule),
                                        Map.of("seat", 1L, "back", 1L, "leg", 4L)),
                                new Part(
                                        "seat",
                                        new Netting.Start(60, first(50), 2, rule),
                                        Map.of()),
                                new Part(
                                        "back",
                                        new Netting.Start(40, first(10), 2, rule),
                                        Map.of()),
                                part("leg", 8, 80, 2, Map.of())),
                        Map.of("chair", gross));
        assertEquals(longs(0, 0, 135, 0, 90, 60, 0, 0), found.get("chair").releases());
        assertEquals(longs(25, 0, 90, 60, 0, 0, 0, 0), found.get("seat").releases());
        assertEquals(longs(85, 0, 90, 60, 0, 0, 0, 0), found.get("back").releases());
        assertEquals(longs(460, 0, 360, 240, 0, 0, 0, 0), found.get("leg").releases());
    }

    /** A course exercise with a minimum lot of 100. */
    @Test
    void minimumLots() {
        List<Long> gross = longs(60, 90, 150, 150, 180, 270, 120);
        List<Long> scheduled = longs(0, 150, 0, 0, 0, 0, 0);
        Netting part = Netting.of(gross, new Netting.Start(120, scheduled, 2, new AtLeast(100)));
        assertEquals(longs(60, 120, 70, 20, 0, 0, 0), part.onHand());
        assertEquals(longs(100, 100, 160, 270, 120, 0, 0), part.releases());
    }

    /** Snyder and Shen, example 3.9 and problem 3.27. */
    @Test
    void lotSizesAsInSnyderAndShen() {
        LotSizes some =
                LotSizes.of(longs(90, 120, 80, 70), new BigDecimal("500"), new BigDecimal("2"));
        assertEquals(longs(210, 0, 150, 0), some.orders());
        assertEquals(0, some.cost().compareTo(new BigDecimal("1380")));
        LotSizes others =
                LotSizes.of(longs(150, 100, 80, 200), new BigDecimal("120"), new BigDecimal(".8"));
        assertEquals(longs(150, 180, 0, 200), others.orders());
        assertEquals(0, others.cost().compareTo(new BigDecimal("424")));
    }

    @Test
    void stockIsNeverNegativeAndNothingIsLostOnTheWay() {
        SplittableRandom dice = new SplittableRandom(13);
        for (int n = 0; n < 500; n++) {
            List<Long> gross = dice.longs(12, 0, 200).boxed().toList();
            List<Long> scheduled = dice.longs(12, 0, 60).boxed().toList();
            long onHand = dice.nextLong(300);
            LotRule rule = List.of(new AsNeeded(), new Whole(70), new AtLeast(90)).get(n % 3);
            Netting netting = Netting.of(gross, new Netting.Start(onHand, scheduled, n % 4, rule));
            assertTrue(netting.onHand().stream().allMatch(left -> left >= 0), "case " + n);
            assertTrue(netting.receipts().stream().allMatch(r -> r >= 0), "case " + n);
            long in = onHand + sum(scheduled) + netting.net();
            assertEquals(in - sum(gross), netting.onHand().get(11), "case " + n);
            assertEquals(netting.net(), sum(netting.releases()) + netting.late(), "case " + n);
        }
    }

    private static Part part(String id, int periods, long onHand, int lead, Map<String, Long> of) {
        return new Part(
                id,
                new Netting.Start(onHand, Collections.nCopies(periods, 0L), lead, new AsNeeded()),
                of);
    }

    private static List<Long> first(long amount) {
        return longs(amount, 0, 0, 0, 0, 0, 0, 0);
    }

    private static List<Long> longs(long... amounts) {
        return Arrays.stream(amounts).boxed().toList();
    }

    private static long sum(List<Long> amounts) {
        return amounts.stream().mapToLong(Long::longValue).sum();
    }
}
