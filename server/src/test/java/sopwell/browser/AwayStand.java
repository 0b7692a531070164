package sopwell.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import sopwell.TestStand;
import sopwell.crash.StandProcess;
import sopwell.net.BadLink;
import sopwell.net.Cut;
import sopwell.web.StandServer;

/**
 * A server at the far end of a bad link; it can be taken away and started again. It runs in this
 * process, or, where a test is about a server that is killed, as the packaged one does.
 */
final class AwayStand implements AutoCloseable {
    private static final List<String> NAMES = List.of(Browser.PLAIN_NAME);

    private final HttpClient client = HttpClient.newHttpClient();
    private final Path data;
    private final Starts starts;
    private final BadLink link;
    private Server server;
    private Path jar = Path.of(StandProcess.jar());

    /** Something that serves a stand until it is taken away. */
    private record Server(String address, AutoCloseable running) {}

    /** How a server over a data folder is started. */
    private interface Starts {
        Server start(AwayStand stand) throws IOException;
    }

    private AwayStand(Path folder, Starts starts) throws IOException {
        this.data = folder.resolve("stand");
        this.starts = starts;
        server = starts.start(this);
        link = new BadLink(port());
    }

    /** A server in this process, which starts in no time; what is taken away ends in good order. */
    static AwayStand here(Path folder) throws IOException {
        return new AwayStand(
                folder,
                stand -> {
                    TestStand started = TestStand.named(stand.data, NAMES);
                    return new Server(started.address(), started);
                });
    }

    /** The packaged server in a process of its own; what is taken away is killed. */
    static AwayStand packaged(Path folder) throws IOException {
        return new AwayStand(
                folder,
                stand -> {
                    StandProcess started = stand.process();
                    return new Server(started.address(), started::kill);
                });
    }

    /** Where the browser finds it, whatever became of the server. */
    String address() {
        return link.address();
    }

    BadLink link() {
        return link;
    }

    /** Breaks off what was connected and takes the server away. */
    void kill() {
        link.cut(Cut.RESET);
        take();
    }

    /** Starts it again over what it had. */
    void start() throws IOException {
        server = starts.start(this);
        link.lead(port());
        link.heal();
    }

    /** Starts it from a later version from now on, whose files are not those of before. */
    void upgrade() throws IOException {
        Path later = data.resolveSibling("later.jar");
        Files.copy(jar, later);
        try (FileSystem files = FileSystems.newFileSystem(later)) {
            Path style = files.getPath("/web/static/css/home.css");
            Files.writeString(style, Files.readString(style) + "/* later */");
        }
        jar = later;
    }

    /** Rewrites the menu's file, while the server is away. */
    void menu(UnaryOperator<String> edit) throws IOException {
        Path file = data.resolve("menu.json");
        String before = Files.readString(file);
        String after = edit.apply(before);
        if (after.equals(before)) {
            throw new AssertionError("the edit changed nothing in the menu");
        }
        Files.writeString(file, after);
    }

    /** Every order of the day, in the order in which the server took them. */
    List<JsonNode> orders() {
        List<JsonNode> orders = new ArrayList<>();
        get("/api/orders").get("orders").forEach(orders::add);
        return orders;
    }

    /** What each order has on it, such as {@code 2 beef 1 fries}. */
    List<String> taken() {
        return orders().stream().map(AwayStand::items).toList();
    }

    @Override
    public void close() throws IOException {
        link.close();
        take();
    }

    private void take() {
        try {
            server.running().close();
        } catch (Exception fault) {
            throw new AssertionError(fault);
        }
    }

    private static String items(JsonNode order) {
        List<String> items = new ArrayList<>();
        for (JsonNode line : order.get("lines")) {
            items.add(line.get("quantity") + " " + line.get("item").textValue());
        }
        return String.join(" ", items);
    }

    private JsonNode get(String path) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + path)).build();
        try {
            return StandServer.tree(client.send(request, BodyHandlers.ofString()).body());
        } catch (IOException fault) {
            throw new AssertionError(path, fault);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(path, stopped);
        }
    }

    private int port() {
        return URI.create(server.address()).getPort();
    }

    private StandProcess process() throws IOException {
        return StandProcess.start(
                jar.toString(),
                data,
                StandProcess.quick(),
                List.of("--start-with", "menu", "--name", NAMES.get(0)),
                0);
    }
}
