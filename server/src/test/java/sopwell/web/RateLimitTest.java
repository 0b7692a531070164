package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sopwell.Limits;

class RateLimitTest {
    /** Such clocks may begin below zero and run over. */
    private final AtomicLong nanos = new AtomicLong(Long.MAX_VALUE - 5);

    private final RateLimit limit = new RateLimit(5, 2_000, nanos::get);

    @Test
    void allowsABurstAndThenOneEachSoOften() {
        for (int i = 0; i < 5; i++) {
            assertEquals(0, limit.take("a"));
        }
        assertEquals(2_000, limit.take("a"));
        pass(1_500);
        assertEquals(500, limit.take("a"));
        pass(500);
        assertEquals(0, limit.take("a"));
        assertEquals(2_000, limit.take("a"));
    }

    @Test
    void givesTheWholeBurstBackAfterARest() {
        IntStream.range(0, 5).forEach(i -> limit.take("a"));
        pass(10_000);
        for (int i = 0; i < 5; i++) {
            assertEquals(0, limit.take("a"));
        }
        assertTrue(limit.take("a") > 0);
    }

    @Test
    void countsEachAddressByItself() {
        IntStream.range(0, 6).forEach(i -> limit.take("a"));
        assertTrue(limit.take("a") > 0);
        assertEquals(0, limit.take("b"));
    }

    @Test
    void allowsNoMoreToManyAtTheSameMoment() {
        AtomicInteger through = new AtomicInteger();
        IntStream.range(0, 200)
                .parallel()
                .filter(i -> limit.take("a") == 0)
                .forEach(i -> through.incrementAndGet());
        assertEquals(5, through.get());
    }

    @Test
    void lendsNewAddressesTheTriesOfOneWhileTooManyAreRemembered() {
        for (int i = 0; i < Limits.RATE_ADDRESSES_MAX; i++) {
            assertEquals(0, limit.take("a" + i));
        }
        long through = IntStream.range(0, 100).filter(i -> limit.take("b" + i) == 0).count();
        assertEquals(5, through, "a flood of addresses has one address's tries");
        assertEquals(0, limit.take("a7"), "who was known before is not hindered");
        pass(60_000);
        through = IntStream.range(0, 100).filter(i -> limit.take("b" + i) == 0).count();
        assertEquals(100, through, "what is past is forgotten");
    }

    @Test
    void takesANetworkOfManyAddressesForOne() throws UnknownHostException {
        assertEquals(of("2001:db8:1:2::1"), of("2001:db8:1:2:ffff::9"));
        assertNotEquals(of("2001:db8:1:2::1"), of("2001:db8:1:3::1"));
        assertNotEquals(of("192.0.2.1"), of("192.0.2.2"));
    }

    @Test
    void saysWholeSeconds() {
        assertEquals("1", RateLimit.seconds(1));
        assertEquals("1", RateLimit.seconds(1_000));
        assertEquals("2", RateLimit.seconds(1_001));
    }

    private void pass(long millis) {
        nanos.addAndGet(TimeUnit.MILLISECONDS.toNanos(millis));
    }

    private static String of(String address) throws UnknownHostException {
        return RateLimit.address(InetAddress.getByName(address));
    }
}
