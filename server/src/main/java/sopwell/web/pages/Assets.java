package sopwell.web.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sopwell.Check;
import sopwell.web.Fingerprint;

/**
 * The static files, read once from the class path. Their common version stands in their address, so
 * that browsers may keep them for ever, and scripts that load each other stay of one version.
 * Immutable, thread-safe.
 */
public final class Assets {
    /** Every file under {@code web/static} that a screen uses. */
    public static final List<String> NAMES =
            List.of(
                    "css/tokens.css",
                    "css/access.css",
                    "css/audit.css",
                    "css/base.css",
                    "css/board.css",
                    "css/rows.css",
                    "css/rows-more.css",
                    "css/fold.css",
                    "css/pass.css",
                    "css/pass-row.css",
                    "css/remake.css",
                    "css/ready.css",
                    "css/loads.css",
                    "css/pans.css",
                    "css/counter.css",
                    "css/words.css",
                    "css/orders.css",
                    "css/queries.css",
                    "css/counter-queries.css",
                    "css/outs.css",
                    "css/prep-calendar.css",
                    "css/prep-past.css",
                    "css/prep-plan.css",
                    "css/prep-sheet.css",
                    "css/prep-stock.css",
                    "css/prep-terms.css",
                    "css/prep-clocks.css",
                    "css/prep-shelves.css",
                    "css/day-orders.css",
                    "css/paper.css",
                    "css/outbox.css",
                    "css/home.css",
                    "css/backup.css",
                    "css/screens.css",
                    "css/pay.css",
                    "css/till.css",
                    "css/mix.css",
                    "css/playback.css",
                    "css/what-if.css",
                    "css/recipes.css",
                    "css/charts.css",
                    "css/waits.css",
                    "css/close.css",
                    "css/trust.css",
                    "js/server-clock.js",
                    "js/send.js",
                    "js/trouble.js",
                    "js/frames.js",
                    "js/board-socket.js",
                    "js/reach.js",
                    "js/ages.js",
                    "js/age-rows.js",
                    "js/load-times.js",
                    "js/playback.js",
                    "js/fit.js",
                    "js/board-keys.js",
                    "js/board-ask.js",
                    "js/board-outs.js",
                    "js/pass-keys.js",
                    "js/ready.js",
                    "js/loads.js",
                    "js/counter-queries.js",
                    "js/sound.js",
                    "js/letters.js",
                    "js/pass-remake.js",
                    "js/screens.js",
                    "js/call-line.js",
                    "js/word-board.js",
                    "js/pay.js",
                    "js/count.js",
                    "js/outs.js",
                    "js/number-pad.js",
                    "js/pairing-code.js",
                    "js/keys.js",
                    "js/dom.js",
                    "js/again.js",
                    "js/paper.js",
                    "js/register.js",
                    "js/reader.js",
                    "js/kit.js",
                    "js/reading.js",
                    "js/outbox-store.js",
                    "js/outbox-turn.js",
                    "js/outbox.js",
                    "js/outbox-view.js",
                    "js/draft.js",
                    "js/place.js",
                    "js/pay-away.js",
                    "icon.svg",
                    "vendor/htmx-2.0.10.min.js",
                    "js/charts.js",
                    "js/charts-table.js",
                    "js/charts-draw.js",
                    "vendor/d3-7.9.2.min.js",
                    "vendor/plot-0.6.17.umd.min.js");

    /** What the charts need: half a megabyte that a counter has no use for. */
    private static final List<String> CHARTS =
            NAMES.subList(NAMES.indexOf("js/charts.js"), NAMES.size());

    private final Map<String, Asset> files = new LinkedHashMap<>();
    private final String version;

    /** A file and what it is. */
    record Asset(String type, ByteBuffer body) {}

    private Assets(String version) {
        this.version = version;
    }

    /** Reads all files; one that is not there is a fault. */
    public static Assets load() {
        Map<String, Asset> files = new LinkedHashMap<>();
        Fingerprint print = new Fingerprint();
        for (String name : NAMES) {
            byte[] bytes = read(name);
            print.add(name.getBytes(StandardCharsets.UTF_8)).add(bytes);
            files.put(name, new Asset(type(name), ByteBuffer.wrap(bytes)));
        }
        Assets assets = new Assets(print.hex().substring(0, 12));
        assets.files.putAll(files);
        return assets;
    }

    /** Names the content of all files together. */
    public String version() {
        return version;
    }

    /**
     * The service worker: a script that is told its version and the files to keep, all but those of
     * the charts. Another version is another script, which is how a browser learns of an upgrade.
     */
    String worker() {
        String names =
                NAMES.stream()
                        .filter(name -> !CHARTS.contains(name))
                        .map(name -> '"' + name + '"')
                        .collect(Collectors.joining(", "));
        String told = "const VERSION = \"" + version + "\";\nconst FILES = [" + names + "];\n";
        return told + new String(read("sw.js"), StandardCharsets.UTF_8);
    }

    Optional<Asset> find(String name) {
        return Optional.ofNullable(files.get(name));
    }

    private static byte[] read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream("/web/static/" + name)) {
            Check.that(in != null, "static files are on the class path");
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static String type(String name) {
        if (name.endsWith(".css")) {
            return "text/css; charset=utf-8";
        }
        return name.endsWith(".svg") ? "image/svg+xml" : "text/javascript; charset=utf-8";
    }
}
