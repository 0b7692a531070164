package sopwell.net;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import sopwell.web.RawConnection;
import sopwell.web.StandServer;

/**
 * Asks a stand, each time over a connection of its own, so that each request has a fate of its own.
 * Thread-safe.
 *
 * @param patienceMillis how long an answer may take
 * @param who a header line that says who asks, ended; empty at a stand that is open
 */
record Api(InetSocketAddress server, int patienceMillis, String who) {
    private static final String END_OF_HEAD = "\r\n\r\n";

    /** An answer. */
    record Heard(int status, String body) {
        boolean isDone() {
            return status >= 200 && status < 300;
        }

        JsonNode json() {
            return StandServer.tree(body);
        }
    }

    Api(InetSocketAddress server, int patienceMillis) {
        this(server, patienceMillis, "");
    }

    static Api at(String address, int patienceMillis) {
        URI uri = URI.create(address);
        return new Api(new InetSocketAddress(uri.getHost(), uri.getPort()), patienceMillis);
    }

    JsonNode get(String path) throws IOException {
        Heard heard = ask("GET " + path, "", "");
        if (!heard.isDone()) {
            throw new IOException(path + ": " + heard);
        }
        return heard.json();
    }

    Heard post(String path, String key, String json) throws IOException {
        String type = json.isEmpty() ? "" : "Content-Type: application/json\r\n";
        return ask("POST " + path, type + "Idempotency-Key: " + key + "\r\n", json);
    }

    /** The same, or nothing when no answer came: then nobody knows whether it was done. */
    Optional<Heard> tryPost(String path, String key, String json) {
        try {
            Heard heard = post(path, key, json);
            return heard.status() >= 500 ? Optional.empty() : Optional.of(heard);
        } catch (IOException unknown) {
            return Optional.empty();
        }
    }

    /** Asks under one key until there is an answer. */
    Heard insist(String path, String key, String json, int times) {
        for (int i = 0; i < times; i++) {
            Optional<Heard> heard = tryPost(path, key, json);
            if (heard.isPresent()) {
                return heard.orElseThrow();
            }
        }
        throw new AssertionError("no answer after " + times + " times: " + path);
    }

    private Heard ask(String what, String headers, String body) throws IOException {
        try (RawConnection connection = new RawConnection(server, 0, patienceMillis)) {
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            connection.send(
                    what
                            + " HTTP/1.1\r\nHost: "
                            + server.getAddress().getHostAddress()
                            + ":"
                            + server.getPort()
                            + "\r\nConnection: close\r\n"
                            + who
                            + headers
                            + "Content-Length: "
                            + bytes.length
                            + "\r\n\r\n"
                            + new String(bytes, StandardCharsets.ISO_8859_1));
            byte[] all = connection.socket().getInputStream().readAllBytes();
            String text = new String(all, StandardCharsets.UTF_8);
            int head = text.indexOf(END_OF_HEAD);
            if (!text.startsWith("HTTP/1.1 ") || head < 0) {
                throw new IOException("no whole answer: " + text);
            }
            return new Heard(
                    Integer.parseInt(text.substring(9, 12)),
                    text.substring(head + END_OF_HEAD.length()));
        }
    }
}
