package sopwell.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import sopwell.Limits;
import sopwell.desk.DayBook;

/**
 * Figures of past days: those that were looked at last are kept at hand, up to {@link
 * Limits#DAY_FIGURES_KEPT_MAX} days, as long as no day was opened again. Thread-safe.
 */
public final class LastFigures {
    private final DayBook book;
    private final Map<LocalDate, Kept> kept = new LinkedHashMap<>();

    private record Kept(long end, DayFigures figures) {}

    /** Nothing was looked at yet. */
    public LastFigures(DayBook book) {
        this.book = book;
    }

    /** The figures of a day that another day has followed, or empty when there is no such day. */
    public Optional<DayFigures> of(LocalDate date) {
        OptionalLong end = book.end(date);
        if (end.isEmpty()) {
            return Optional.empty();
        }
        Optional<DayFigures> known = known(date, end.getAsLong());
        if (known.isPresent()) {
            return known;
        }
        DayFigures counted = DayFigures.of(book.stand(date));
        keep(date, new Kept(end.getAsLong(), counted));
        return Optional.of(counted);
    }

    private synchronized Optional<DayFigures> known(LocalDate date, long end) {
        return Optional.ofNullable(kept.get(date))
                .filter(one -> one.end() == end)
                .map(Kept::figures);
    }

    /** The newest stands last; the oldest leaves. */
    private synchronized void keep(LocalDate date, Kept figures) {
        kept.remove(date);
        kept.put(date, figures);
        if (kept.size() > Limits.DAY_FIGURES_KEPT_MAX) {
            kept.remove(kept.keySet().iterator().next());
        }
    }
}
