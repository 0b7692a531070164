package sopwell.web.live;

import jakarta.websocket.CloseReason;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** A way to a screen on which nothing leaves before it is let go. Not thread-safe. */
final class HeldOutlet implements Outlet {
    private final String id;
    private final List<String> sent = new ArrayList<>();
    private final Deque<Done> held = new ArrayDeque<>();

    HeldOutlet(String id) {
        this.id = id;
    }

    /** Everything that was sent, in order. */
    List<String> sent() {
        return List.copyOf(sent);
    }

    /** What is under way has left. */
    void leaves() {
        held.remove().left(true);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public void send(String text, Done done) {
        if (!held.isEmpty()) {
            throw new AssertionError("two under way: " + text);
        }
        sent.add(text);
        held.add(done);
    }

    @Override
    public void ping() {
        throw new AssertionError("nobody asks here");
    }

    @Override
    public void close(CloseReason.CloseCode code, String why) {
        throw new AssertionError("closed: " + why);
    }
}
