package sopwell.kitchen;

import java.util.Arrays;

/**
 * How many people really work at a station, from the taps alone. Not thread-safe: its owner is one
 * thread.
 *
 * <p>For every number of hands that could be there it keeps what those hands would be doing: each
 * works on one part, on one that was begun by a tap or, since taps are forgotten, on one that
 * nobody knows of; whoever puts a part up takes the next if there is one. A number that is too high
 * has a hand that never gets anything done, and the longer it takes the less it is believed. A
 * number that is too low has too few hands for what was begun side by side, or too much done in too
 * short a time. A little belief leaks to the neighbours with every part, because people come and
 * go. (A hidden Markov model's forward filter, with one path kept for each number.)
 */
final class HandsAtWork {
    /** Hands beyond those that were said to be there that are thought of. */
    static final int MORE_MAX = 2;

    /** How much belief leaks to each neighbour with every part that is put up. */
    private static final double LEAK = 0.02;

    /** How much belief goes back to the number that was said. */
    private static final double BACK = 0.02;

    /** The least belief, as a logarithm: nothing is ever ruled out. */
    private static final double BELIEF_MIN = -7;

    /** A part is begun without a hand for it: a tap too early, or one who helps out. */
    private static final double LOG_NO_HAND = StrictMath.log(0.3);

    /** A hand takes the next part within about so long. */
    private static final double REACH_MS = 5_000;

    /**
     * How regular work is: of times that are log-logistic, half lie within a quarter of the middle.
     */
    private static final double REGULARITY = 4.5;

    private static final long IDLE = -1;
    private static final double RECENT_PARTS = 20;

    private Hypothesis[] all = {};
    private int said;
    private double tapped = 0.5;
    private double workMs;

    /** One number of hands, and what they would be doing. */
    private static final class Hypothesis {
        private final long[] sinceMs;
        private final PartId[] known;
        private double belief;

        Hypothesis(int hands, double belief) {
            this.sinceMs = new long[hands];
            this.known = new PartId[hands];
            this.belief = belief;
            Arrays.fill(sinceMs, IDLE);
        }

        /** Idle hands take what nobody works on; where there is nothing, nobody works. */
        void fill(long atMs, int takeable) {
            int left = takeable;
            for (int hand = 0; hand < sinceMs.length; hand++) {
                left -= isUnknown(hand) ? 1 : 0;
            }
            for (; left < 0; left++) {
                free(unknown(false));
            }
            for (int hand = 0; hand < sinceMs.length && left > 0; hand++) {
                if (sinceMs[hand] == IDLE) {
                    sinceMs[hand] = atMs;
                    left--;
                }
            }
        }

        boolean isUnknown(int hand) {
            return sinceMs[hand] != IDLE && known[hand] == null;
        }

        int handOn(PartId part) {
            for (int hand = 0; hand < known.length; hand++) {
                if (part.equals(known[hand])) {
                    return hand;
                }
            }
            return -1;
        }

        /** The hand on unknown work for the longest, or for the shortest, or an idle one. */
        int unknown(boolean longest) {
            int found = -1;
            for (int hand = 0; hand < sinceMs.length; hand++) {
                boolean better = found < 0 || (sinceMs[hand] < sinceMs[found]) == longest;
                if (isUnknown(hand) && better) {
                    found = hand;
                }
            }
            return found;
        }

        int idle() {
            for (int hand = 0; hand < sinceMs.length; hand++) {
                if (sinceMs[hand] == IDLE) {
                    return hand;
                }
            }
            return -1;
        }

        void free(int hand) {
            sinceMs[hand] = IDLE;
            known[hand] = null;
        }
    }

    /** So many hands are said to be there, and begin with nothing. */
    void begin(int hands) {
        said = hands;
        all = new Hypothesis[hands + MORE_MAX];
        for (int n = 0; n < all.length; n++) {
            int off = Math.abs(n + 1 - hands);
            all[n] = new Hypothesis(n + 1, off == 0 ? 0 : -3.0 - off);
        }
    }

    boolean isBegun() {
        return all.length > 0;
    }

    /** There is work for so many more hands. */
    void work(long atMs, int takeable) {
        for (Hypothesis one : all) {
            one.fill(atMs, takeable);
        }
    }

