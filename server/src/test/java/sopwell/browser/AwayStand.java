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
import sopwell.crash.StandProcess;
import sopwell.net.BadLink;
import sopwell.web.StandServer;

/** The packaged server at the far end of a bad link; it can be killed and started again. */
final class AwayStand implements AutoCloseable {
    private final HttpClient client = HttpClient.newHttpClient();
    private final Path data;
    private final BadLink link;
    private StandProcess process;
    private Path jar = Path.of(StandProcess.jar());

    AwayStand(Path folder) throws IOException {
        data = folder.resolve("stand");
        process = process();
        link = new BadLink(port());
    }

    /** Where the browser finds it, whatever became of the server. */
    String address() {
        return link.address();
    }

    BadLink link() {
        return link;
    }

    /** SIGKILL. */
    void kill() throws InterruptedException {
        process.kill();
    }

    /** Starts it again over what it had. */
    void start() throws IOException {
        process = process();
        link.lead(port());
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
        process.close();
    }

    private static String items(JsonNode order) {
        List<String> items = new ArrayList<>();
        for (JsonNode line : order.get("lines")) {
            items.add(line.get("quantity") + " " + line.get("item").textValue());
        }
        return String.join(" ", items);
    }

    private JsonNode get(String path) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(process.address() + path)).build();
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
        return URI.create(process.address()).getPort();
    }

    private StandProcess process() throws IOException {
        return StandProcess.start(
                jar.toString(),
                data,
                StandProcess.quick(),
                List.of("--start-with", "menu", "--name", Browser.PLAIN_NAME),
                0);
    }
}
