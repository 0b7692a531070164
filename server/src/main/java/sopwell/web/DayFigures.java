package sopwell.web;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.OutTime;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.mix.Waits;
import sopwell.orders.Order;
import sopwell.till.DayReport;

/**
 * What is known of one day: what sold, how long it took, and what did not go straight. Immutable.
 *
 * @param tally what the mix was made from
 * @param waitTally what the waits were made from
 * @param outs what could not be sold, and when
 * @param money what was given back, and what tills were over or short
 */
public record DayFigures(
        DayTally tally,
        Mix mix,
        WaitTally waitTally,
        Waits waits,
        DayExceptions exceptions,
        List<OutTime> outs,
        DayReport money) {
    public DayFigures {
        outs = List.copyOf(outs);
    }

    /** Counts what happened on a stand's newest day, which must have been opened. */
    public static DayFigures of(Stand stand) {
        LocalDate date = stand.orders().date().orElseThrow();
        DayTally tally = DayTally.of(date, stand.orders(), stand.settings().zone(), stand::menuOf);
        WaitTally waits =
                WaitTally.of(date, stand.orders(), stand.kitchen(), stand.settings().zone());
        Period day = Period.day(date);
        Names names = names(stand);
        return new DayFigures(
                tally,
                Mix.of(day, List.of(tally), names),
                waits,
                Waits.of(day, List.of(waits), stand.settings().targetSeconds(), names),
                DayExceptions.of(stand.orders(), stand.kitchen()),
                OutTime.of(stand.outSpans(), stand.orders(), stand.atMs()),
                DayReport.of(stand.orders(), stand.till()));
    }

    /** The menu in force, then the others that the day's orders name. */
    private static Names names(Stand stand) {
        Stream<Menu> ordered =
                stand.orders().all().stream()
                        .map(Order::menuRevision)
                        .distinct()
                        .map(stand::menuOf);
        return new Names(Stream.concat(Stream.of(stand.menu()), ordered).distinct().toList());
    }
}
