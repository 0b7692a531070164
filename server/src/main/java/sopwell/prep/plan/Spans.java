package sopwell.prep.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;

/**
 * Minutes at which something may start, as spans of the epoch's minutes, both ends included.
 * Immutable; spans are in order and don't touch.
 */
record Spans(List<Span> all) {
    /** Far beyond every plan, and far from overflow. */
    static final long FAR = Long.MAX_VALUE / 8;

    record Span(long from, long to) {}

    Spans {
        all = List.copyOf(all);
    }

    static Spans of(long from, long to) {
        return from > to ? new Spans(List.of()) : new Spans(List.of(new Span(from, to)));
    }

    /** From spans in any order; what overlaps or touches is joined. */
    static Spans joined(List<Span> some) {
        List<Span> sorted = new ArrayList<>(some);
        sorted.removeIf(span -> span.from() > span.to());
        sorted.sort(Comparator.comparingLong(Span::from));
        List<Span> joined = new ArrayList<>();
        for (Span span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && span.from() <= joined.get(last).to() + 1) {
                Span before = joined.get(last);
                joined.set(last, new Span(before.from(), Math.max(before.to(), span.to())));
            } else {
                joined.add(span);
            }
        }
        return new Spans(joined);
    }

    Spans and(Spans other) {
        List<Span> both = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < all.size() && j < other.all.size()) {
            Span a = all.get(i);
            Span b = other.all.get(j);
            long from = Math.max(a.from(), b.from());
            long to = Math.min(a.to(), b.to());
            if (from <= to) {
                both.add(new Span(from, to));
            }
            if (a.to() < b.to()) {
                i++;
            } else {
                j++;
            }
        }
        return new Spans(both);
    }

    /** Every span made to begin and end so much later. */
    Spans shifted(long from, long to) {
        return joined(
                all.stream()
                        .map(s -> new Span(s.from() + from, Math.min(FAR, s.to() + to)))
                        .toList());
    }

    /** All minutes that are in none of the spans. */
    Spans outside() {
        List<Span> gaps = new ArrayList<>();
        long from = -FAR;
        for (Span span : all) {
            gaps.add(new Span(from, span.from() - 1));
            from = span.to() + 1;
        }
        gaps.add(new Span(from, FAR));
        return joined(gaps);
    }

    OptionalLong latest() {
        return all.isEmpty() ? OptionalLong.empty() : OptionalLong.of(all.get(all.size() - 1).to());
    }

    OptionalLong earliest() {
        return all.isEmpty() ? OptionalLong.empty() : OptionalLong.of(all.get(0).from());
    }
}
