package sopwell.web.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sopwell.backup.BackupState;
import sopwell.backup.BackupState.Warning;
import sopwell.desk.ClockState;
import sopwell.web.T;

/**
 * What is said of a stand's backups and of the box's clock. Immutable.
 *
 * @param t the texts
 * @param zone the stand's
 */
public record BackupView(T t, ZoneId zone, BackupState state, ClockState clock) {
    private static final double MEGABYTE = 1_000_000;

    static BackupView of(PageContext context, T t) {
        return new BackupView(
                t,
                context.settings().zone(),
                context.care().backup().get(),
                context.care().clock().get());
    }

    /** What belongs on the first page; nothing while all is well. */
    public List<String> urgent() {
        List<String> notes = new ArrayList<>(clockNotes());
        if (state.warning() != Warning.NEVER) {
            notes.addAll(warnings());
        }
        missing().ifPresent(notes::add);
        return notes;
    }

    /** What is wrong with the box's clock. */
    public List<String> clockNotes() {
        return clock.trust() == ClockState.Trust.RIGHT
                ? List.of()
                : List.of(
                        t.under(
                                "clock.box",
                                clock.trust().name().toLowerCase(Locale.ROOT),
                                time(clock.boxMs()),
                                time(clock.standMs())));
    }

    /** What is wrong with the backups. */
    public List<String> warnings() {
        if (state.warning() == Warning.NONE) {
            return List.of();
        }
        return List.of(
                t.under(
                        "backup.warning",
                        state.warning().name().toLowerCase(Locale.ROOT),
                        state.folder(),
                        state.failure().map(failure -> time(failure.atMs())).orElse("")));
    }

    /** What is known to be missing since a restore. */
    public Optional<String> missing() {
        return state.origin()
                .filter(BackupState.Origin::isMissingSome)
                .map(
                        note ->
                                t.of(
                                        "backup.missing",
                                        time(note.madeAtMs()),
                                        note.lastSeq() + 1,
                                        note.knownSeq()));
    }

    /** The stand came from a backup and nothing is known to be missing. */
    public Optional<String> restored() {
        return state.origin()
                .filter(note -> !note.isMissingSome())
                .map(note -> t.of("backup.restored", time(note.atMs()), time(note.madeAtMs())));
    }

    /** The last good one, in a sentence. */
    public Optional<String> last() {
        return state.last().map(good -> time(good.atMs()));
    }

    /** Its size. */
    public String megabytes() {
        double bytes = state.last().map(BackupState.Good::bytes).orElse(0L);
        return String.format(Locale.ROOT, "%.1f MB", bytes / MEGABYTE);
    }

    /** When the next one is due. */
    public String next() {
        return time(state.nextAtMs());
    }

    /** A date and a time at the stand. */
    private String time(long atMs) {
        LocalDate date = LocalDate.ofInstant(Instant.ofEpochMilli(atMs), zone);
        return t.date(date) + ", " + t.time(atMs, zone);
    }
}
