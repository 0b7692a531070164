package sopwell.web.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Station;

/**
 * A day that can be played back: from its opening to the last thing done on it. Immutable.
 *
 * @param fromMs when it was opened, milliseconds since 1970-01-01 UTC
 * @param seconds how long after that the last thing was done; closing the day is not one, nor is
 *     what is done with the menu, recipes, calendar, shelves and batches
 * @param stations those of the menu of the day's last order
 * @param minutes how it stood at every full minute after its opening
 * @param peak when the most orders waited to be made whole; empty when none ever did
 * @param slowest the order that took longest, just before it was whole; empty when none was whole
 */
public record PastDay(
        LocalDate date,
        long fromMs,
        int seconds,
        List<Station> stations,
        List<Minute> minutes,
        Optional<Peak> peak,
        Optional<Slowest> slowest) {
    public PastDay {
        stations = List.copyOf(stations);
        minutes = List.copyOf(minutes);
    }

    /**
     * How it stood at one moment.
     *
     * @param waiting orders that were not whole
     * @param oldestSeconds how long the oldest of them had waited
     */
    public record Minute(int waiting, int oldestSeconds) {}

    /**
     * A minute of which there is none with more.
     *
     * @param atSecond since the day's opening
     * @param waiting orders that were not whole
     */
    public record Peak(int atSecond, int waiting) {}

    /**
     * The order that took longest.
     *
     * @param atSecond since the day's opening, a second before it was whole
     * @param number the order's number
     * @param tookSeconds from the call to whole
     */
    public record Slowest(int atSecond, int number, int tookSeconds) {}
}
