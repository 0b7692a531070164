package sopwell.web;

import java.util.List;
import java.util.stream.Stream;
import sopwell.desk.DayBook;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.mix.Waits;
import sopwell.orders.Order;

/**
 * What is known of one day: what sold, how long it took, and what did not go straight. Immutable.
 *
 * @param tally what the mix was made from
 * @param waitTally what the waits were made from
 * @param troubles what did not go straight
 */
public record DayFigures(
        DayTally tally, Mix mix, WaitTally waitTally, Waits waits, ExceptionTally troubles) {
    /** Counts what happened on a stand's newest day, which must have been opened. */
    public static DayFigures of(Stand stand) {
        return of(DayBook.Day.of(stand), stand.settings().targetSeconds(), names(stand));
    }

    /** Makes the figures of a day that was counted. */
    public static DayFigures of(DayBook.Day day, int targetSeconds, Names names) {
        Period period = Period.day(day.mix().date());
        return new DayFigures(
                day.mix(),
                Mix.of(period, List.of(day.mix()), names),
                day.waits(),
                Waits.of(period, List.of(day.waits()), targetSeconds, names),
                day.exceptions());
    }

    /** What stations asked, what was altered, void or made again. */
    public DayExceptions exceptions() {
        return troubles.exceptions();
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
