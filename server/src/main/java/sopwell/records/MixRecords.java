package sopwell.records;

import java.io.IOException;
import java.util.List;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
import sopwell.mix.HalfHours;
import sopwell.mix.Names;
import sopwell.records.TableWriter.Plain;

/** What was sold: a row for each day, half hour, item, size and way of making. Stateless. */
public final class MixRecords {
    /** The columns, in their order. */
    public static final List<String> COLUMNS =
            List.of(
                    "date",
                    "half hour",
                    "item",
                    "name",
                    "size",
                    "ways",
                    "staff",
                    "pieces",
                    "cents");

    private MixRecords() {}

    /** Writes a day. */
    public static void write(TableWriter to, DayTally day, Names names) throws IOException {
        for (HalfHour half : day.halfHours()) {
            for (Sold sold : half.sold()) {
                to.row(
                        List.of(
                                new Plain(day.date().toString()),
                                new Plain(HalfHours.begins(half.index()).toString()),
                                sold.item(),
                                names.item(sold.item()).en(),
                                sold.size(),
                                String.join(" ", sold.ways()),
                                sold.staff() ? 1 : 0,
                                sold.pieces(),
                                sold.cents()));
            }
        }
    }
}
