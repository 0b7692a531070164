package sopwell.web.live;

import io.undertow.websockets.jsr.UndertowSession;
import jakarta.websocket.CloseReason;
import jakarta.websocket.Endpoint;
import jakarta.websocket.EndpointConfig;
import jakarta.websocket.Session;
import java.util.List;
import java.util.Map;
import sopwell.Limits;
import sopwell.menu.Lang;

/**
 * The socket of one screen: {@code /ws/boards/{board}?lang=es}. Programs that ask for the
 * subprotocol {@value #JSON} get JSON, our screens get HTML. The only thing a screen may say is
 * {@code whole}: send me the whole board. What it saw before may stand in {@code after=EPOCH:SEQ};
 * it gets the whole board in any case, but to a stand that was restored that may be news.
 */
final class BoardSocket extends Endpoint {
    /** The subprotocol of JSON frames. */
    static final String JSON = "sopwell.json.v1";

    private static final int SEND_MILLIS_SPREAD = 1_000;

    private final BoardHub hub;
    private final FrameWriter json;
    private final Map<Lang, FrameWriter> html;

    BoardSocket(BoardHub hub, FrameWriter json, Map<Lang, FrameWriter> html) {
        this.hub = hub;
        this.json = json;
        this.html = html;
    }

    @Override
    public void onOpen(Session session, EndpointConfig config) {
        session.setMaxIdleTimeout(0);
        session.getAsyncRemote().setSendTimeout(sendMillisMax(session));
        Outlet outlet = new SocketOutlet(session);
        ((UndertowSession) session).setReceiveListener(new ScreenFrames(hub, outlet));
        FrameWriter writer =
                session.getNegotiatedSubprotocol().equals(JSON) ? json : html.get(lang(session));
        session.getRequestParameterMap().getOrDefault("after", List.of()).stream()
                .limit(1)
                .flatMap(after -> Cursor.of(after).stream())
                .forEach(hub::saw);
        hub.join(outlet, session.getPathParameters().get("board"), writer);
    }

    @Override
    public void onClose(Session session, CloseReason reason) {
        hub.leave(new SocketOutlet(session));
    }

    @Override
    public void onError(Session session, Throwable fault) {
        hub.leave(new SocketOutlet(session));
    }

    /** Screens that got stuck at one moment are not all cut off at one moment. */
    private static long sendMillisMax(Session session) {
        int shorter = Math.floorMod(session.getId().hashCode(), SEND_MILLIS_SPREAD);
        return Limits.SOCKET_SEND_MILLIS_MAX - shorter;
    }

    private static Lang lang(Session session) {
        List<String> asked = session.getRequestParameterMap().getOrDefault("lang", List.of("en"));
        return asked.contains("es") ? Lang.ES : Lang.EN;
    }
}
