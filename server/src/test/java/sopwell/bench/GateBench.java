package sopwell.bench;

import java.io.IOException;
import java.util.Arrays;
import java.util.function.LongSupplier;
import sopwell.GateStand;
import sopwell.access.Access;
import sopwell.access.AccessRules;
import sopwell.access.Actor;
import sopwell.access.Right;
import sopwell.access.Role;
import sopwell.access.Shown;
import sopwell.access.Use;

/**
 * What a closed stand's gate costs a request: to find out from a session's and a device's cookie
 * who asks, and whether they may, beside doing nothing. Medians of rounds; one thread.
 */
public final class GateBench {
    private static final int ROUNDS = 11;
    private static final int WARM_ROUNDS = 5;
    private static final int ASKED = 200_000;

    private GateBench() {}

    /** Prints nanoseconds a request. */
    public static void main(String[] args) throws IOException {
        try (GateStand stand = new GateStand()) {
            Access access = stand.access();
            String cookies = stand.signedIn(Role.COUNTER);
            String session = cookies.substring(cookies.lastIndexOf('=') + 1);
            String device = stand.device(Use.COUNTER).replaceAll(".*=", "");
            String token = stand.token(Role.COUNTER);
            print("no-op", () -> session.length());
            print("cookies hashed alone", () -> Shown.of(session, device, "").session().length());
            print("session and device", () -> asked(access, Shown.of(session, device, "")));
            print("device alone", () -> asked(access, Shown.of("", device, "")));
            print("program's token", () -> asked(access, Shown.of("", "", token)));
            print("nothing shown", () -> asked(access, Shown.NOTHING));
        }
    }

    /** What the gate asks about each request, but reading its headers. */
    private static long asked(Access access, Shown shown) {
        Actor actor = access.who(shown);
        Right right = AccessRules.right("POST", "/counter/orders").orElseThrow();
        return actor.may(right) && !actor.mustProve(right, 0) ? 1 : 0;
    }

    private static void print(String what, LongSupplier work) {
        double[] nanos = new double[ROUNDS];
        long sum = 0;
        for (int round = -WARM_ROUNDS; round < ROUNDS; round++) {
            long from = System.nanoTime();
            for (int i = 0; i < ASKED; i++) {
                sum += work.getAsLong();
            }
            if (round >= 0) {
                nanos[round] = (System.nanoTime() - from) / (double) ASKED;
            }
        }
        Arrays.sort(nanos);
        System.out.printf(
                "%-22s %8.1f ns (%.1f to %.1f), %d%n",
                what, nanos[ROUNDS / 2], nanos[0], nanos[ROUNDS - 1], sum);
    }
}
