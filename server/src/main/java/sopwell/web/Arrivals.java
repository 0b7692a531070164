package sopwell.web;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.logging.Logger;
import org.xnio.ChannelListener;
import org.xnio.IoUtils;
import org.xnio.StreamConnection;
import sopwell.Limits;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * Looks at each new connection before a byte of it is read: one address, and all together, have
 * only so many at once; what is more is closed. Thread-safe.
 *
 * <p>A connection counts until it is closed, whatever it is used for, so sockets of screens count
 * too. Closed ones are forgotten when their address needs the room, and every so many arrivals.
 */
final class Arrivals implements ChannelListener<StreamConnection> {
    private static final Logger LOGGER = Logger.getLogger(Arrivals.class.getName());
    private static final int SWEEP_ARRIVALS = 256;

    private final int perAddressMax;
    private final ChannelListener<? super StreamConnection> next;
    private final Cuts cuts;
    private final Map<String, Set<StreamConnection>> open = new HashMap<>();
    private final Set<String> told = new HashSet<>();
    private int arrivals;

    /**
     * Before a listener that reads requests.
     *
     * @param perAddressMax connections of one address at once
     */
    Arrivals(int perAddressMax, ChannelListener<? super StreamConnection> next, Cuts cuts) {
        this.cuts = cuts;
        this.perAddressMax = perAddressMax;
        this.next = next;
    }

    @Override
    public void handleEvent(StreamConnection connection) {
        InetSocketAddress peer = connection.getPeerAddress(InetSocketAddress.class);
        if (peer == null || !admit(RateLimit.address(peer.getAddress()), connection)) {
            IoUtils.safeClose(connection);
            return;
        }
        next.handleEvent(connection);
    }

    private synchronized boolean admit(String address, StreamConnection connection) {
        arrivals++;
        if (arrivals % SWEEP_ARRIVALS == 0) {
            open.values().forEach(Arrivals::forgetClosed);
            open.values().removeIf(Set::isEmpty);
        }
        Set<StreamConnection> own = open.computeIfAbsent(address, key -> new HashSet<>());
        if (own.size() >= perAddressMax) {
            forgetClosed(own);
        }
        if (own.size() >= perAddressMax || total() >= Limits.CONNECTIONS_MAX) {
            cuts.countTurnedAway();
            tell(connection, own.size());
            return false;
        }
        return own.add(connection);
    }

    private int total() {
        return open.values().stream().mapToInt(Set::size).sum();
    }

    /** Once for each address: a log that can be filled from outside is a harm of its own. */
    private void tell(StreamConnection connection, int own) {
        InetAddress peer = connection.getPeerAddress(InetSocketAddress.class).getAddress();
        if (told.size() < Limits.RATE_ADDRESSES_MAX && told.add(RateLimit.address(peer))) {
            Told.of(Happening.CONNECTIONS_CLOSED)
                    .network("network", peer)
                    .with("open", own)
                    .to(LOGGER);
        }
    }

    private static void forgetClosed(Set<StreamConnection> connections) {
        connections.removeIf(connection -> !connection.isOpen());
    }
}
