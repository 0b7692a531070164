package sopwell.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sopwell.crash.StandProcess;

/** What a rehearsal of the packaged jar keeps ready for its next starts. Stateless. */
final class KeptClasses {
    static final String FLAG = "-XX:SharedArchiveFile=";

    private KeptClasses() {}

    /** Rehearses, and leaves the archive there. */
    static void rehearse(Path archive) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command =
                List.of(
                        java,
                        "-Xlog:disable",
                        "-XX:+UseSerialGC",
                        "-XX:ArchiveClassesAtExit=" + archive,
                        "-jar",
                        StandProcess.jar(),
                        "rehearse");
        int code =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor();
        if (code != 0 || !Files.exists(archive)) {
            throw new IllegalStateException("the rehearsal failed: " + code);
        }
    }
}
