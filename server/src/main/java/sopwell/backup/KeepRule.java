package sopwell.backup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import sopwell.storage.BackupRule;

/**
 * Which backups are kept: the last of each of the newest dates that have one, and the last of each
 * of the newest weeks. Dates count that have a backup, so that a stand that is closed for the
 * winter finds its backups in spring. Stateless.
 */
final class KeepRule {
    private KeepRule() {}

    /** Those to keep of all that there are. */
    static Set<Instant> kept(List<Instant> all, BackupRule rule, ZoneId zone) {
        List<Instant> newestFirst = all.stream().sorted(Comparator.reverseOrder()).toList();
        Set<Instant> kept =
                lastOfEach(newestFirst, rule.days(), at -> LocalDate.ofInstant(at, zone));
        kept.addAll(lastOfEach(newestFirst, rule.weeks(), at -> week(at, zone)));
        return kept;
    }

    private static Set<Instant> lastOfEach(
            List<Instant> newestFirst, int spansMax, Function<Instant, Object> span) {
        Set<Object> spans = new HashSet<>();
        Set<Instant> kept = new HashSet<>();
        for (Instant at : newestFirst) {
            if (spans.size() < spansMax && spans.add(span.apply(at))) {
                kept.add(at);
            }
        }
        return kept;
    }

    /** Such as 202648: weeks begin on Monday. */
    private static Object week(Instant at, ZoneId zone) {
        LocalDate date = LocalDate.ofInstant(at, zone);
        return date.get(IsoFields.WEEK_BASED_YEAR) * 100
                + date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }
}
