package sopwell.prep.forecast;

import java.util.Arrays;

/**
 * The share that one kind has of what it is a part of: at three speeds, each believed by what it
 * has foretold, leaning by weekday, and how much it varies from day to day beyond chance. Not
 * thread-safe.
 */
final class Shares {
    /** Horizons at which the variation is measured, in open days. */
    static final int[] AHEAD = {1, 3, 5};

    private static final double[] HALF_LIVES = {8, 25, 80};
    private static final double SCORE_KEEP = 0.99;
    private static final double LEAN_KEEP = 0.98;
    private static final double LEAN_PIECES = 40;
    private static final double RHO_KEEP = 0.99;
    private static final double RHO_START = 0.003;
    private static final double RHO_PAIRS = 3_000;
    private static final double RHO_MAX = 0.5;
    private static final double VARIANCES_MAX = 16;
    private static final double LEAST_SHARE = 1e-4;
    private static final int RING = 5;

    private final Share[] speeds = new Share[HALF_LIVES.length];
    private final Scores scores = new Scores(HALF_LIVES.length, SCORE_KEEP);
    private final double[] dayScores = new double[HALF_LIVES.length];
    private final double[] leanSold = new double[Priors.WEEK];
    private final double[] leanDue = new double[Priors.WEEK];
    private final double[] extra = new double[AHEAD.length];
    private final double[] pairs = new double[AHEAD.length];
    private final double[] past = new double[RING];
    private int marks;

    /** A share of which somebody said, or nobody, how large it is. */
    Shares(double some, double others) {
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = new Share(HALF_LIVES[i], some, others);
        }
    }

    /** The share on a weekday. */
    double now(int weekday) {
        return Math.min(1, plain() * lean(weekday));
    }

    /** The share of this weekday that was foretold so many open days before. */
    double foretold(int ahead, int weekday) {
        return Math.min(1, past[Math.floorMod(marks - ahead, RING)] * lean(weekday));
    }

    /** Whether there is a forecast from so many days before. */
    boolean hasForetold(int ahead) {
        return marks >= ahead;
    }

    /** How alike the pieces of a day are at a horizon, from 0. */
    double rho(int horizon) {
        int h = horizon <= 1 ? 0 : horizon <= 3 ? 1 : 2;
        double at = rhoAt(h);
        if (horizon <= AHEAD[AHEAD.length - 1]) {
            return at;
        }
        double slope = (at - rhoAt(0)) / (AHEAD[2] - AHEAD[0]);
        return at + Math.max(0, slope) * (horizon - AHEAD[2]);
    }

    /** Sets the mark that later days are forecast from; once for each open day. */
    void mark() {
        past[Math.floorMod(marks, RING)] = plain();
        marks++;
    }

    /** Takes in that of so many pieces some were of the kind. */
    void learn(int weekday, double some, double all) {
        if (all <= 0) {
            return;
        }
        double rho = rhoAt(0);
        double lean = lean(weekday);
        double plain = plain();
        double wide = 1 + Math.max(0, all - 1) * rho;
        for (int i = 0; i < speeds.length; i++) {
            double p = bounded(speeds[i].now() * lean);
            double others = Math.max(0, all - some);
            dayScores[i] = (some * Math.log(p) + others * Math.log(1 - p)) / wide;
        }
        scores.see(dayScores);
        for (Share speed : speeds) {
            speed.see(some / lean, all);
        }
        leanSold[weekday] = LEAN_KEEP * leanSold[weekday] + some;
        leanDue[weekday] = LEAN_KEEP * leanDue[weekday] + all * plain;
    }

    /** Takes in how far a day fell from what was foretold. */
    void judge(int weekday, double some, double all) {
        for (int h = 0; h < AHEAD.length; h++) {
            if (hasForetold(AHEAD[h]) && all > 1) {
                double p = bounded(foretold(AHEAD[h], weekday));
                double chance = p * (1 - p);
                double off = some - all * p;
                double most = VARIANCES_MAX * all * (1 + (all - 1) * rhoAt(h));
                double miss = Math.min(off * off / chance, most);
                extra[h] = RHO_KEEP * extra[h] + miss - all;
                pairs[h] = RHO_KEEP * pairs[h] + all * (all - 1);
            }
        }
    }

    private double rhoAt(int h) {
        double rho = (extra[h] + RHO_START * RHO_PAIRS) / (pairs[h] + RHO_PAIRS);
        return Math.max(0, Math.min(RHO_MAX, rho));
    }

    private double plain() {
        double sum = 0;
        for (int i = 0; i < speeds.length; i++) {
            sum += scores.weight(i) * speeds[i].now();
        }
        return sum;
    }

    private double lean(int weekday) {
        return (leanSold[weekday] + LEAN_PIECES) / (leanDue[weekday] + LEAN_PIECES);
    }

    private static double bounded(double p) {
        return Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, p));
    }

    /** The weights of the speeds, fast to slow. */
    double[] weights() {
        return Arrays.copyOf(scores.weights(), HALF_LIVES.length);
    }
}
