package sopwell.whatif;

import java.util.List;
import sopwell.menu.LocalText;

/**
 * A day as it was and as it might have been. Immutable.
 *
 * @param rows by half hours, those in which anybody came
 * @param rush the busiest hour: two half hours one after the other, or one alone
 * @param verdict what the change did to nine of ten in that hour
 * @param overloads where more was asked than the hands can do, with the changes
 */
public record Tried(
        Changes changes,
        List<Row> rows,
        Row rush,
        Verdict verdict,
        List<Overload> overloads,
        int runs) {
    public Tried {
        rows = List.copyOf(rows);
        overloads = List.copyOf(overloads);
    }

    /**
     * One half hour, or two.
     *
     * @param begin the first half hour, see {@link sopwell.mix.HalfHours}
     * @param end the one after the last
     * @param measured what was measured that day
     * @param before the day again, with nothing changed
     * @param after the same with the changes
     */
    public record Row(int begin, int end, Waits measured, Waits.Band before, Waits.Band after) {}

    /** Whether nine of ten waited less, or more, in nine of ten pairs of runs. */
    public enum Verdict {
        SHORTER,
        LONGER,
        HARDLY
    }

    /**
     * A station that was asked for more than it can do. While that lasts there is no steady wait:
     * each guest waits longer than the one before.
     *
     * @param percent what it was asked for, of what its hands can do without a pause
     */
    public record Overload(LocalText station, int halfHour, int percent) {}
}
