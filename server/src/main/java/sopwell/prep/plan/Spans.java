package sopwell.prep.plan;

import java.util.Arrays;
import java.util.OptionalLong;

/**
 * Minutes at which something may start, as spans of the epoch's minutes, both ends included.
 * Immutable; spans are in order and don't touch.
 */
final class Spans {
    /** Far beyond every plan, and far from overflow. */
    static final long FAR = Long.MAX_VALUE / 8;

    /** A span's first minute and its last, then the next span's. */
    private final long[] ends;

    private final int count;

    private Spans(Joined joined) {
        this.ends = joined.ends;
        this.count = joined.count;
    }

    static Spans of(long from, long to) {
        return new Joined(1).and(from, to).spans();
    }

    Spans and(Spans other) {
        Joined both = new Joined((count + other.count) / 2);
        int i = 0;
        int j = 0;
        while (i < count && j < other.count) {
            both.and(Math.max(ends[i], other.ends[j]), Math.min(ends[i + 1], other.ends[j + 1]));
            if (ends[i + 1] < other.ends[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return both.spans();
    }

    /** Every span made to begin and end so much later. */
    Spans shifted(long from, long to) {
        Joined joined = new Joined(count / 2);
        for (int i = 0; i < count; i += 2) {
            joined.and(ends[i] + from, Math.min(FAR, ends[i + 1] + to));
        }
        return joined.spans();
    }

    /** All minutes that are in none of the spans. */
    Spans outside() {
        Joined gaps = new Joined(count / 2 + 1);
        long from = -FAR;
        for (int i = 0; i < count; i += 2) {
            gaps.and(from, ends[i] - 1);
            from = ends[i + 1] + 1;
        }
        return gaps.and(from, FAR).spans();
    }

    /** The latest of the minutes from one to another. */
    OptionalLong latest(long from, long to) {
        for (int i = count - 2; i >= 0 && ends[i + 1] >= from; i -= 2) {
            if (ends[i] <= to) {
                long latest = Math.min(to, ends[i + 1]);
                return latest >= from ? OptionalLong.of(latest) : OptionalLong.empty();
            }
        }
        return OptionalLong.empty();
    }

    OptionalLong earliest() {
        return count == 0 ? OptionalLong.empty() : OptionalLong.of(ends[0]);
    }

    /** Spans put together by their first minutes; what overlaps or touches is joined. */
    static final class Joined {
        private long[] ends;
        private int count;

        /** With room for so many, and more when they come. */
        Joined(int room) {
            this.ends = new long[2 * room];
        }

        /** Adds a span that begins no earlier than those before; without minutes it adds none. */
        Joined and(long from, long to) {
            if (from > to) {
                return this;
            }
            if (count > 0 && from <= ends[count - 1] + 1) {
                ends[count - 1] = Math.max(ends[count - 1], to);
                return this;
            }
            if (count == ends.length) {
                ends = Arrays.copyOf(ends, 2 * count + 4);
            }
            ends[count] = from;
            ends[count + 1] = to;
            count += 2;
            return this;
        }

        /** All of them; nothing may be added afterwards. */
        Spans spans() {
            return new Spans(this);
        }
    }
}
