package sopwell.web.api;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import sopwell.mix.GuestWaits;
import sopwell.mix.HalfHours;
import sopwell.mix.PartWaits;
import sopwell.mix.WaitSummary;
import sopwell.mix.Waits;
import sopwell.web.Reply;

/**
 * How long guests waited, as comma-separated values (RFC 4180): a line for each wait of all, of a
 * half hour, of a station or of an item, in seconds. What was not measured is empty.
 */
final class WaitsCsv {
    private static final String TYPE = "text/csv; charset=utf-8; header=present";

    private final StringBuilder text = new StringBuilder();
    private final String date;

    private WaitsCsv(String date) {
        this.date = date;
    }

    static Reply reply(Waits waits) {
        return new Reply(
                200,
                TYPE,
                ByteBuffer.wrap(of(waits).getBytes(StandardCharsets.UTF_8)),
                Map.of(
                        "Content-Disposition",
                        "attachment; filename=\"waits-" + waits.period().from() + ".csv\""));
    }

    static String of(Waits waits) {
        WaitsCsv csv = new WaitsCsv(waits.period().from().toString());
        csv.line("date", "of", "id", "wait", "measured", "median", "ninetieth", "within target");
        csv.guests("all", "", waits.guests());
        for (Waits.HalfHour half : waits.halfHours()) {
            csv.guests("half hour", HalfHours.begins(half.index()).toString(), half.guests());
        }
        waits.stations().forEach(one -> csv.parts("station", one));
        waits.items().forEach(one -> csv.parts("item", one));
        return csv.text.toString();
    }

    private void guests(String of, String id, GuestWaits guests) {
        wait(of, id, "placed to started", guests.toStarted(), "");
        wait(of, id, "placed to up", guests.toUp(), "" + guests.within().some());
        wait(of, id, "up to handed", guests.onPass(), "");
        wait(of, id, "placed to handed", guests.toHanded(), "");
    }

    private void parts(String of, PartWaits one) {
        wait(of, one.id(), "placed to started", one.forHands(), "");
        wait(of, one.id(), "started to up", one.beingMade(), "");
        wait(of, one.id(), "placed to up", one.toUp(), "" + one.within().some());
        wait(of, one.id(), "up to handed", one.onPass(), "");
    }

    private void wait(String of, String id, String wait, WaitSummary summary, String within) {
        boolean known = summary.measured() > 0;
        line(
                date,
                of,
                id,
                wait,
                "" + summary.measured(),
                known ? "" + summary.medianSeconds() : "",
                known ? "" + summary.ninetiethSeconds() : "",
                within);
    }

    private void line(String... fields) {
        for (int i = 0; i < fields.length; i++) {
            text.append(i == 0 ? "" : ",").append(TillCsv.quoted(fields[i]));
        }
        text.append("\r\n");
    }
}
