package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BacktestTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final int DAYS = 50;
    private static final int ORIGIN = DAYS - 6;

    @TempDir Path folder;

    @Test
    void writesALineForEachDayNameAndQuantile() throws Exception {
        records(0);
        List<String> lines = run(2, "1-5");
        assertEquals("origin,horizon,date,kind,name,quantile,value,mean", lines.get(0));
        int names = 1 + 2 + 2 + 1;
        assertEquals(1 + 2 * 5 * names * 4, lines.size());
        assertTrue(
                lines.get(1).startsWith(FIRST.plusDays(ORIGIN - 1) + ",1," + day(ORIGIN)),
                lines.get(1));
        assertTrue(lines.stream().anyMatch(line -> line.contains(",item,\"beef, hot\",0.9,")));
        assertTrue(lines.stream().anyMatch(line -> line.contains(",modifier,dipped,0.95,")));
    }

    @Test
    void whatCameAfterADayChangesNothingThatWasForecastOnIt() throws Exception {
        records(0);
        List<String> before = run(1, "1-5");
        records(1);
        assertEquals(before, run(1, "1-5"));
    }

    @Test
    void whatCameBeforeADayChangesWhatIsForecastOnIt() throws Exception {
        records(0);
        List<String> before = run(1, "1-5");
        records(2);
        assertTrue(!before.equals(run(1, "1-5")));
    }

    @Test
    void readsFilesAsOwnersHaveThem() throws Exception {
        StringBuilder lines = new StringBuilder("\uFEFFItem;Business_Date;quantity;notes\r\n\r\n");
        for (int d = 0; d < 20; d++) {
            lines.append("\"beef\";").append(day(d)).append(";40;\"a; b\"\"c\"\r\n;;;\r\n");
        }
        write("lines.csv", lines.toString());
        List<String> written = run(3, "2");
        assertEquals(1 + 3 * 2 * 4, written.size());
    }

    @Test
    void saysWhereARecordIsWrongAndWhatWouldBeRight() throws Exception {
        write("lines.csv", "business_date,item,quantity\n2026-01-05,beef,2\n5.1.2026,beef,2\n");
        assertEquals(
                "lines.csv, line 3, column business_date: \"5.1.2026\" is no date; it must be one"
                        + " such as 2026-03-08.",
                refusal("1-5"));
        write("lines.csv", "business_date,item,quantity\n2026-01-05,beef,two\n");
        assertTrue(refusal("1-5").startsWith("lines.csv, line 2, column quantity: \"two\" is no"));
        write("lines.csv", "date,item\n");
        assertTrue(refusal("1-5").startsWith("lines.csv, line 1: there is no column \"business_"));
        write("lines.csv", "business_date,item\n2026-01-05,beef\n");
        assertTrue(refusal("1-5").startsWith("There are 1 days with sales"));
        assertTrue(refusal("0-5").startsWith("--horizons 0-5 is not understood"));
        Files.delete(folder.resolve("lines.csv"));
        assertTrue(refusal("1-5").startsWith("lines.csv: is not in "));
    }

    private String refusal(String horizons) {
        return assertThrows(StartRefused.class, () -> run(5, horizons)).getMessage();
    }

    private List<String> run(int origins, String horizons) throws StartRefused, IOException {
        Config.Backtest asked = new Config.Backtest();
        asked.history = folder;
        asked.origins = origins;
        asked.horizons = horizons;
        asked.out = folder.resolve("out.csv");
        PrintStream said =
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        new Backtest(asked, said).run();
        return Files.readAllLines(asked.out);
    }

    /**
     * Writes records; the last origin is the sixth day from the end.
     *
     * @param other 1 to change what came after it, 2 to change the day itself
     */
    private void records(int other) throws IOException {
        SplittableRandom dice = new SplittableRandom(5);
        StringBuilder lines =
                new StringBuilder("business_date,local_time,item,size,modifiers,quantity\n");
        StringBuilder days =
                new StringBuilder("business_date,open,close,closed_reason,events,weather\n");
        StringBuilder outs = new StringBuilder("business_date,from,to,what\n");
        StringBuilder weather = new StringBuilder("issued,business_date,kind,probability\n");
        for (int d = 0; d < DAYS; d++) {
            boolean after = d >= ORIGIN + 1;
            int more = (after && other == 1) || (d == ORIGIN && other == 2) ? 40 : 0;
            for (int n = 0; n < 60 + dice.nextInt(15); n++) {
                int minute = 630 + dice.nextInt(560);
                String way = dice.nextInt(3) == 0 ? "dipped" : "";
                line(lines, d, minute, n % 4 == 0 ? "\"beef, hot\",,," : "dog,," + way + ",");
            }
            line(lines, d, 700, "dog,small,,");
            line(lines, d, 710, "dog,large,,");
            for (int n = 0; n < more; n++) {
                line(lines, d, 640, "dog,,,");
            }
            String close = after && other == 1 ? "16:00" : "20:00";
            days.append(day(d)).append(",10:30,").append(close).append(",,,");
            days.append((after && other == 1) || d % 5 == 0 ? "rain\n" : "dry\n");
            int chance = after && other == 1 ? 9 : 2;
            weather.append(day(d - 1)).append(',').append(day(d)).append(",rain,0.2\n");
            if (d > ORIGIN + 1) {
                weather.append(day(d - 1)).append(',').append(day(d)).append(",rain,0.");
                weather.append(chance).append('\n');
            }
        }
        outs.append(day(ORIGIN - 9)).append(",18:00,,dog\n");
        outs.append(other == 1 ? day(ORIGIN + 2) + ",11:00,,dog\n" : "");
        write("lines.csv", lines.toString());
        write("days.csv", days.toString());
        write("outs.csv", outs.toString());
        write("weather.csv", weather.toString());
    }

    private static void line(StringBuilder lines, int day, int minute, String rest) {
        lines.append(day(day)).append(',').append(minute / 60).append(':');
        lines.append(minute % 60 < 10 ? "0" : "").append(minute % 60).append(',');
        lines.append(rest).append("1\n");
    }

    private static LocalDate day(int number) {
        return FIRST.plusDays(number);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }
}
