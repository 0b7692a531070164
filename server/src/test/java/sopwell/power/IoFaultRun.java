package sopwell.power;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sopwell.log.LogFault;
import sopwell.storage.IntegrityOf;

/**
 * Has a process take orders on a disk that fails again and again, and holds what is in the log
 * afterwards against what was answered. Orders that were not kept are asked again under their keys;
 * a start that does not succeed is tried again.
 */
final class IoFaultRun {
    private static final int ORDERS = 60;

    /**
     * A start reads more than eighty times. Where every read after fewer fails, each start comes
     * upon one, and none succeeds.
     */
    private static final int START_READS = 130;

    private final Path work;
    private final Recorder recorder;

    /**
     * What a run came to.
     *
     * @param processes that took orders
     * @param faults how often a call failed in them
     * @param looks at the disk while a process only read
     * @param wrong what was not as it was answered
     */
    record Result(int processes, long faults, long looks, List<String> wrong) {}

    IoFaultRun(Path work, Recorder recorder) {
        this.work = work;
        this.recorder = recorder;
    }

    /** A write, a sync and a read that fails, in processes of their own, each after so many. */
    static List<String> everySo(int calls) {
        int reads = START_READS + calls;
        // A command writes several times, but syncs only once.
        return List.of(
                "write:" + calls + (calls % 2 == 0 ? ":ENOSPC:2:" : ":EIO:1:") + 4 * calls,
                "sync:" + calls + (calls % 2 == 0 ? ":EROFS:2:" : ":EIO:1:") + calls,
                "read:" + calls + ":EIO:" + (1 + calls % 2) + ":" + reads);
    }

    /** One process for each of these, all of which take their orders in the end. */
    Result run(List<String> failing) throws IOException {
        return run(failing, true);
    }

    /** The same where none comes to its end: what was answered must be there all the same. */
    Result runInVain(List<String> failing) throws IOException {
        return run(failing, false);
    }

    private Result run(List<String> failing, boolean ends) throws IOException {
        List<String> wrong = new ArrayList<>();
        long faults = 0;
        long looks = 0;
        for (String calls : failing) {
            Path data = work.resolve(calls.replace(':', '-'));
            Path record = work.resolve(calls.replace(':', '-') + ".record");
            int ended =
                    Recorder.java(
                            PoweredDesk.class,
                            List.of(data.toString(), "" + ORDERS, "" + failing.size(), "full"),
                            recorder.failing(data, record, calls));
            faults += DiskOp.read(record).stream().filter(op -> op.kind() == 'F').count();
            Path looked = PoweredDesk.looks(data);
            looks += Files.exists(looked) ? Files.size(looked) : 0;
            String found = (ended == 0) == ends ? wrong(data, ends) : "it ended with " + ended;
            if (!found.isEmpty()) {
                wrong.add(calls + ": " + found);
            }
        }
        return new Result(failing.size(), faults, looks, wrong);
    }

    /** On a disk that is well: SQLite's own check, then each row, then each answer. */
    private static String wrong(Path data, boolean ends) throws IOException {
        List<String> acks = Files.readAllLines(data.resolve("acks"), StandardCharsets.US_ASCII);
        if (ends ? acks.size() <= ORDERS : acks.isEmpty()) {
            return "only " + acks.size() + " answers";
        }
        String integrity = IntegrityOf.log(data);
        if (!integrity.equals("ok")) {
            return integrity;
        }
        try {
            return Whole.wrong(Whole.events(data), acks);
        } catch (LogFault fault) {
            return "it does not open: " + fault.getMessage();
        }
    }
}
