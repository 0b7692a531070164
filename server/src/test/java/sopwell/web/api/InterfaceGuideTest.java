package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** The guide to the interface can be followed as it is written. */
class InterfaceGuideTest {
    private static final String GUIDE =
            SourceTree.read("docs", name -> name.equals("interface.md")).get(0).text();
    private static final Pattern BLOCK = Pattern.compile("(?s)```\n(.*?)```");
    private static final Pattern PATH = Pattern.compile("localhost:8080(\\S+)");
    private static final Pattern KEY = Pattern.compile("Idempotency-Key: ([^']+)'");
    private static final Pattern BODY = Pattern.compile("(?s)-d '(.*?)'");
    private static final Pattern NAMED = Pattern.compile("`(GET|POST) (/api/[^`]+)`");
    private static final String ORDER = "20260131-0042";

    @Test
    void everyCommandDoesWhatItSays() {
        String order = ORDER;
        int done = 0;
        try (StandServer stand = StandServer.fresh()) {
            for (String command : commands()) {
                Got got = send(stand, command.replace(ORDER, order));
                assertTrue(got.status() < 300, command + "\n" + got.text());
                if (command.contains("/queries")) {
                    done += got.json().path("state").textValue().equals("open") ? 1 : 0;
                } else if (got.status() == 201) {
                    order = got.json().path("order").textValue();
                    done++;
                } else if (command.contains("/changes")) {
                    done += got.json().path("version").intValue() == 2 ? 1 : 0;
                } else if (command.contains("/handed")) {
                    done += got.json().path("state").textValue().equals("handed") ? 1 : 0;
                }
            }
        }
        assertEquals(4, done, "one order was placed, changed, asked about and handed");
    }

    @Test
    void everyBodyIsTaken() {
        List<String> bodies = blocks().stream().filter(b -> b.startsWith("{")).toList();
        assertEquals(2, bodies.size());
        try (StandServer stand = StandServer.fresh()) {
            String revision =
                    stand.post("/api/calls", "{\"call\": \"cola\"}")
                            .json()
                            .path("menuRevision")
                            .textValue();
            for (String body : bodies) {
                String now =
                        body.replace("1dacc72cbec9e27e", revision)
                                .replace("2026-01-31T12:41:00Z", Instant.now().toString());
                Got got = stand.post("/api/orders", now);
                assertEquals(201, got.status(), got::text);
            }
        }
    }

    @Test
    void everyRouteThatItNamesIsThere() {
        Set<String> routes =
                ApiRoutes.ALL.stream()
                        .map(route -> route.method() + " " + route.path())
                        .collect(Collectors.toSet());
        Matcher named = NAMED.matcher(GUIDE);
        int found = 0;
        while (named.find()) {
            assertTrue(routes.contains(named.group(1) + " " + named.group(2)), named.group());
            found++;
        }
        assertTrue(found >= 5, "the guide names routes");
    }

    private static Got send(StandServer stand, String command) {
        Matcher path = PATH.matcher(command);
        Matcher key = KEY.matcher(command);
        Matcher body = BODY.matcher(command);
        assertTrue(path.find(), command);
        boolean posts = body.find() || command.contains("-X POST");
        if (!posts) {
            return stand.get(path.group(1));
        }
        String json = body.reset().find() ? body.group(1) : "";
        return stand.post(path.group(1), key.find() ? key.group(1) : StandServer.key(), json);
    }

    private static List<String> commands() {
        List<String> commands = new ArrayList<>();
        for (String block : blocks()) {
            if (block.startsWith("curl ")) {
                commands.addAll(List.of(block.strip().split("\n(?=curl )")));
            }
        }
        return commands;
    }

    private static List<String> blocks() {
        List<String> blocks = new ArrayList<>();
        Matcher block = BLOCK.matcher(GUIDE);
        while (block.find()) {
            blocks.add(block.group(1));
        }
        return blocks;
    }
}
