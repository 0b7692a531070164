package sopwell.web.live;

import java.time.InstantSource;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import sopwell.boards.Scene;
import sopwell.desk.Stand;

/**
 * Which board was last shown how, and who looks at it: draws what has changed and sends it. Belongs
 * to the follower's thread.
 */
final class Showing {
    private final String epoch;
    private final InstantSource clock;
    private final Audience audience;
    private final Map<String, LiveBoard> boards = new HashMap<>();
    private Scene scene;
    private long sceneSeq;

    Showing(String epoch, InstantSource clock, Audience audience) {
        this.epoch = epoch;
        this.clock = clock;
        this.audience = audience;
    }

    /** The stand has changed: every board that somebody looks at shows it. */
    void show(Stand stand) {
        Set<String> watched = audience.boards();
        // A station may leave the menu while a screen still shows it.
        watched.removeIf(name -> !Drawing.isBoard(stand, name));
        watched.forEach(name -> publish(name, stand));
    }

    /**
     * The others get what has changed before this screen is on the list, and it is on the list
     * before it can answer: so the whole board is the first that it gets.
     */
    void welcome(Stand stand, Screen screen) {
        publish(screen.board(), stand);
        audience.add(screen);
        sendWhole(stand, screen);
        if (!screen.outlet().isOpen()) {
            audience.remove(screen.outlet());
        }
    }

    /** Draws the whole board for a screen that missed something. */
    void sendMissed(Stand stand, Screen screen) {
        screen.wholeComes();
        sendWhole(stand, screen);
    }

    /** The whole of a board that there is. */
    Frame whole(Stand stand, String name) {
        publish(name, stand);
        return live(name).whole(clock.millis());
    }

    private void sendWhole(Stand stand, Screen screen) {
        screen.sendWhole(screen.writer().write(whole(stand, screen.board())));
    }

    /** Sends what has changed on a board to all its screens. */
    private void publish(String name, Stand stand) {
        Frame change = live(name).change(stand, clock.millis());
        if (change == null) {
            return;
        }
        Map<FrameWriter, String> texts = new HashMap<>();
        for (Screen screen : audience.of(name)) {
            screen.sendChange(
                    texts.computeIfAbsent(screen.writer(), writer -> writer.write(change)));
        }
    }

    private LiveBoard live(String name) {
        return boards.computeIfAbsent(
                name, n -> new LiveBoard(n, epoch, Drawing.of(n, this::scene)));
    }

    /** One schedule for all boards that are drawn from the same events. */
    private Scene scene(Stand stand) {
        if (scene == null || sceneSeq != stand.seq()) {
            scene =
                    Scene.of(
                            stand.menu(),
                            stand::menuOf,
                            stand.kitchen(),
                            stand.pans(),
                            clock.millis());
            sceneSeq = stand.seq();
        }
        return scene;
    }
}
