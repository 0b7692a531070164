package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import sopwell.Check;

/**
 * What is known of one business day that is over. Immutable.
 *
 * @param open false for a closed day, which tells nothing of demand
 * @param hours when it was open; {@link Hours#UNKNOWN} when nobody kept it
 * @param sold pieces by the bin of the day in which they were ordered; voids and meals of the
 *     stand's own people left out
 * @param outs what could not be sold for a while
 * @param occasions what was particular about it
 * @param weather the kinds of weather it had, such as {@code rain}; empty for plain weather
 */
public record PastDay(
        LocalDate date,
        boolean open,
        Hours hours,
        List<Sold> sold,
        List<OutSpan> outs,
        List<Occasion> occasions,
        List<String> weather) {
    public PastDay {
        sold = List.copyOf(sold);
        outs = List.copyOf(outs);
        occasions = List.copyOf(occasions);
        weather = List.copyOf(weather);
    }

    /** A closed day. */
    public static PastDay closed(LocalDate date) {
        return new PastDay(date, false, Hours.UNKNOWN, List.of(), List.of(), List.of(), List.of());
    }

    /**
     * When a stand is open, in minutes from midnight of the business day's date.
     *
     * @param from inclusive
     * @param to exclusive, up to noon of the next day: 2,160
     */
    public record Hours(int from, int to) {
        /** Nobody kept when it was open. */
        public static final Hours UNKNOWN = new Hours(0, 0);

        public Hours {
            Check.that(
                    from >= 0 && from <= to && to <= History.DAY_MINUTES,
                    "a stand opens before it closes");
        }

        /** Whether somebody kept them. */
        public boolean isKnown() {
            return to > from;
        }
    }

    /**
     * Pieces sold alike in one bin.
     *
     * @param bin minutes from midnight over the width of a bin
     * @param size the size's id, or empty
     * @param modifiers how they were made; no order
     * @param pieces from 1
     */
    public record Sold(int bin, String item, String size, List<String> modifiers, int pieces) {
        /** By item, size, modifiers and bin: the same day is then the same list. */
        public static final Comparator<Sold> ORDER =
                Comparator.comparing(Sold::item)
                        .thenComparing(Sold::size)
                        .thenComparing(sold -> String.join("|", sold.modifiers()))
                        .thenComparingInt(Sold::bin);

        public Sold {
            modifiers = List.copyOf(modifiers);
        }
    }

    /**
     * Something that could not be sold for a while.
     *
     * @param what an item, {@code item size}, a modifier, or something that items need
     * @param from minutes from midnight; -1 when nobody knows when it ran out
     * @param to minutes from midnight, exclusive; the day's end when it did not come back
     */
    public record OutSpan(String what, int from, int to) {
        /** It ran out at a time that nobody kept. */
        public static final int UNKNOWN = -1;
    }
}
