package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.Check;
import sopwell.mix.WaitTally;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.WaitTally.Quoted;

/**
 * Writes a day's waits as compact text and reads them back: a line of the stations' and items' ids,
 * then a line for each order with its own waits and, after semicolons, those of its parts. Numbers
 * are in base 36, what is unknown is nothing at all. About 18 kB on a day of 500 orders. Stateless.
 */
final class WaitTallyCodec {
    /** Changes when the form changes; what is kept in another form is counted anew. */
    static final int FORM = 1;

    private static final int BASE = 36;
    private static final int ORDER_FIELDS = 6;
    private static final int PART_FIELDS = 6;

    private WaitTallyCodec() {}

    static String write(WaitTally tally) {
        Map<String, Integer> names = new LinkedHashMap<>();
        StringBuilder rows = new StringBuilder();
        for (OrderWait order : tally.orders()) {
            rows.append('\n');
            number(rows, order.halfHour()).append(',');
            number(rows, order.staff() ? 1 : 0).append(',');
            rows.append(letter(order.quoted())).append(',');
            waits(rows, order.toStarted(), order.toUp(), order.toHanded());
            for (PartWait part : order.parts()) {
                rows.append(';');
                number(rows, place(names, part.station())).append(',');
                number(rows, place(names, part.item())).append(',');
                number(rows, part.pieces()).append(',');
                waits(rows, part.toStarted(), part.toUp(), part.toHanded());
            }
        }
        return rows.insert(0, String.join(" ", names.keySet())).toString();
    }

    /**
     * Reads what was written.
     *
     * @throws IOException when it is something else
     */
    static WaitTally read(LocalDate date, String text) throws IOException {
        try {
            Iterator<String> lines = text.lines().iterator();
            String[] names = lines.hasNext() ? lines.next().split(" ", -1) : new String[0];
            List<OrderWait> orders = new ArrayList<>();
            while (lines.hasNext()) {
                orders.add(order(lines.next().split(";", -1), names));
            }
            return new WaitTally(date, orders);
        } catch (NumberFormatException | IndexOutOfBoundsException | Check.Broken other) {
            throw new IOException("not the waits of a day", other);
        }
    }

    private static OrderWait order(String[] pieces, String[] names) throws IOException {
        String[] fields = fields(pieces[0], ORDER_FIELDS);
        List<PartWait> parts = new ArrayList<>();
        for (int i = 1; i < pieces.length; i++) {
            parts.add(part(fields(pieces[i], PART_FIELDS), names));
        }
        return new OrderWait(
                number(fields[0]),
                number(fields[1]) == 1,
                quoted(fields[2]),
                wait(fields[3]),
                wait(fields[4]),
                wait(fields[5]),
                parts);
    }

    private static PartWait part(String[] fields, String[] names) {
        return new PartWait(
                names[number(fields[0])],
                names[number(fields[1])],
                number(fields[2]),
                wait(fields[3]),
                wait(fields[4]),
                wait(fields[5]));
    }

    private static String letter(Quoted quoted) {
        return switch (quoted) {
            case UNJUDGED -> "";
            case SOONER -> "s";
            case WITHIN -> "w";
            case LATER -> "l";
        };
    }

    private static Quoted quoted(String written) throws IOException {
        for (Quoted quoted : Quoted.values()) {
            if (letter(quoted).equals(written)) {
                return quoted;
            }
        }
        throw new IOException("not a quote kept or missed: " + written);
    }

    private static String[] fields(String piece, int count) throws IOException {
        String[] fields = piece.split(",", -1);
        if (fields.length != count) {
            throw new IOException("not a wait: " + piece);
        }
        return fields;
    }

    private static int place(Map<String, Integer> names, String name) {
        return names.computeIfAbsent(name, n -> names.size());
    }

    private static StringBuilder number(StringBuilder text, int number) {
        return text.append(Integer.toString(number, BASE));
    }

    private static void waits(StringBuilder text, int toStarted, int toUp, int toHanded) {
        wait(text, toStarted).append(',');
        wait(text, toUp).append(',');
        wait(text, toHanded);
    }

    private static StringBuilder wait(StringBuilder text, int seconds) {
        return seconds == WaitTally.UNKNOWN ? text : number(text, seconds);
    }

    private static int number(String written) {
        return Integer.parseInt(written, BASE);
    }

    private static int wait(String written) {
        return written.isEmpty() ? WaitTally.UNKNOWN : number(written);
    }
}
