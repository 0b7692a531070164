package sopwell.orders;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.Out;
import sopwell.menu.Shortage;

/**
 * From when to when something could not be sold on the newest business day. Not thread-safe: its
 * owner is one thread.
 */
public final class OutSpans {
    private final List<Span> ended = new ArrayList<>();
    private final Map<Out, Span> open = new LinkedHashMap<>();
    private LocalDate date;

    /**
     * A time in which something could not be sold. Immutable.
     *
     * @param fromMs milliseconds since 1970-01-01 UTC
     * @param toMs when it was sold again, or the day closed; or 0 when neither is known yet
     * @param untilMs when it is sold again by itself, or 0
     */
    public record Span(Out out, long fromMs, long toMs, long untilMs) {}

    /** Looks at what is out now, after anything that may have altered it. */
    public void look(Outs outs, long atMs) {
        Iterator<Span> spans = open.values().iterator();
        while (spans.hasNext()) {
            Span span = spans.next();
            if (outs.find(span.out()).filter(Shortage::isGone).isEmpty()) {
                long toMs = span.untilMs() == 0 ? atMs : Math.min(atMs, span.untilMs());
                ended.add(new Span(span.out(), span.fromMs(), toMs, span.untilMs()));
                spans.remove();
            }
        }
        for (Shortage shortage : outs.all()) {
            if (shortage.isGone()) {
                Span known = open.get(shortage.out());
                long fromMs = known == null ? atMs : known.fromMs();
                Span span = new Span(shortage.out(), fromMs, 0, shortage.untilMs());
                open.put(shortage.out(), span);
            }
        }
    }

    /** Every time of the day, those that have ended first. */
    public List<Span> all() {
        List<Span> all = new ArrayList<>(ended);
        all.addAll(open.values());
        return all;
    }

    /** Takes in what happened to the day: another date starts with nothing out. */
    public void apply(OrderEvent event) {
        if (event instanceof OrderEvent.DayOpened opened && !opened.date().equals(date)) {
            ended.clear();
            open.clear();
            date = opened.date();
        }
    }
}
