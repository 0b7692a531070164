package sopwell.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The same many times, as root: {@code FullDiskMain [rounds]}. */
public final class FullDiskMain {
    private static final long DISK_BYTES = 4_000_000;
    private static final long RESERVE_BYTES = 1_000_000;

    private FullDiskMain() {}

    /** Prints what it came to; ends with an error when anything was lost or doubled. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 50;
        Path folder = Files.createTempDirectory("sopwell-disk");
        for (long reserve : new long[] {RESERVE_BYTES, 0}) {
            Path place = folder.resolve("reserve-" + reserve);
            try (SmallDisk disk = SmallDisk.mounted(place, DISK_BYTES)) {
                System.out.println(
                        "a reserve of "
                                + reserve
                                + " bytes: "
                                + new FullDiskRun(disk, reserve).run(rounds));
            }
        }
    }
}
