package sopwell.records;

import java.io.IOException;
import java.util.List;
import sopwell.mix.GuestWaits;
import sopwell.mix.HalfHours;
import sopwell.mix.PartWaits;
import sopwell.mix.WaitSummary;
import sopwell.mix.Waits;
import sopwell.records.TableWriter.Plain;

/**
 * How long the guests of a day waited: a row for each wait of all, of a half hour, of a station or
 * of an item, in seconds. What was not measured is empty. Not thread-safe.
 */
public final class WaitRecords {
    /** The columns, in their order. */
    public static final List<String> COLUMNS =
            List.of("date", "of", "id", "wait", "measured", "median", "ninetieth", "within target");

    private final TableWriter to;
    private final Plain date;

    private WaitRecords(TableWriter to, Plain date) {
        this.to = to;
        this.date = date;
    }

    /** Writes a day. */
    public static void write(TableWriter to, Waits waits) throws IOException {
        new WaitRecords(to, new Plain(waits.period().from().toString())).write(waits);
    }

    private void write(Waits waits) throws IOException {
        guests("all", "", waits.guests());
        for (Waits.HalfHour half : waits.halfHours()) {
            guests("half hour", HalfHours.begins(half.index()).toString(), half.guests());
        }
        for (PartWaits station : waits.stations()) {
            parts("station", station);
        }
        for (PartWaits item : waits.items()) {
            parts("item", item);
        }
    }

    private void guests(String of, String id, GuestWaits guests) throws IOException {
        Object within = guests.within().some();
        wait(List.of(of, id, "placed to started"), guests.toStarted(), TableWriter.NONE);
        wait(List.of(of, id, "placed to up"), guests.toUp(), within);
        wait(List.of(of, id, "up to handed"), guests.onPass(), TableWriter.NONE);
        wait(List.of(of, id, "placed to handed"), guests.toHanded(), TableWriter.NONE);
    }

    private void parts(String of, PartWaits one) throws IOException {
        Object within = one.within().some();
        wait(List.of(of, one.id(), "placed to started"), one.forHands(), TableWriter.NONE);
        wait(List.of(of, one.id(), "started to up"), one.beingMade(), TableWriter.NONE);
        wait(List.of(of, one.id(), "placed to up"), one.toUp(), within);
        wait(List.of(of, one.id(), "up to handed"), one.onPass(), TableWriter.NONE);
    }

    private void wait(List<String> what, WaitSummary summary, Object within) throws IOException {
        boolean known = summary.measured() > 0;
        to.row(
                List.of(
                        date,
                        what.get(0),
                        what.get(1),
                        what.get(2),
                        summary.measured(),
                        known ? seconds(summary.medianSeconds()) : TableWriter.NONE,
                        known ? seconds(summary.ninetiethSeconds()) : TableWriter.NONE,
                        within));
    }

    private static Plain seconds(double seconds) {
        return new Plain(Double.toString(seconds));
    }
}
