package sopwell.net;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import sopwell.web.RawScreen;

/**
 * Screens at the far end of a {@link Cable}: {@code FarMain HOST PORT TOKEN SCREENS}. Each change
 * of what somebody would see is a line, {@code NANOS SCREEN live|stale SEQ}; for a line on the
 * input, it says what every screen shows, {@code rows SCREEN ROWS}, and what did not follow, {@code
 * fault WORDS}; it ends when its input does.
 */
public final class FarMain {
    private static final int LOOK_MILLIS = 10;

    private FarMain() {}

    /** Runs until the other side has heard enough. */
    public static void main(String[] args) throws IOException {
        InetSocketAddress server = new InetSocketAddress(args[0], Integer.parseInt(args[1]));
        RawScreen.Manner manner = RawScreen.Manner.json().with("Authorization: Bearer " + args[2]);
        List<LinkScreen> screens = new ArrayList<>();
        for (int i = 0; i < Integer.parseInt(args[3]); i++) {
            screens.add(new LinkScreen(server, CutRun.BOARDS.get(i % 4), manner));
        }
        Thread looking = new Thread(() -> look(screens), "looking");
        looking.setDaemon(true);
        looking.start();
        BufferedReader asked =
                new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        while (asked.readLine() != null) {
            for (int i = 0; i < screens.size(); i++) {
                say("rows " + i + " " + screens.get(i).rows());
                int at = i;
                screens.get(i).fault().ifPresent(fault -> say("fault " + at + " " + fault));
            }
            say("said");
        }
    }

    private static void look(List<LinkScreen> screens) {
        String[] said = new String[screens.size()];
        while (true) {
            for (int i = 0; i < said.length; i++) {
                LinkScreen screen = screens.get(i);
                String now = (screen.isStale() ? "stale " : "live ") + screen.seq();
                if (!now.equals(said[i])) {
                    said[i] = now;
                    say(System.nanoTime() + " " + i + " " + now);
                }
            }
            BadLink.pause(LOOK_MILLIS);
        }
    }

    private static synchronized void say(String line) {
        System.out.println(line);
        System.out.flush();
    }
}
