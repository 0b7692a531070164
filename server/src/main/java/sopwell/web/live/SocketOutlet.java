package sopwell.web.live;

import jakarta.websocket.CloseReason;
import jakarta.websocket.CloseReason.CloseCodes;
import jakarta.websocket.Session;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.function.BooleanSupplier;

/** The way to a screen through its WebSocket; two of the same socket are equal. Thread-safe. */
record SocketOutlet(Session session) implements Outlet {
    @Override
    public String id() {
        return session.getId();
    }

    @Override
    public boolean isOpen() {
        return session.isOpen();
    }

    @Override
    public void send(String text, Done done) {
        try {
            session.getAsyncRemote().sendText(text, result -> done.left(result.isOK()));
        } catch (RuntimeException gone) {
            close(CloseCodes.GOING_AWAY, "no longer there");
        }
    }

    @Override
    public boolean mayStay() {
        return !(session.getUserProperties().get(LiveEndpoint.STAYS)
                        instanceof BooleanSupplier stays)
                || stays.getAsBoolean();
    }

    @Override
    public void ping() {
        try {
            session.getAsyncRemote().sendPing(ByteBuffer.allocate(0));
        } catch (IOException | RuntimeException gone) {
            close(CloseCodes.GOING_AWAY, "no longer there");
        }
    }

    @Override
    public void close(CloseReason.CloseCode code, String why) {
        try {
            session.close(new CloseReason(code, why));
        } catch (IOException | RuntimeException gone) {
            // The other side left before we could say goodbye; there is nobody to tell.
            return;
        }
    }
}
