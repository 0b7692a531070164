package sopwell.power;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sopwell.log.LogFault;

/**
 * Has a process take orders on a disk that fails again and again, and holds what is in the log
 * afterwards against what was answered. Orders that were not kept are asked again under their keys;
 * a start that does not succeed is tried again.
 */
final class IoFaultRun {
    private static final int ORDERS = 60;

    private final Path work;
    private final Recorder recorder;

    /**
     * What a run came to.
     *
     * @param processes that took orders
     * @param faults how often a call failed in them
     * @param wrong what was not as it was answered
     */
    record Result(int processes, long faults, List<String> wrong) {}

    IoFaultRun(Path work, Recorder recorder) {
        this.work = work;
        this.recorder = recorder;
    }

    /** A write and a sync that fails, in processes of their own, each after so many. */
    static List<String> everySo(int calls) {
        // A command writes several times, but syncs only once.
        return List.of(
                "write:" + calls + (calls % 2 == 0 ? ":ENOSPC:2:" : ":EIO:1:") + 4 * calls,
                "sync:" + calls + (calls % 2 == 0 ? ":EROFS:2:" : ":EIO:1:") + calls);
    }

    /** One process for each of these. */
    Result run(List<String> failing) throws IOException {
        List<String> wrong = new ArrayList<>();
        long faults = 0;
        for (String calls : failing) {
            Path data = work.resolve(calls.replace(':', '-'));
            Path record = work.resolve(calls.replace(':', '-') + ".record");
            int ended =
                    Recorder.java(
                            PoweredDesk.class,
                            List.of(data.toString(), "" + ORDERS, "" + failing.size(), "full"),
                            recorder.failing(data, record, calls));
            faults += DiskOp.read(record).stream().filter(op -> op.kind() == 'F').count();
            String found = ended == 0 ? wrong(data) : "it ended with " + ended;
            if (!found.isEmpty()) {
                wrong.add(calls + ": " + found);
            }
        }
        return new Result(failing.size(), faults, wrong);
    }

    private static String wrong(Path data) throws IOException {
        List<String> acks = Files.readAllLines(data.resolve("acks"), StandardCharsets.US_ASCII);
        if (acks.size() <= ORDERS) {
            return "only " + acks.size() + " answers";
        }
        try {
            return Whole.wrong(Whole.events(data), acks);
        } catch (LogFault fault) {
            return "it does not open: " + fault.getMessage();
        }
    }
}
