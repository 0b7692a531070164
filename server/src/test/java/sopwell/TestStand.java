package sopwell;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import sopwell.desk.DiskGuard;

/** A real stand in this process, on a free port, over a data folder of the test's. */
public final class TestStand implements AutoCloseable {
    private final RunningStand stand;

    private TestStand(RunningStand stand) {
        this.stand = stand;
    }

    /** Connections of one address, where a test is about something else. */
    private static final int MANY_CONNECTIONS = 2_000;

    /** Starts a stand with the demo's menu, or goes on with what the folder holds. */
    public static TestStand start(Path data) {
        return start(data, MANY_CONNECTIONS);
    }

    /** The same with so many connections for each address. */
    public static TestStand start(Path data, int connectionsPerAddress) {
        return start(data, connectionsPerAddress, InstantSource.system());
    }

    /** The same with a clock of the test's. */
    public static TestStand start(Path data, int connectionsPerAddress, InstantSource clock) {
        Config.Serve asked = new Config.Serve();
        asked.connectionsPerAddress = connectionsPerAddress;
        return start(data, asked, clock);
    }

    /** The same, found under these further names too. */
    public static TestStand named(Path data, List<String> names) {
        Config.Serve asked = new Config.Serve();
        asked.connectionsPerAddress = MANY_CONNECTIONS;
        asked.names.addAll(names);
        return start(data, asked, InstantSource.system());
    }

    /** Over https, with a certificate of the stand's own for these further names. */
    public static TestStand secured(Path data, List<String> names) {
        Config.Serve asked = new Config.Serve();
        asked.tls = true;
        asked.names.addAll(names);
        return start(data, asked, InstantSource.system());
    }

    /** Over https, with a key store. */
    public static TestStand secured(Path data, Path keyStore, Path passwordFile) {
        Config.Serve asked = new Config.Serve();
        asked.keyStore = keyStore;
        asked.keyStorePasswordFile = passwordFile;
        return start(data, asked, InstantSource.system());
    }

    /** The same on a disk that is minded on the test's terms. */
    public static TestStand start(Path data, DiskGuard.Terms terms) {
        return start(data, DiskWatch.Disk.of(data).space(), terms);
    }

    /** The same on a disk of which so much is free as the test says. */
    public static TestStand start(Path data, DiskGuard.Space space, DiskGuard.Terms terms) {
        Config.Serve asked = new Config.Serve();
        asked.connectionsPerAddress = MANY_CONNECTIONS;
        return start(data, asked, InstantSource.system(), new DiskWatch.Disk(space, terms));
    }

    private static TestStand start(Path data, Config.Serve asked, InstantSource clock) {
        return start(data, asked, clock, DiskWatch.Disk.of(data));
    }

    private static TestStand start(
            Path data, Config.Serve asked, InstantSource clock, DiskWatch.Disk disk) {
        asked.data = data;
        asked.host = "127.0.0.1";
        asked.port = 0;
        asked.startWith = Config.StartWith.menu;
        try {
            return new TestStand(
                    RunningStand.start(
                            asked, new RunningStand.Clocks(clock, System::nanoTime), disk));
        } catch (StartRefused refused) {
            throw new AssertionError(refused.getMessage(), refused);
        }
    }

    /** Such as {@code http://127.0.0.1:40123}. */
    public String address() {
        return stand.address();
    }

    @Override
    public void close() {
        stand.close();
    }
}
