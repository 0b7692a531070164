package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;

/**
 * Writes days' tallies as compact text and reads them back: a line of what was sold, each kind
 * once, then a line for each half hour with its counts and, after semicolons, kind, pieces and
 * cents. Numbers are in base 36. About 6 kB on a day of 600 orders. A reader remembers kinds from
 * day to day, since a year of days sells the same things. Not thread-safe.
 */
final class TallyCodec {
    /** Changes when the form changes; what is kept in another form is counted anew. */
    static final int FORM = 2;

    private static final int BASE = 36;
    private static final int KIND_FIELDS = 4;

    private final Map<String, Sold> kinds = new HashMap<>();

    static String write(DayTally tally) {
        Map<String, Integer> places = new LinkedHashMap<>();
        StringBuilder rows = new StringBuilder();
        for (HalfHour half : tally.halfHours()) {
            Counts counts = half.counts();
            rows.append('\n');
            number(rows, half.index()).append(',');
            number(rows, counts.orders()).append(',');
            number(rows, counts.voids()).append(',');
            number(rows, counts.staffOrders()).append(',');
            number(rows, counts.takenBefore()).append(',');
            number(rows, counts.toldPrices()).append(',');
            number(rows, counts.subtotalCents());
            for (Sold sold : half.sold()) {
                int place = places.computeIfAbsent(kind(sold), k -> places.size());
                rows.append(';');
                number(rows, place).append(',');
                number(rows, sold.pieces()).append(',');
                number(rows, sold.cents());
            }
        }
        return rows.insert(0, String.join(";", places.keySet())).toString();
    }

    /**
     * Reads what was written.
     *
     * @throws IOException when it is something else
     */
    DayTally read(LocalDate date, String text) throws IOException {
        int end = text.indexOf('\n');
        String head = end < 0 ? text : text.substring(0, end);
        List<Sold> sold = new ArrayList<>();
        for (String kind : head.isEmpty() ? new String[0] : head.split(";", -1)) {
            sold.add(kind(kind));
        }
        Numbers numbers = new Numbers(text, end < 0 ? text.length() : end);
        List<HalfHour> halfHours = new ArrayList<>();
        while (!numbers.isOver()) {
            halfHours.add(halfHour(numbers, sold));
        }
        return new DayTally(date, halfHours);
    }

    private static HalfHour halfHour(Numbers numbers, List<Sold> kinds) throws IOException {
        int index = numbers.small('\n');
        Counts counts =
                new Counts(
                        numbers.small(','),
                        numbers.small(','),
                        numbers.small(','),
                        numbers.small(','),
                        numbers.small(','),
                        numbers.next(','));
        List<Sold> sold = new ArrayList<>();
        while (numbers.isAt(';')) {
            int place = numbers.small(';');
            if (place >= kinds.size()) {
                throw new IOException("not a tally: there is no kind " + place);
            }
            Sold kind = kinds.get(place);
            int pieces = numbers.small(',');
            long cents = numbers.next(',');
            sold.add(new Sold(kind.item(), kind.size(), kind.ways(), kind.staff(), pieces, cents));
        }
        return new HalfHour(index, counts, sold);
    }

    private static String kind(Sold sold) {
        return String.join(
                ",",
                sold.item(),
                sold.size(),
                sold.staff() ? "1" : "0",
                String.join(" ", sold.ways()));
    }

    private Sold kind(String written) throws IOException {
        Sold known = kinds.get(written);
        if (known != null) {
            return known;
        }
        String[] fields = written.split(",", -1);
        if (fields.length != KIND_FIELDS || !fields[2].matches("[01]")) {
            throw new IOException("not a kind of what was sold: " + written);
        }
        // Adding days up compares these texts a million times: each of them is there once.
        for (int field = 0; field < KIND_FIELDS; field++) {
            fields[field] = fields[field].intern();
        }
        List<String> ways =
                fields[3].isEmpty()
                        ? List.of()
                        : Stream.of(fields[3].split(" ", -1)).map(String::intern).toList();
        Sold kind = new Sold(fields[0], fields[1], ways, fields[2].equals("1"), 0, 0);
        kinds.put(written, kind);
        return kind;
    }

    private static StringBuilder number(StringBuilder text, long number) {
        return text.append(Long.toString(number, BASE));
    }

    /** Reads numbers one after another, each behind its mark. Not thread-safe. */
    private static final class Numbers {
        private static final int DIGITS_MAX = 12;

        private final char[] text;
        private int at;

        Numbers(String text, int at) {
            this.text = text.toCharArray();
            this.at = at;
        }

        boolean isOver() {
            return at == text.length;
        }

        /** What stands here in base 36, or -1: a year has a million of these. */
        private int digit() {
            char c = at < text.length ? text[at] : ' ';
            if (c >= '0' && c <= '9') {
                return c - '0';
            }
            return c >= 'a' && c <= 'z' ? c - 'a' + 10 : -1;
        }

        boolean isAt(char mark) {
            return at < text.length && text[at] == mark;
        }

        int small(char mark) throws IOException {
            long number = next(mark);
            if (number > Integer.MAX_VALUE) {
                throw new IOException("not a count: " + number);
            }
            return (int) number;
        }

        long next(char mark) throws IOException {
            if (!isAt(mark)) {
                throw new IOException("not a tally at character " + at);
            }
            at++;
            int from = at;
            long number = 0;
            for (int digit = digit(); digit >= 0; digit = digit()) {
                number = number * BASE + digit;
                at++;
            }
            if (at == from || at - from > DIGITS_MAX) {
                throw new IOException("not a number at character " + from);
            }
            return number;
        }
    }
}
