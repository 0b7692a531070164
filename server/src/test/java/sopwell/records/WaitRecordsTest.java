package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.mix.Waits;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** The waits of a small day as a spreadsheet gets them, counted by hand. */
class WaitRecordsTest {
    private static final LocalDate DATE = LocalDate.of(2026, 1, 14);
    private static final String GOLDEN =
            """
            date,of,id,wait,measured,median,ninetieth,within target
            2026-01-14,"all","","placed to started",1,60.0,60.0,
            2026-01-14,"all","","placed to up",2,290.0,400.0,1
            2026-01-14,"all","","up to handed",1,20.0,20.0,
            2026-01-14,"all","","placed to handed",1,200.0,200.0,
            2026-01-14,"half hour","12:00","placed to started",1,60.0,60.0,
            2026-01-14,"half hour","12:00","placed to up",1,180.0,180.0,1
            2026-01-14,"half hour","12:00","up to handed",1,20.0,20.0,
            2026-01-14,"half hour","12:00","placed to handed",1,200.0,200.0,
            2026-01-14,"half hour","12:30","placed to started",0,,,
            2026-01-14,"half hour","12:30","placed to up",1,400.0,400.0,0
            2026-01-14,"half hour","12:30","up to handed",0,,,
            2026-01-14,"half hour","12:30","placed to handed",0,,,
            2026-01-14,"station","line","placed to started",1,60.0,60.0,
            2026-01-14,"station","line","started to up",1,120.0,120.0,
            2026-01-14,"station","line","placed to up",1,180.0,180.0,1
            2026-01-14,"station","line","up to handed",1,20.0,20.0,
            2026-01-14,"station","fryer","placed to started",0,,,
            2026-01-14,"station","fryer","started to up",0,,,
            2026-01-14,"station","fryer","placed to up",2,275.0,400.0,1
            2026-01-14,"station","fryer","up to handed",1,50.0,50.0,
            2026-01-14,"item","beef","placed to started",1,60.0,60.0,
            2026-01-14,"item","beef","started to up",1,120.0,120.0,
            2026-01-14,"item","beef","placed to up",1,180.0,180.0,1
            2026-01-14,"item","beef","up to handed",1,20.0,20.0,
            2026-01-14,"item","fries","placed to started",0,,,
            2026-01-14,"item","fries","started to up",0,,,
            2026-01-14,"item","fries","placed to up",2,275.0,400.0,1
            2026-01-14,"item","fries","up to handed",1,50.0,50.0,
            """;

    @Test
    void theSheetOfASmallDayIsTheGoldenOne() throws Exception {
        Script script = new Script();
        Order first = script.place("2 beef dipped hot, fries");
        PartId beef = new PartId(first.id(), 1, "line");
        script.later(60).must(new KitchenCommand.Start(beef));
        script.later(90).must(new KitchenCommand.Up(new PartId(first.id(), 2, "fryer")));
        script.later(30).must(new KitchenCommand.Up(beef));
        script.later(20).must(new OrderCommand.Hand(first.id()));
        Order second = script.at("2026-01-14T12:40").place("fries");
        script.later(400).must(new KitchenCommand.Up(new PartId(second.id(), 1, "fryer")));

        WaitTally tally =
                WaitTally.of(
                        DATE,
                        script.stand().orders(),
                        script.stand().kitchen(),
                        Script.SETTINGS.zone());
        Names names = new Names(List.of(script.menu()));
        Waits waits = Waits.of(Period.day(DATE), List.of(tally), 360, names);
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        try (Csv to = new Csv(csv, WaitRecords.COLUMNS)) {
            WaitRecords.write(to, waits);
        }
        assertEquals(GOLDEN.replace("\n", "\r\n"), csv.toString(StandardCharsets.UTF_8));
    }
}
