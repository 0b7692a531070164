package sopwell.web;

import io.undertow.server.ExchangeCompletionListener;
import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import java.util.concurrent.TimeUnit;
import org.xnio.IoUtils;
import org.xnio.XnioExecutor;
import sopwell.Limits;

/**
 * Cuts off who sends a body, or takes an answer, too slowly: a body is there soon after its
 * request's head, and an answer that has begun goes on leaving. Thread-safe.
 */
final class SlowPeers implements HttpHandler {
    private final HttpHandler next;
    private final Cuts cuts;

    SlowPeers(HttpHandler next, Cuts cuts) {
        this.next = next;
        this.cuts = cuts;
    }

    @Override
    public void handleRequest(HttpServerExchange exchange) throws Exception {
        Watch watch = new Watch(exchange, cuts);
        exchange.addExchangeCompleteListener(watch);
        watch.lookLater();
        next.handleRequest(exchange);
    }

    /** Looks at one request every so often until it is over; belongs to its I/O thread. */
    private static final class Watch implements Runnable, ExchangeCompletionListener {
        private static final long NOT_BEGUN = -1;

        private final HttpServerExchange exchange;
        private final Cuts cuts;
        private volatile XnioExecutor.Key due;
        private long sentBytes = NOT_BEGUN;

        private Watch(HttpServerExchange exchange, Cuts cuts) {
            this.exchange = exchange;
            this.cuts = cuts;
        }

        private void lookLater() {
            due =
                    exchange.getIoThread()
                            .executeAfter(this, Limits.BODY_MILLIS_MAX, TimeUnit.MILLISECONDS);
        }

        @Override
        public void run() {
            if (exchange.isComplete()) {
                return;
            }
            boolean begun = exchange.isResponseStarted();
            long now = begun ? exchange.getResponseBytesSent() : NOT_BEGUN;
            boolean stuck =
                    begun
                            && sentBytes != NOT_BEGUN
                            && now - sentBytes < Limits.ANSWER_TAKEN_BYTES_MIN;
            if (stuck || !exchange.isRequestComplete()) {
                cuts.countSlow();
                IoUtils.safeClose(exchange.getConnection());
                return;
            }
            sentBytes = now;
            lookLater();
        }

        @Override
        public void exchangeEvent(HttpServerExchange over, NextListener others) {
            XnioExecutor.Key key = due;
            if (key != null) {
                key.remove();
            }
            others.proceed();
        }
    }
}
