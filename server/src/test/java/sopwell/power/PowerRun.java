package sopwell.power;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Has a process take orders while its disk is recorded, and then cuts the power at every change of
 * the disk that is asked for: the disk as it would be left is made and opened, and every order that
 * was answered by then must be there, once.
 */
final class PowerRun {
    private final Path work;
    private final Recorder recorder;
    private final int orders;
    private final long seed;

    /**
     * What a run came to.
     *
     * @param changes how often the disk changed, of which the power was cut after some
     * @param images disks that were made and opened
     * @param bad those that lacked what was answered, or did not open
     * @param first what was wrong with the first of them
     */
    record Result(int changes, int images, int bad, Optional<String> first) {}

    PowerRun(Path work, Recorder recorder, int orders, long seed) {
        this.work = work;
        this.recorder = recorder;
        this.orders = orders;
        this.seed = seed;
    }

    /**
     * Records and opens.
     *
     * @param commits full, as a stand runs, or normal; the latter is cut only once an order was
     *     answered, because before that it has nothing to lose
     * @param modes what becomes of what was not synced; each at every point
     * @param points at how many changes the power is cut, evenly; all when there are fewer
     */
    Result run(String commits, List<Disk.Mode> modes, int points) throws IOException {
        Path data = work.resolve("stand-" + commits + "-" + seed);
        Path record = work.resolve("record-" + commits + "-" + seed);
        int ended =
                Recorder.java(
                        PoweredDesk.class,
                        List.of(data.toString(), "" + orders, "" + seed, commits),
                        recorder.recording(data, record));
        if (ended != 0) {
            throw new IOException("the stand ended with " + ended);
        }
        List<DiskOp> ops = DiskOp.read(record);
        Whole whole = Whole.of(data);
        long before = commits.equals("full") ? 0 : untilOrder(ops);
        long changes = ops.stream().filter(DiskOp::isBoundary).count() - before;
        Disk disk = new Disk();
        int images = 0;
        int change = 0;
        List<String> wrong = new ArrayList<>();
        for (DiskOp op : ops) {
            disk.take(op);
            if (op.isBoundary() && change++ >= before && due(change - before, points, changes)) {
                for (Disk.Mode mode : modes) {
                    String found = open(disk, mode, change, whole);
                    images++;
                    if (!found.isEmpty()) {
                        wrong.add("change " + change + ", " + mode + ": " + found);
                    }
                }
            }
        }
        if (disk.acks().size() <= orders) {
            throw new IOException("only " + disk.acks().size() + " answers were seen");
        }
        return new Result((int) changes, images, wrong.size(), wrong.stream().findFirst());
    }

    /** Changes before the first order's answer; the menu's is the first of all. */
    private static long untilOrder(List<DiskOp> ops) {
        int answer =
                IntStream.range(0, ops.size())
                        .filter(at -> !ops.get(at).isBoundary() && ops.get(at).kind() == 'W')
                        .skip(1)
                        .findFirst()
                        .orElseThrow();
        return ops.subList(0, answer).stream().filter(DiskOp::isBoundary).count();
    }

    /** Of all changes, counted from 1, so many evenly. */
    private static boolean due(long change, long points, long changes) {
        return points >= changes || (change - 1) * points / changes != change * points / changes;
    }

    private String open(Disk disk, Disk.Mode mode, int change, Whole whole) throws IOException {
        Path image = Files.createTempDirectory(work, "image");
        try {
            disk.write(image, mode, seed * 1_000_003 + change);
            return whole.wrong(image, disk.acks());
        } finally {
            try (Stream<Path> files = Files.list(image)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(image);
        }
    }
}
