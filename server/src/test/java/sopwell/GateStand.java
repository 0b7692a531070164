package sopwell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import sopwell.access.Access;
import sopwell.access.Actor;
import sopwell.access.Outcome;
import sopwell.access.Role;
import sopwell.access.Shown;
import sopwell.access.Use;

/** A closed stand with somebody of each role, a device of each use, and a clock set by hand. */
public final class GateStand implements AutoCloseable {
    /** Everybody's PIN. */
    public static final String PIN = "4711";

    /** Every lead's and owner's password. */
    public static final String PASSWORD = "correct horse battery";

    private final Path data;
    private final RunningStand stand;
    private final AtomicLong nowMs = new AtomicLong(1_790_000_000_000L);
    private final HttpClient client =
            HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .followRedirects(HttpClient.Redirect.NEVER)
                    .build();
    private final Map<Use, String> devices = new EnumMap<>(Use.class);
    private final Map<Role, String> people = new EnumMap<>(Role.class);

    /** Starts it. */
    public GateStand() {
        this(System::nanoTime);
    }

    /** Starts one that measures times by a clock of the test. */
    public GateStand(LongSupplier nanos) {
        this("127.0.0.1", Optional.empty(), nanos);
    }

    /** Starts one at an address of this machine, over plain http and by this machine's clock. */
    public GateStand(String host) {
        this(host, Optional.of(InstantSource.system()), System::nanoTime);
    }

    private GateStand(String host, Optional<InstantSource> clock, LongSupplier nanos) {
        Config.Serve asked = new Config.Serve();
        asked.host = host;
        asked.plainHttp = true;
        asked.port = 0;
        asked.startWith = Config.StartWith.menu;
        try {
            data = Files.createTempDirectory("sopwell-gate");
            asked.ownerPasswordFile = Files.writeString(data.resolve("secret"), PASSWORD + "\n");
            asked.data = data.resolve("stand");
            stand =
                    RunningStand.start(
                            asked,
                            new RunningStand.Clocks(
                                    clock.orElse(() -> Instant.ofEpochMilli(nowMs.get())), nanos),
                            DiskWatch.Disk.of(asked.data));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (StartRefused refused) {
            throw new AssertionError(refused.getMessage(), refused);
        }
        people.put(Role.OWNER, "s1");
        value(access().roster().setPin(Actor.ANYBODY, "s1", PIN));
        for (Role role : new Role[] {Role.WATCH, Role.LINE, Role.COUNTER, Role.LEAD}) {
            String id = value(access().roster().addPerson(Actor.ANYBODY, role.code(), role)).id();
            value(access().roster().setPin(Actor.ANYBODY, id, PIN));
            people.put(role, id);
        }
        value(access().roster().setPassword(Actor.ANYBODY, people.get(Role.LEAD), PASSWORD));
        for (Use use : Use.values()) {
            devices.put(use, pair(use));
        }
    }

    /** Who may do what at it. */
    public Access access() {
        return stand.access();
    }

    /** Its clock goes on. */
    public void later(long millis) {
        nowMs.addAndGet(millis);
    }

    /** The token of a newly paired device. */
    public String pair(Use use) {
        String code = value(access().roster().offer("a device", use)).code();
        return value(access().roster().pairByCode(code, "here")).token();
    }

    /** The id of the person of a role. */
    public String person(Role role) {
        return people.get(role);
    }

    /** The cookie of a device alone. */
    public String device(Use use) {
        return "sopwell-device=" + devices.get(use);
    }

    /** The cookies of somebody who signed in with the PIN at the counter's device. */
    public String signedIn(Role role) {
        Shown shown = Shown.of("", devices.get(Use.COUNTER), "");
        String token = value(access().byPin(shown, people.get(role), PIN)).sessionToken();
        return device(Use.COUNTER) + "; sopwell=" + token;
    }

    /** The same with the password. */
    public String proven(Role role) {
        Shown shown = Shown.of("", devices.get(Use.COUNTER), "");
        String token = value(access().byPassword(shown, people.get(role), PASSWORD)).sessionToken();
        return device(Use.COUNTER) + "; sopwell=" + token;
    }

    /** A program's token. */
    public String token(Role role) {
        return value(access().roster().makeToken(Actor.ANYBODY, "till", role)).secret();
    }

    /** Where it listens. */
    public int port() {
        return URI.create(stand.address()).getPort();
    }

    /** The origin of its own pages. */
    public String origin() {
        return stand.address();
    }

    /** Every route of it, as {@code METHOD template}. */
    public java.util.Set<String> routes() {
        return stand.routes();
    }

    /** The log's last place. */
    public long seq() {
        return stand.seq();
    }

    /** A request to be completed by the test. */
    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(stand.address() + path))
                .timeout(Duration.ofSeconds(20));
    }

    /** Sends a request. */
    public HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    /** What was asked for; a refusal fails the test. */
    public static <A> A value(Outcome<A> outcome) {
        return outcome.value()
                .orElseThrow(() -> new AssertionError(outcome.refused().orElseThrow().toString()));
    }

    /** The same once it is there. */
    public static <A> A value(CompletableFuture<Outcome<A>> outcome) {
        return value(outcome.join());
    }

    @Override
    public void close() {
        stand.close();
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
