package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
import sopwell.mix.HalfHours;

/** Kept tallies come back as they were, and anything else is told apart. */
class TallyCodecTest {
    private static final LocalDate DATE = LocalDate.of(2026, 1, 14);
    private static final List<String> ITEMS = List.of("beef", "fries", "hot-dog", "jus-cup");
    private static final List<String> WAYS =
            List.of("dip=dipped", "dip=dry", "peppers=hot+sweet", "peppers=none", "cheese=none");

    private final TallyCodec codec = new TallyCodec();

    @Test
    void theFormIsFrozen() {
        List<String> ways = List.of("dip=dipped", "peppers=hot");
        Sold beef = new Sold("beef", "regular", ways, false, 2, 1_580);
        Sold fries = new Sold("fries", "", List.of(), true, 40, 13_800);
        DayTally tally =
                new DayTally(
                        DATE,
                        List.of(
                                new HalfHour(24, new Counts(3, 1, 0, 0, 0, 1_580), List.of(beef)),
                                new HalfHour(
                                        25, new Counts(0, 0, 1, 0, 0, 0), List.of(fries, beef))));
        assertEquals(
                """
                beef,regular,0,dip=dipped peppers=hot;fries,,1,
                o,3,1,0,0,0,17w;0,2,17w
                p,0,0,1,0,0,0;1,14,anc;0,2,17w""",
                TallyCodec.write(tally),
                "a form that differs needs another number");
        assertEquals(2, TallyCodec.FORM);
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        for (long seed = 0; seed < 300; seed++) {
            DayTally tally = any(new SplittableRandom(seed));
            assertEquals(tally, codec.read(DATE, TallyCodec.write(tally)), "seed " + seed);
        }
    }

    /** A byte that was changed makes another tally, or none: never the same. */
    @Test
    void aChangedByteIsNeverTheSameTally() {
        String text = TallyCodec.write(any(new SplittableRandom(7)));
        DayTally was = read(text);
        for (int at = 0; at < text.length(); at++) {
            String changed =
                    text.substring(0, at)
                            + (text.charAt(at) == '1' ? '2' : '1')
                            + text.substring(at + 1);
            try {
                assertNotEquals(was, codec.read(DATE, changed), "character " + at);
            } catch (IOException toldApart) {
                assertNotEquals("", toldApart.getMessage());
            }
        }
    }

    @Test
    void anythingElseIsToldApart() {
        for (String text :
                List.of(
                        "[]",
                        "beef",
                        "beef,regular,2,",
                        "\n",
                        "\no",
                        "\no,3,1,0,0,0",
                        "\no,3,1,0,0,0,1;0,1,1",
                        "beef,,0,\no,3,1,0,0,0,1;0,1",
                        "beef,,0,\no,3,1,0,0,0,1;0,zzzzzzz,1",
                        "beef,,0,\no,3,1,0,0,0,1;0,1,zzzzzzzzzzzzz",
                        "beef,,0,\no,3,1,0,0,0,1;0,1,1 ",
                        "beef,,0,\no,-3,1,0,0,0,1")) {
            assertThrows(IOException.class, () -> codec.read(DATE, text), text);
        }
    }

    private DayTally read(String text) {
        try {
            return codec.read(DATE, text);
        } catch (IOException wrong) {
            throw new AssertionError(wrong);
        }
    }

    private static DayTally any(SplittableRandom random) {
        List<HalfHour> halfHours = new ArrayList<>();
        for (int index = random.nextInt(20); index < HalfHours.END_MAX; index += 7) {
            Counts counts =
                    new Counts(
                            random.nextInt(100),
                            random.nextInt(40),
                            random.nextInt(3),
                            random.nextInt(3),
                            random.nextInt(3),
                            random.nextLong(1_000_000));
            List<Sold> sold = new ArrayList<>();
            for (int kind = random.nextInt(12); kind > 0; kind--) {
                List<String> ways = WAYS.subList(0, random.nextInt(WAYS.size()));
                sold.add(
                        new Sold(
                                ITEMS.get(random.nextInt(ITEMS.size())),
                                random.nextBoolean() ? "large" : "",
                                ways,
                                random.nextInt(9) == 0,
                                1 + random.nextInt(99),
                                random.nextLong(100_000)));
            }
            halfHours.add(new HalfHour(index, counts, sold));
        }
        return new DayTally(DATE, halfHours);
    }
}