    /** A part is begun by a tap. */
    void started(PartId part, long atMs, int takeable) {
        for (Hypothesis one : all) {
            int last = one.unknown(false);
            int hand = last >= 0 ? last : one.idle();
            if (hand >= 0) {
                one.sinceMs[hand] = atMs;
                one.known[hand] = part;
            } else {
                one.belief += LOG_NO_HAND;
            }
        }
        settle();
        work(atMs, takeable);
    }

    /** A part leaves that was begun or not, but is not up: void, or changed. */
    void gone(PartId part) {
        for (Hypothesis one : all) {
            int hand = one.handOn(part);
            if (hand >= 0) {
                one.free(hand);
            }
        }
    }

    /**
     * A part is up.
     *
     * @param wasTapped whether it was begun by a tap
     * @param expectedMs how long one hand was expected to take over it
     */
    void up(PartId part, boolean wasTapped, long expectedMs, long atMs, int takeable) {
        double recent = workMs == 0 ? 1 : 1 / RECENT_PARTS;
        workMs += recent * (expectedMs - workMs);
        tapped += ((wasTapped ? 1 : 0) - tapped) / RECENT_PARTS;
        for (Hypothesis one : all) {
            int hand = one.handOn(part);
            if (hand < 0 && !wasTapped) {
                hand = one.unknown(true);
                double took = hand < 0 ? 0 : atMs - one.sinceMs[hand];
                one.belief += hand < 0 ? LOG_NO_HAND : logDensity(took / expectedMs);
            }
            if (hand >= 0) {
                one.free(hand);
            }
        }
        leak();
        settle();
        work(atMs, takeable);
    }

    /** How many hands there are, on average over what is believed. */
    double mean(long nowMs) {
        double sum = 0;
        double weighted = 0;
        double best = Double.NEGATIVE_INFINITY;
        double[] beliefs = new double[all.length];
        for (int n = 0; n < all.length; n++) {
            beliefs[n] = all[n].belief + silence(all[n], nowMs);
            best = Math.max(best, beliefs[n]);
        }
        for (int n = 0; n < all.length; n++) {
            double weight = StrictMath.exp(beliefs[n] - best);
            sum += weight;
            weighted += weight * (n + 1);
        }
        return weighted / sum;
    }

    /** What it says that hands on unknown work have neither tapped a start nor put anything up. */
    private double silence(Hypothesis one, long nowMs) {
        double log = 0;
        for (int hand = 0; hand < one.sinceMs.length; hand++) {
            if (one.isUnknown(hand)) {
                double ageMs = Math.max(0, nowMs - one.sinceMs[hand]);
                double untapped = 1 - tapped + tapped * StrictMath.exp(-ageMs / REACH_MS);
                log += StrictMath.log(untapped) + logSurvival(ageMs / Math.max(1, workMs));
            }
        }
        return log;
    }

    /** Some belief goes to the neighbours, and some back to what was said. */
    private void leak() {
        double[] before = new double[all.length];
        double sum = 0;
        for (int n = 0; n < all.length; n++) {
            before[n] = StrictMath.exp(all[n].belief);
            sum += before[n];
        }
        for (int n = 0; n < all.length; n++) {
            double fewer = n > 0 ? before[n - 1] : 0;
            double more = n < all.length - 1 ? before[n + 1] : 0;
            double stays = (1 - 2 * LEAK - BACK) * before[n] + LEAK * (fewer + more);
            all[n].belief = StrictMath.log(stays + (n + 1 == said ? BACK * sum : 0));
        }
    }

    /** The most believed is the measure of the others. */
    private void settle() {
        double best = Double.NEGATIVE_INFINITY;
        for (Hypothesis one : all) {
            best = Math.max(best, one.belief);
        }
        for (Hypothesis one : all) {
            one.belief = Math.max(BELIEF_MIN, one.belief - best);
        }
    }

    private static double logSurvival(double times) {
        return -StrictMath.log1p(StrictMath.pow(times, REGULARITY));
    }

    private static double logDensity(double times) {
        double safe = Math.max(0.01, times);
        return StrictMath.log(REGULARITY)
                + (REGULARITY - 1) * StrictMath.log(safe)
                + 2 * logSurvival(safe);
    }
}
