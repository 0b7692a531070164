package sopwell.prep.forecast;

import java.util.List;

/**
 * One item: its share of everything, a level of its own where it sells enough, which of the two is
 * believed, and when in the day it sells. Not thread-safe.
 */
final class ItemLine {
    private static final double CURVE_KEEP = 0.985;
    private static final double SCORE_KEEP = 0.99;
    private static final double TOP_DOWN_AHEAD_SCORE = 2;

    /** An item that sells less a day gets no level of its own. */
    private static final double LEAST_LEVEL = 2;

    private static final int SCORED_TO = 3;
    private static final int ZEROS_MIN = 3;
    private static final double ZERO_PIECES = 8;

    private final Shares shares;
    private final Curve curve;
    private final Priors priors;
    private final Scores ways = new Scores(2, SCORE_KEEP);
    private final int[] zeros = new int[Priors.WEEK];
    private final double[] zeroPieces = new double[Priors.WEEK];
    private Bank own;
    private int daysSinceSold;

    /**
     * An item.
     *
     * @param priors the weekdays and effects of everything, kept up to date by the owner
     */
    ItemLine(Shares shares, int bins, Priors priors) {
        this.shares = shares;
        this.curve = new Curve(bins, CURVE_KEEP);
        this.priors = priors;
        ways.start(TOP_DOWN_AHEAD_SCORE, 0);
    }

    /** What everything was foretold to be, at the horizons of {@link Shares#AHEAD}. */
    static final class Whole {
        private final double[] means;
        private final double[] phis;

        /** Owns both from here on. */
        Whole(double[] means, double[] phis) {
            this.means = means;
            this.phis = phis;
        }

        private double mean(int h) {
            return means[h];
        }

        private double phi(int h) {
            return phis[h];
        }
    }

    Shares shares() {
        return shares;
    }

    Curve curve() {
        return curve;
    }

    int daysSinceSold() {
        return daysSinceSold;
    }

    /** Whether it is sold on a weekday at all. */
    boolean isSoldOn(int weekday) {
        return zeros[weekday] < ZEROS_MIN || zeroPieces[weekday] < ZERO_PIECES;
    }

    /** The share on a weekday, or 0 where it is never sold. */
    double share(int weekday) {
        return isSoldOn(weekday) ? shares.now(weekday) : 0;
    }

    /**
     * Takes in a day.
     *
     * @param day this item's own
     * @param all pieces of everything while it could be sold, as the day would have been
     * @param whole what was foretold of everything
     */
    void learn(Seen day, double all, Whole whole) {
        int weekday = day.weekday();
        daysSinceSold = day.count() > 0 ? 0 : daysSinceSold + 1;
        zeros(day, all);
        if (isSoldOn(weekday)) {
            double topDown = topDownScore(day, whole);
            shares.judge(weekday, day.count(), all);
            shares.learn(weekday, day.count(), all);
            if (own == null && shares.now(weekday) * all / day.exposure() >= LEAST_LEVEL) {
                own =
                        new Bank(
                                Bank.FEW_SPEEDS,
                                Shares.AHEAD,
                                SCORED_TO,
                                priors,
                                new Member.Start(0, 0));
            }
            if (own != null) {
                own.learn(day);
                if (own.hasExpected(Shares.AHEAD.length - 1) && !day.guessed()) {
                    ways.see(new double[] {topDown, own.lastScore()});
                }
            }
        }
    }

    /** Sets the mark that later days are forecast from; once for each open day. */
    void mark() {
        shares.mark();
        if (own != null) {
            own.mark();
        }
    }

    /** See {@link Level#doubt}. */
    void doubt(double share) {
        if (own != null) {
            own.doubt(share);
        }
    }

    /** How much its own level is believed, against its share of everything. */
    double ownWeight() {
        return own != null && own.hasExpected(Shares.AHEAD.length - 1) ? ways.weight(1) : 0;
    }

    /** What is expected, of its share and of its own level together. */
    CountMixture ahead(int horizon, int weekday, Known known, CountMixture topDown) {
        if (ownWeight() == 0 || !isSoldOn(weekday)) {
            return topDown;
        }
        return CountMixture.of(topDown, own.ahead(horizon, weekday, known), ownWeight());
    }

    private void zeros(Seen day, double all) {
        int weekday = day.weekday();
        if (day.count() > 0) {
            zeros[weekday] = 0;
            zeroPieces[weekday] = 0;
        } else if (day.exposure() > 0.5) {
            zeros[weekday]++;
            zeroPieces[weekday] += shares.now((weekday + 3) % Priors.WEEK) * all;
        }
    }

    private double topDownScore(Seen day, Whole whole) {
        double sum = 0;
        int scored = 0;
        List<Known> ahead = day.ahead();
        for (int h = 0; h < Shares.AHEAD.length; h++) {
            int days = Shares.AHEAD[h];
            if (shares.hasForetold(days) && whole.mean(h) > 0) {
                double share = shares.foretold(days, day.weekday());
                double mean = whole.mean(h) * share * day.exposure() / ahead.get(days - 1).hours();
                double phi = Thinning.phi(whole.phi(h), share, shares.rho(days));
                int count = (int) Math.round(day.count());
                sum += NegBin.logPmf(count, Math.max(mean, 1e-6), Math.min(phi, 50));
                scored++;
            }
        }
        return scored == 0 ? 0 : Math.max(-60, sum / scored);
    }
}
