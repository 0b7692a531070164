package sopwell.prep.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.log.Recorded;
import sopwell.prep.past.DayPrep.Started;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.BatchEvent.BatchStarted;
import sopwell.stock.larder.BatchEvent.BatchYielded;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Larder;

/** Gathers what a day's events say of prep. For one day, on one thread. */
public final class DayReading {
    private final List<Started> started = new ArrayList<>();
    private final Map<String, Long> gave = new HashMap<>();
    private final Map<String, Long> taken = new HashMap<>();
    private Optional<PlanKept> plan = Optional.empty();

    /** Takes in the next event of the day; most tell nothing of prep. */
    public void take(Recorded recorded) {
        if (recorded.event() instanceof PlanKept kept) {
            plan = Optional.of(kept);
        } else if (recorded.event() instanceof BatchEvent batch) {
            take(batch, recorded.atMs());
        }
    }

    private void take(BatchEvent event, long atMs) {
        switch (event.kind()) {
            case STARTED -> {
                BatchStarted one = (BatchStarted) event;
                started.add(new Started(one.batch(), one.makes(), one.lots(), one.planned(), atMs));
                one.takes().forEach(t -> taken.merge(t.ingredient(), t.thousandths(), Long::sum));
            }
            case YIELDED -> gave.put(event.batch(), ((BatchYielded) event).gave().thousandths());
            case DISCARDED -> gave.putIfAbsent(event.batch(), 0L);
            case MOVED, MEASURED, USED_UP -> {}
        }
    }

    /**
     * All of it.
     *
     * @param larder as it was at the day's end
     */
    public DayPrep of(LocalDate date, Larder larder) {
        Map<String, Long> left = new HashMap<>();
        for (Held held : larder.carried().held()) {
            left.put(held.ingredient(), Math.max(0, held.expected()));
        }
        return new DayPrep(
                date,
                plan.filter(kept -> kept.date().equals(date)),
                started,
                gave,
                larder.usedToday(),
                taken,
                larder.wastedToday(),
                left,
                larder.compared());
    }
}
