package sopwell.crash;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The packaged server in a process of its own. Not thread-safe. */
public final class StandProcess implements AutoCloseable {
    private static final String LISTENING = "listening on ";

    private final Process process;
    private final String address;
    private final long readyMillis;

    /**
     * Flags that start it as the README does: with the classes that a rehearsal kept ready, and
     * without a word about it when the jar is another by now.
     */
    public static List<String> quick() {
        return List.of(
                "-Xlog:cds=off",
                "-Xlog:cds+dynamic=off",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:SharedArchiveFile=" + jar().replaceFirst("\\.jar$", ".jsa"));
    }

    private StandProcess(Process process, String address, long readyMillis) {
        this.process = process;
        this.address = address;
        this.readyMillis = readyMillis;
    }

    /** Starts the server on a free port over a data folder and waits until it listens. */
    public static StandProcess start(Path data, List<String> jvmFlags, List<String> arguments)
            throws IOException {
        return start(data, jvmFlags, arguments, 0);
    }

    /** Starts the server on a port over a data folder and waits until it listens. */
    public static StandProcess start(
            Path data, List<String> jvmFlags, List<String> arguments, int port) throws IOException {
        return start(jar(), data, jvmFlags, arguments, port);
    }

    /** Starts the server from a jar of one's own, such as one that was upgraded. */
    public static StandProcess start(
            String jar, Path data, List<String> jvmFlags, List<String> arguments, int port)
            throws IOException {
        return launched(data, command(jar, data, jvmFlags, arguments, port), Map.of());
    }

    /** Starts the server on a free port with a quick start, and this in its environment. */
    public static StandProcess start(
            Path data, List<String> arguments, Map<String, String> environment) throws IOException {
        return launched(data, command(jar(), data, quick(), arguments, 0), environment);
    }

    private static List<String> command(
            String jar, Path data, List<String> jvmFlags, List<String> arguments, int port) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(jvmFlags);
        command.addAll(List.of("-jar", jar, "serve", "--data", data.toString()));
        command.addAll(List.of("--port", Integer.toString(port)));
        command.addAll(arguments);
        return command;
    }

    private static StandProcess launched(
            Path data, List<String> command, Map<String, String> environment) throws IOException {
        long from = System.nanoTime();
        ProcessBuilder builder =
                new ProcessBuilder(command)
                        .redirectError(data.resolveSibling(data.getFileName() + ".err").toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        BufferedReader out =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = out.readLine();
        if (line == null || !line.startsWith(LISTENING)) {
            process.destroyForcibly();
            throw new IOException("the server did not start: " + line);
        }
        long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
        return new StandProcess(process, line.substring(LISTENING.length()), millis);
    }

    /** Where it listens, like {@code http://127.0.0.1:40123}. */
    public String address() {
        return address;
    }

    /** How long it took from the command to listening, in milliseconds. */
    public long readyMillis() {
        return readyMillis;
    }

    public long pid() {
        return process.pid();
    }

    /** SIGKILL: no goodbye, no flush. */
    public void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    /** SIGTERM, and how it ended. */
    public int stop() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("the server did not stop within 20 s");
        }
        return process.exitValue();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    public static String jar() {
        String jar = System.getProperty("sopwell.jar", "target/sopwell.jar");
        return Path.of(jar).toAbsolutePath().toString();
    }
}
