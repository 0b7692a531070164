package sopwell.web.live;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.servlet.Servlets;
import io.undertow.servlet.api.DeploymentInfo;
import io.undertow.servlet.api.DeploymentManager;
import io.undertow.util.HeaderMap;
import io.undertow.util.Headers;
import io.undertow.util.Methods;
import io.undertow.websockets.jsr.WebSocketDeploymentInfo;
import jakarta.servlet.ServletException;
import jakarta.websocket.HandshakeResponse;
import jakarta.websocket.server.HandshakeRequest;
import jakarta.websocket.server.ServerEndpointConfig;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import sopwell.menu.Lang;

/** Puts the board socket under {@code /ws}. Stateless. */
public final class LiveEndpoint {
    /** The path that the handler must be mounted at. */
    public static final String PATH = "/ws";

    /** Says of a handshake whether who asked for it may still look, however much later. */
    @FunctionalInterface
    public interface Staying {
        /** Empty when anybody may. */
        Optional<BooleanSupplier> of(HandshakeRequest request);
    }

    /** Under which name a socket keeps that. */
    static final String STAYS = "stays";

    private static final Pattern BOARD = Pattern.compile("/boards/[^/]+");

    private LiveEndpoint() {}

    /**
     * The handler for everything under {@link #PATH}.
     *
     * @param json writes frames for programs
     * @param html writes frames for our screens, by language
     * @param staying until when sockets stay open
     */
    public static HttpHandler handler(
            BoardHub hub, FrameWriter json, Map<Lang, FrameWriter> html, Staying staying)
            throws ServletException {
        ServerEndpointConfig endpoint =
                ServerEndpointConfig.Builder.create(BoardSocket.class, "/boards/{board}")
                        .subprotocols(List.of(BoardSocket.JSON))
                        .configurator(
                                new ServerEndpointConfig.Configurator() {
                                    @Override
                                    public void modifyHandshake(
                                            ServerEndpointConfig config,
                                            HandshakeRequest request,
                                            HandshakeResponse response) {
                                        staying.of(request)
                                                .ifPresent(
                                                        stays ->
                                                                config.getUserProperties()
                                                                        .put(STAYS, stays));
                                    }

                                    @Override
                                    public <T> T getEndpointInstance(Class<T> type) {
                                        return type.cast(new BoardSocket(hub, json, html));
                                    }
                                })
                        .build();
        DeploymentInfo deployment =
                Servlets.deployment()
                        .setClassLoader(LiveEndpoint.class.getClassLoader())
                        .setContextPath(PATH)
                        .setDeploymentName("live")
                        .addServletContextAttribute(
                                WebSocketDeploymentInfo.ATTRIBUTE_NAME,
                                new WebSocketDeploymentInfo().addEndpoint(endpoint));
        DeploymentManager manager = Servlets.newContainer().addDeployment(deployment);
        manager.deploy();
        return manager.start();
    }

    /** Whether a request under {@link #PATH} asks for a board's socket in the right form. */
    public static boolean isHandshake(HttpServerExchange exchange) {
        HeaderMap headers = exchange.getRequestHeaders();
        return exchange.getRequestMethod().equals(Methods.GET)
                && "websocket".equalsIgnoreCase(headers.getFirst(Headers.UPGRADE))
                && "13".equals(headers.getFirst(Headers.SEC_WEB_SOCKET_VERSION))
                && headers.contains(Headers.SEC_WEB_SOCKET_KEY)
                && BOARD.matcher(exchange.getRelativePath()).matches();
    }
}
