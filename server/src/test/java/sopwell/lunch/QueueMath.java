package sopwell.lunch;

import java.util.OptionalDouble;

/**
 * What is known of queues in the steady state. Stateless.
 *
 * <p>Erlang's B by its recursion B(0) = 1, B(k) = a B(k-1) / (k + a B(k-1)), and C = c B / (c - a
 * (1 - B)): powers and factorials of the textbook form overflow. (M. Marzolla, queueing package,
 * erlangc; for M/D/1 the Pollaczek-Khinchine formula.) A queue that is offered as much as it can
 * serve, or more, has no steady state and no value here.
 */
public final class QueueMath {
    private QueueMath() {}

    /** The share of offered load that finds all of {@code servers} busy and is lost. */
    public static double erlangB(int servers, double offered) {
        double lost = 1;
        for (int k = 1; k <= servers; k++) {
            lost = offered * lost / (k + offered * lost);
        }
        return lost;
    }

    /** The share that must wait. */
    public static OptionalDouble erlangC(int servers, double offered) {
        if (offered >= servers) {
            return OptionalDouble.empty();
        }
        double lost = erlangB(servers, offered);
        return OptionalDouble.of(servers * lost / (servers - offered * (1 - lost)));
    }

    /** The mean wait before service of M/M/c, in the unit of the service time. */
    public static OptionalDouble waitMmc(int servers, double perUnit, double service) {
        double offered = perUnit * service;
        OptionalDouble waits = erlangC(servers, offered);
        return waits.isEmpty()
                ? waits
                : OptionalDouble.of(waits.getAsDouble() * service / (servers - offered));
    }

    /** The share of M/M/c that waits longer than so long before service. */
    static OptionalDouble longerThan(int servers, double perUnit, double service, double wait) {
        double offered = perUnit * service;
        OptionalDouble waits = erlangC(servers, offered);
        return waits.isEmpty()
                ? waits
                : OptionalDouble.of(
                        waits.getAsDouble() * Math.exp(-(servers - offered) * wait / service));
    }

    /** How many wait on average in M/D/1. */
    public static OptionalDouble queueMd1(double load) {
        return load >= 1
                ? OptionalDouble.empty()
                : OptionalDouble.of(load * load / (2 * (1 - load)));
    }
}
