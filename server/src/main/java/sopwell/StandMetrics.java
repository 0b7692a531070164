package sopwell;

import java.nio.ByteBuffer;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import sopwell.backup.BackupState;
import sopwell.desk.ClockState;
import sopwell.desk.Desk;
import sopwell.desk.DeskTally;
import sopwell.desk.DiskState;
import sopwell.desk.Follower;
import sopwell.log.LogFault;
import sopwell.metrics.OwnProcess;
import sopwell.metrics.Scrape;
import sopwell.orders.Order;
import sopwell.storage.DataFolder;
import sopwell.web.Cuts;
import sopwell.web.LogState;
import sopwell.web.Reply;
import sopwell.web.live.BoardHub;
import sopwell.web.live.FrameCounts;

/**
 * A stand's figures for programs that watch over it: nothing of what was ordered, and nobody's
 * name. Thread-safe.
 */
final class StandMetrics {
    private static final double MILLIS_PER_SECOND = 1e3;

    private final Sources of;
    private final InstantSource clock;

    /** Where the figures come from. */
    record Sources(
            Meters meters,
            SignIns signIns,
            DataFolder folder,
            Desk desk,
            Follower follower,
            BoardHub hub,
            Cuts cuts,
            Supplier<BackupState> backup,
            Supplier<ClockState> clockState,
            Supplier<LogState> log,
            Supplier<DiskState> disk) {}

    /** What the stand itself says. */
    private record Open(long seq, boolean day, int orders, OptionalLong oldestMs) {}

    StandMetrics(Sources of, InstantSource clock) {
        this.of = of;
        this.clock = clock;
    }

    /** All figures as text; looked up off the threads that serve. */
    CompletableFuture<Reply> scrape() {
        return of.follower()
                .ask(
                        stand ->
                                new Open(
                                        stand.seq(),
                                        stand.orders().isDayOpen(),
                                        stand.orders().open().size(),
                                        stand.orders().open().stream()
                                                .mapToLong(Order::placedAtMs)
                                                .min()))
                .thenApplyAsync(
                        open ->
                                new Reply(
                                        200,
                                        Scrape.TYPE,
                                        ByteBuffer.wrap(all(open).text()),
                                        Map.of()));
    }

    private Scrape all(Open open) {
        Scrape to = new Scrape();
        to.now("sopwell_info", "Always 1.", "version", Map.of(Version.NUMBER, 1));
        desk(to, open);
        log(to, open);
        network(to);
        care(to);
        to.sum("sopwell_sign_ins", "Tries to sign in or pair.", "outcome", of.signIns().counts());
        to.sum(
                "sopwell_lock_outs",
                "Tries after which a lead or owner must unlock.",
                of.signIns().lockedOut());
        OwnProcess.add(to);
        return to;
    }

    private void desk(Scrape to, Open open) {
        DeskTally tally = of.desk().tally();
        to.sum("sopwell_orders", "Orders that were to be placed.", "outcome", tally.orders());
        to.sum("sopwell_commands", "All that was asked.", "outcome", tally.commands());
        to.sum(
                "sopwell_commands_failed",
                "Commands that a fault came between: nobody knows whether they were kept.",
                tally.failed());
        to.sum(
                "sopwell_desk_turned_away",
                "Commands that found the desk's queue full.",
                tally.turnedAway());
        to.now("sopwell_desk_queue", "Commands that wait for the desk.", of.desk().waiting());
        to.now("sopwell_desk_queue_max", "How many may wait.", Limits.DESK_QUEUE_COMMANDS_MAX);
        to.now("sopwell_day_open", "1 while a business day is open.", open.day() ? 1 : 0);
        to.now("sopwell_open_orders", "Orders that are not handed.", open.orders());
        to.now(
                "sopwell_oldest_open_order_seconds",
                "Age of the oldest of them; 0 when there is none.",
                open.oldestMs().isPresent() ? seconds(open.oldestMs().getAsLong()) : 0);
    }

    private void log(Scrape to, Open open) {
        to.timings(
                "sopwell_commit_seconds",
                "Making a batch of events durable, the disk's sync included.",
                of.meters().commits());
        to.now("sopwell_log_events", "Events in the log.", open.seq());
        try {
            to.now("sopwell_log_bytes", "Size of the log.", of.folder().logBytes());
        } catch (LogFault untold) {
            to.now("sopwell_log_bytes", "Size of the log.", Double.NaN);
        }
        DiskState disk = of.disk().get();
        disk.freeBytes()
                .ifPresent(
                        free -> to.now("sopwell_disk_free_bytes", "Room on the log's disk.", free));
        to.now(
                "sopwell_disk_state",
                "1 at how the log's disk is.",
                "state",
                oneOf(DiskState.Kind.values(), disk.kind()));
        LogState state = of.log().get();
        state.checkedAtMs()
                .ifPresent(
                        atMs ->
                                to.now(
                                        "sopwell_log_check_age_seconds",
                                        "How long ago the whole log was checked.",
                                        seconds(atMs)));
        to.now(
                "sopwell_log_damaged",
                "1 when the newest check found something.",
                state.damage().isPresent() ? 1 : 0);
    }

    private void network(Scrape to) {
        to.routes(of.meters().requests());
        to.now("sopwell_screens", "Open sockets.", "board", of.hub().screensByBoard());
        FrameCounts frames = of.hub().counts();
        to.sum("sopwell_frames_sent", "Frames to screens.", frames.sent());
        to.sum(
                "sopwell_frames_dropped",
                "Frames that a busy screen missed; it got the whole board afterwards.",
                frames.missed());
        Map<String, Long> closed = new LinkedHashMap<>();
        closed.put("slow", frames.slow());
        closed.put("silent", frames.silent());
        closed.put("too-many", frames.tooMany());
        to.sum("sopwell_screens_closed", "Sockets that the stand closed.", "why", closed);
        closed = new LinkedHashMap<>();
        closed.put("slow", of.cuts().slow());
        closed.put("too-many", of.cuts().turnedAway());
        to.sum("sopwell_connections_closed", "Connections it closed.", "why", closed);
    }

    private void care(Scrape to) {
        BackupState backup = of.backup().get();
        backup.last()
                .ifPresent(
                        good ->
                                to.now(
                                        "sopwell_backup_age_seconds",
                                        "Age of the newest good backup.",
                                        seconds(good.atMs())));
        to.now("sopwell_backups", "Good backups.", backup.kept());
        to.now(
                "sopwell_backup_state",
                "1 at how the backups are.",
                "state",
                oneOf(BackupState.Warning.values(), backup.warning()));
        to.now(
                "sopwell_clock_state",
                "1 at how the box's clock is.",
                "state",
                oneOf(ClockState.Trust.values(), of.clockState().get().trust()));
    }

    private static <E extends Enum<E>> Map<String, Integer> oneOf(E[] all, E now) {
        Map<String, Integer> each = new LinkedHashMap<>();
        for (E one : all) {
            each.put(word(one), one == now ? 1 : 0);
        }
        return each;
    }

    private double seconds(long sinceMs) {
        return Math.max(0, clock.millis() - sinceMs) / MILLIS_PER_SECOND;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
