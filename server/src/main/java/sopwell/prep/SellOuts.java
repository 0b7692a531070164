package sopwell.prep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.menu.Out;
import sopwell.orders.OutEvent;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay.OutSpan;

/**
 * What could not be sold when, from the marks that people set. What is marked with so many left is
 * not out: when the last one went is not in the marks. Not thread-safe.
 */
public final class SellOuts {
    private final ZoneId zone;
    private final int cutHour;
    private final Map<LocalDate, List<OutSpan>> spans = new TreeMap<>();
    private final Map<Out, Mark> open = new HashMap<>();
    private LocalDate date = LocalDate.MIN;

    private record Mark(int from, int until) {}

    /**
     * Nothing was out yet.
     *
     * @param cutHour the local hour at which a business day ends
     */
    public SellOuts(ZoneId zone, int cutHour) {
        this.zone = zone;
        this.cutHour = cutHour;
    }

    /** Takes in the next mark, in the order in which they were set. */
    public void apply(OutEvent event, long atMs) {
        LocalDate on = LocalDate.ofInstant(Instant.ofEpochMilli(atMs), zone);
        boolean night = Instant.ofEpochMilli(atMs).atZone(zone).getHour() < cutHour;
        LocalDate day = night ? on.minusDays(1) : on;
        if (!day.equals(date)) {
            end();
            date = day;
        }
        int minute = minute(atMs);
        Mark before = open.remove(event.out());
        if (before != null) {
            add(newest(), event.out(), before.from(), Math.min(minute, before.until()));
        }
        if (event instanceof OutEvent.OutMarked marked && marked.left() == 0) {
            int until = marked.untilMs() == 0 ? History.DAY_MINUTES : minute(marked.untilMs());
            open.put(event.out(), new Mark(minute, until));
        }
    }

    /** By business day; what is out still is taken to be so until its time. */
    public Map<LocalDate, List<OutSpan>> spans() {
        Map<LocalDate, List<OutSpan>> all = new HashMap<>(spans);
        List<OutSpan> newest = new ArrayList<>(all.getOrDefault(date, List.of()));
        open.forEach((out, mark) -> add(newest, out, mark.from(), mark.until()));
        if (!newest.isEmpty()) {
            all.put(date, List.copyOf(newest));
        }
        return all;
    }

    private void end() {
        open.forEach((out, mark) -> add(newest(), out, mark.from(), mark.until()));
        open.clear();
    }

    private List<OutSpan> newest() {
        return spans.computeIfAbsent(date, d -> new ArrayList<>());
    }

    private static void add(List<OutSpan> to, Out out, int from, int until) {
        if (until > from) {
            to.add(new OutSpan(name(out), from, until));
        }
    }

    private static String name(Out out) {
        return switch (out.kind()) {
            case ITEM -> out.item();
            case SIZE -> out.item() + " " + out.id();
            case OPTION -> out.id();
        };
    }

    private int minute(long atMs) {
        long minutes =
                ChronoUnit.MINUTES.between(
                        date.atStartOfDay(),
                        Instant.ofEpochMilli(atMs).atZone(zone).toLocalDateTime());
        return (int) Math.max(0, Math.min(History.DAY_MINUTES, minutes));
    }
}
