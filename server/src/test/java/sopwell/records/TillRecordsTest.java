package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.till.DayReport;

/** What the till's sheet says of the day itself. */
class TillRecordsTest {
    @Test
    void eachReopeningIsALineWithItsTimeAndReason() throws Exception {
        Script script = new Script();
        Order order = script.place("beef");
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        script.must(new OrderCommand.CloseDay());
        script.later(600).must(new OrderCommand.ReopenDay(Optional.empty(), "=late, a party"));
        Order late = script.place("beef");
        script.must(new OrderCommand.VoidOrder(late.id(), 0, "gone"));
        script.must(new OrderCommand.CloseDay());
        script.later(60).place("fries");
        DayReport report = DayReport.of(script.stand().orders(), script.stand().till());
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        try (Csv to = new Csv(csv, TillRecords.COLUMNS)) {
            TillRecords.write(to, report, Script.SETTINGS.zone());
        }
        String asked = line("12:10:00", "'=late, a party");
        String unasked = line("12:11:00", "after-close");
        String written = csv.toString(StandardCharsets.UTF_8);
        assertTrue(written.contains(asked + unasked), written);
    }

    private static String line(String time, String reason) {
        return "2026-01-14,\"reopened\",\"\",2026-01-14 "
                + time
                + ",\"\",\"\",\""
                + reason
                + "\",,\r\n";
    }
}
