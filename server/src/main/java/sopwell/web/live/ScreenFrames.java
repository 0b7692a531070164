package sopwell.web.live;

import io.undertow.websockets.core.AbstractReceiveListener;
import io.undertow.websockets.core.BufferedBinaryMessage;
import io.undertow.websockets.core.BufferedTextMessage;
import io.undertow.websockets.core.StreamSourceFrameChannel;
import io.undertow.websockets.core.WebSocketChannel;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import sopwell.Limits;

/**
 * What a screen sends. A screen that sends too much is not read from for a while, so that its own
 * system has to keep the rest: questions whether we are there count too, since each is answered.
 * Belongs to its connection's I/O thread.
 */
final class ScreenFrames extends AbstractReceiveListener {
    private final BoardHub hub;
    private final Outlet outlet;
    private final FrameBudget budget;

    ScreenFrames(BoardHub hub, Outlet outlet) {
        this.hub = hub;
        this.outlet = outlet;
        this.budget = new FrameBudget(hub.nanos());
    }

    @Override
    protected void onText(WebSocketChannel channel, StreamSourceFrameChannel text)
            throws IOException {
        pay(channel);
        super.onText(channel, text);
    }

    @Override
    protected void onBinary(WebSocketChannel channel, StreamSourceFrameChannel bytes)
            throws IOException {
        pay(channel);
        super.onBinary(channel, bytes);
    }

    @Override
    protected void onPing(WebSocketChannel channel, StreamSourceFrameChannel ping)
            throws IOException {
        pay(channel);
        super.onPing(channel, ping);
    }

    @Override
    protected void onPong(WebSocketChannel channel, StreamSourceFrameChannel pong)
            throws IOException {
        pay(channel);
        super.onPong(channel, pong);
    }

    @Override
    protected void onFullTextMessage(WebSocketChannel channel, BufferedTextMessage message) {
        hub.heard(outlet);
        if (message.getData().equals("whole")) {
            hub.sendWhole(outlet);
        }
    }

    @Override
    protected void onFullBinaryMessage(WebSocketChannel channel, BufferedBinaryMessage message) {
        hub.heard(outlet);
        message.getData().free();
    }

    @Override
    protected void onFullPongMessage(WebSocketChannel channel, BufferedBinaryMessage message) {
        hub.heard(outlet);
        message.getData().free();
    }

    @Override
    protected void onError(WebSocketChannel channel, Throwable fault) {
        hub.leave(outlet);
        super.onError(channel, fault);
    }

    @Override
    protected long getMaxTextBufferSize() {
        return Limits.SOCKET_TEXT_BYTES_MAX;
    }

    @Override
    protected long getMaxBinaryBufferSize() {
        return Limits.SOCKET_TEXT_BYTES_MAX;
    }

    /** A screen that is made to wait is there: it sent what it waits for. */
    private void pay(WebSocketChannel channel) {
        long restMillis = budget.take();
        if (restMillis > 0) {
            hub.heard(outlet);
            channel.suspendReceives();
            channel.getIoThread()
                    .executeAfter(channel::resumeReceives, restMillis, TimeUnit.MILLISECONDS);
        }
    }
}
