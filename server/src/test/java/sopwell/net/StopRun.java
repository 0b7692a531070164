package sopwell.net;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import sopwell.crash.StandProcess;
import sopwell.web.RawScreen;

/** Stops a server under load: it ends in time and in order, and nothing answered is lost. */
final class StopRun {
    private static final long STOP_MILLIS_MAX = 10_000;
    private static final int TILLS = 3;
    private static final int SCREENS = 4;

    private final Path data;
    private int answered;

    StopRun(Path data) {
        this.data = data;
    }

    /** Starts, loads and stops it once; how long the stop took, in milliseconds. */
    long once() throws IOException, InterruptedException {
        RawScreen[] screens = new RawScreen[SCREENS];
        AtomicBoolean over = new AtomicBoolean();
        Thread[] clients = new Thread[TILLS + SCREENS];
        long millis;
        try (StandProcess stand = start()) {
            Api api = Api.at(stand.address(), 10_000);
            that(api.get("/api/orders").path("of").intValue() >= answered, "answered and gone");
            for (int i = 0; i < SCREENS; i++) {
                RawScreen screen = RawScreen.at(api.server(), CutRun.BOARDS.get(i), 5_000);
                screens[i] = screen;
                clients[i] = new Thread(() -> look(screen));
            }
            for (int i = SCREENS; i < clients.length; i++) {
                clients[i] = new Thread(() -> place(api, over));
            }
            for (Thread client : clients) {
                client.start();
            }
            BadLink.pause(400);
            long from = System.nanoTime();
            stand.stop();
            millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
        }
        over.set(true);
        for (Thread client : clients) {
            client.join(STOP_MILLIS_MAX);
        }
        that(millis <= STOP_MILLIS_MAX, "it took " + millis + " ms to stop");
        for (RawScreen screen : screens) {
            that(screen.closeCode() == 1012, "closed with " + screen.closeCode());
        }
        that(!Files.exists(data.resolve("log.sqlite-wal")), "a -wal was left");
        return millis;
    }

    int answered() {
        return answered;
    }

    private StandProcess start() throws IOException {
        return StandProcess.start(data, StandProcess.quick(), List.of("--start-with", "menu"));
    }

    /** Reads as a screen does, all the time: pings are answered while there is somebody to hear. */
    private static void look(RawScreen screen) {
        try {
            while (screen.closeCode() == 0) {
                screen.next((int) STOP_MILLIS_MAX);
            }
            screen.close();
        } catch (IOException gone) {
            throw new AssertionError("broken off without a goodbye", gone);
        }
    }

    private void place(Api api, AtomicBoolean over) {
        try {
            while (!over.get()) {
                String key = UUID.randomUUID().toString();
                Api.Heard heard = api.post("/api/orders", key, "{\"call\": \"cola\"}");
                if (!heard.isDone()) {
                    return;
                }
                String id = heard.json().path("order").textValue();
                count();
                api.post("/api/orders/" + id + "/voids", key + "v", "{\"reason\": \"gone\"}");
            }
        } catch (IOException gone) {
            over.set(true);
        }
    }

    private synchronized void count() {
        answered++;
    }

    private static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new AssertionError(sentence);
        }
    }
}
