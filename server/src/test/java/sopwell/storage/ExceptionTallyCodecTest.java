package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.kitchen.RemakeReason;
import sopwell.menu.Out;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayExceptions.RemakeCount;
import sopwell.mix.DayExceptions.VoidCount;
import sopwell.mix.ExceptionTally;
import sopwell.mix.ExceptionTally.Difference;
import sopwell.mix.ExceptionTally.Refunds;
import sopwell.mix.OutTime;

/** Kept exceptions come back as they were, people's own words too; anything else is told apart. */
class ExceptionTallyCodecTest {
    private static final LocalDate DATE = LocalDate.of(2026, 1, 14);
    private static final ExceptionTally QUIET =
            new ExceptionTally(DATE, DayExceptions.NONE, List.of(), List.of(), List.of());
    private static final String QUIET_TEXT =
            "{\"asked\":0,\"lapsed\":0,\"waits\":[],\"changes\":0,\"changesAfterStart\":0,"
                    + "\"voidsAfterStart\":0,\"voids\":[],\"remakes\":[],\"outs\":[],"
                    + "\"refunds\":[],\"differences\":[]}";

    @Test
    void theFormIsFrozen() {
        assertEquals(QUIET_TEXT, ExceptionTallyCodec.write(QUIET));
        assertEquals(1, ExceptionTallyCodec.FORM);
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        DayExceptions exceptions =
                new DayExceptions(
                        3,
                        1,
                        List.of(900L, 4_000_000_000L),
                        7,
                        2,
                        1,
                        List.of(new VoidCount("gone", 2), new VoidCount("\"cayó\"\n{al piso}", 1)),
                        List.of(
                                new RemakeCount(RemakeReason.COLD, 4),
                                new RemakeCount(RemakeReason.DROPPED, 1)));
        ExceptionTally tally =
                new ExceptionTally(
                        DATE,
                        exceptions,
                        List.of(
                                new OutTime(Out.item("fries"), 5, 9, false, 0),
                                new OutTime(Out.size("beef", "large"), 6, 8, true, 3),
                                new OutTime(Out.option("hot"), 7, 7, false, 12)),
                        List.of(new Refunds("wrong", 2, 1_250), new Refunds("späť; 50 %", 1, 1)),
                        List.of(new Difference("Ana María", -25), new Difference("Bo", 300)));
        String text = ExceptionTallyCodec.write(tally);
        assertEquals(tally, ExceptionTallyCodec.read(DATE, text), text);
        assertEquals(QUIET, ExceptionTallyCodec.read(DATE, QUIET_TEXT));
    }

    @Test
    void anythingElseIsToldApart() {
        for (String text :
                List.of(
                        "",
                        "line beef",
                        "{}",
                        QUIET_TEXT.replace("}", ",\"more\":1}"),
                        QUIET_TEXT.replace("\"lapsed\":0", "\"lapsed\":\"0\""),
                        QUIET_TEXT.replace("\"outs\":[]", "\"outs\":[{\"out\":\"beef\"}]"),
                        QUIET_TEXT.replace(
                                "\"remakes\":[]",
                                "\"remakes\":[{\"reason\":\"bored\",\"pieces\":1}]"))) {
            assertThrows(IOException.class, () -> ExceptionTallyCodec.read(DATE, text), text);
        }
    }
}
