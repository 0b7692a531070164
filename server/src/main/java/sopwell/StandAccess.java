package sopwell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import sopwell.access.Access;
import sopwell.access.AccessLimits;
import sopwell.access.AccessState;
import sopwell.access.Outcome;
import sopwell.access.Person;
import sopwell.access.Tools;
import sopwell.access.Witness;
import sopwell.menu.MenuFault;
import sopwell.storage.AccessFile;
import sopwell.storage.AccessReading;
import sopwell.storage.DataFolder;

/** Opens what a folder keeps about access, and sets the owner's password. Thread-safe. */
final class StandAccess implements AutoCloseable {
    private static final int CHANCE_BYTES = 32;
    private static final String OWNER = "owner";

    private final ExecutorService hashing =
            new ThreadPoolExecutor(
                    1,
                    1,
                    0,
                    TimeUnit.SECONDS,
                    new ArrayBlockingQueue<>(AccessLimits.SECRETS_WAITING_MAX),
                    task -> new Thread(task, "secrets"));
    private final SignIns signIns = new SignIns();
    private final Access access;

    private StandAccess(DataFolder folder, InstantSource clock) throws StartRefused {
        this.access = open(folder, clock, hashing, signIns);
    }

    /**
     * What a stand that is about to run goes by.
     *
     * @throws StartRefused when the address would let others in and nobody has a password
     */
    static StandAccess start(DataFolder folder, Config.Serve asked, InstantSource clock)
            throws StartRefused {
        StandAccess opened = new StandAccess(folder, clock);
        try {
            if (asked.ownerPasswordFile != null && opened.access.isOpen()) {
                set(opened.access, read(asked.ownerPasswordFile));
            }
            if (opened.access.isOpen() && !isLoopback(asked.host)) {
                throw new StartRefused(
                        "Other machines reach "
                                + asked.host
                                + ", and nobody has a password yet. Set the owner's first: "
                                + "sopwell owner --data "
                                + folder.path());
            }
        } catch (StartRefused refused) {
            opened.close();
            throw refused;
        }
        return opened;
    }

    Access access() {
        return access;
    }

    /** What came of tries to get in. */
    SignIns signIns() {
        return signIns;
    }

    @Override
    public void close() {
        hashing.shutdown();
    }

    /** Sets the owner's password of a stand that does not run. */
    static void setOwner(Config.Owner asked, String typed, InstantSource clock)
            throws StartRefused {
        try (DataFolder folder = DataFolder.open(asked.data)) {
            String password = asked.passwordFile == null ? typed : read(asked.passwordFile);
            set(open(folder, clock, Runnable::run, attempt -> {}), password);
        }
    }

    /** What a folder keeps about access. */
    static Access open(DataFolder folder, InstantSource clock, Executor hashing, Witness witness)
            throws StartRefused {
        SecureRandom random = new SecureRandom();
        Tools tools =
                new Tools(
                        new Argon2(),
                        hashing,
                        () -> {
                            byte[] chance = new byte[CHANCE_BYTES];
                            random.nextBytes(chance);
                            return chance;
                        },
                        clock,
                        state -> folder.putAccess(AccessFile.write(state)),
                        witness);
        Optional<byte[]> json = folder.access();
        if (json.isEmpty()) {
            return new Access(AccessState.EMPTY, tools);
        }
        AccessReading reading = AccessFile.read(json.get());
        if (reading.state().isEmpty()) {
            throw unreadable(reading.faults());
        }
        return new Access(reading.state().get(), tools);
    }

    private static StartRefused unreadable(List<MenuFault> faults) {
        MenuFault first = faults.get(0);
        return new StartRefused(
                "access.json can't be read: "
                        + first.wrong()
                        + (first.place().isEmpty() ? "" : " At " + first.place() + ".")
                        + " Nothing was changed. Take the file back from a backup.");
    }

    private static void set(Access access, String password) throws StartRefused {
        Outcome<Person> set = access.roster().foundOwner(OWNER, password);
        if (!set.isDone()) {
            throw new StartRefused(
                    "The owner's password has "
                            + AccessLimits.PASSWORD_CHARS_MIN
                            + " to "
                            + AccessLimits.PASSWORD_CHARS_MAX
                            + " characters. Nothing was changed.");
        }
    }

    /** The file's first line. */
    private static String read(Path file) throws StartRefused {
        try {
            return Files.readString(file, StandardCharsets.UTF_8).lines().findFirst().orElse("");
        } catch (IOException unreadable) {
            throw new StartRefused("The password file " + file + " can't be read: " + unreadable);
        }
    }

    /** Names are not looked up: they might come to stand for another address. */
    private static boolean isLoopback(String host) {
        return host.equalsIgnoreCase("localhost")
                || host.equals("::1")
                || host.equals("[::1]")
                || host.matches("127(\\.[0-9]{1,3}){3}");
    }
}
