package sopwell.web;

import io.undertow.server.HttpServerExchange;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import sopwell.Limits;

/**
 * How often one address may try something, such as to sign in or to pair: so many tries at once,
 * and after that one more each so often. Thread-safe.
 *
 * <p>Make one for each kind of try, and before anything costly or secret is looked at ask
 *
 * <pre>{@code
 * long wait = limit.take(RateLimit.address(exchange));
 * if (wait > 0) {
 *     // Refuse with 429 and Retry-After: RateLimit.seconds(wait). Look at nothing.
 * }
 * }</pre>
 *
 * <p>A try that is refused costs nothing: who waits as told is let through. It is kept in memory
 * and forgotten with a restart, so it slows floods and does not take the place of a count of wrong
 * tries. Of IPv6 an address is its network of 64 bits, since one device has as many as it likes. At
 * most {@link Limits#RATE_ADDRESSES_MAX} addresses are remembered; while there are more, those that
 * are new share the tries of one.
 */
public final class RateLimit {
    private static final String OTHERS = "others";
    private static final int NETWORK_BYTES = 8;

    private final long eachNanos;
    private final long spareNanos;
    private final LongSupplier nanos;

    /** For each address until when its tries are used up; what is past means nothing. */
    private final Map<String, Long> usedUpTo = new HashMap<>();

    /**
     * A limit that nobody has used.
     *
     * @param burst tries at once, 1 or more
     * @param eachMillis how long it takes until one more is allowed
     * @param nanos a clock that never jumps, in nanoseconds
     */
    public RateLimit(int burst, long eachMillis, LongSupplier nanos) {
        this.eachNanos = TimeUnit.MILLISECONDS.toNanos(eachMillis);
        this.spareNanos = eachNanos * (burst - 1);
        this.nanos = nanos;
    }

    /** The usual limit for signing in and for pairing. */
    public static RateLimit forSignIn(LongSupplier nanos) {
        return new RateLimit(Limits.SIGN_IN_BURST_MAX, Limits.SIGN_IN_EACH_MILLIS, nanos);
    }

    /** Takes one try: 0 when it was there, else how long to wait for one, in milliseconds. */
    public synchronized long take(String address) {
        long now = nanos.getAsLong();
        String who = known(address, now) ? address : OTHERS;
        long free = Math.max(0, usedUpTo.getOrDefault(who, now) - now);
        if (free > spareNanos) {
            return Math.max(1, TimeUnit.NANOSECONDS.toMillis(free - spareNanos));
        }
        usedUpTo.put(who, now + free + eachNanos);
        return 0;
    }

    /** Whole seconds for {@code Retry-After}, 1 or more. */
    public static String seconds(long millis) {
        return Long.toString(Math.max(1, (millis + 999) / 1_000));
    }

    /** The address that a request comes from, as limits know it. */
    public static String address(HttpServerExchange exchange) {
        InetSocketAddress from = exchange.getSourceAddress();
        return from.isUnresolved() ? OTHERS : address(from.getAddress());
    }

    /** The same for an address. */
    public static String address(InetAddress from) {
        byte[] bytes = from.getAddress();
        return Arrays.toString(
                from instanceof Inet6Address ? Arrays.copyOf(bytes, NETWORK_BYTES) : bytes);
    }

    /** Whether an address has, or gets, a place of its own. */
    private boolean known(String address, long now) {
        if (usedUpTo.size() < Limits.RATE_ADDRESSES_MAX || usedUpTo.containsKey(address)) {
            return true;
        }
        usedUpTo.values().removeIf(until -> until - now <= 0);
        return usedUpTo.size() < Limits.RATE_ADDRESSES_MAX;
    }
}
