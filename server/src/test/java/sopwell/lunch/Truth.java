package sopwell.lunch;

import java.util.List;

/**
 * How a lunch really goes, which the stand does not know. Immutable.
 *
 * @param perHour orders an hour, at equal steps of {@code stepMinutes}
 * @param lineHands people on the line at the beginning
 * @param lineFactor how long the line takes against the menu's figures
 * @param startTaps the share of parts whose start is tapped
 * @param lateUps the share of parts whose up is tapped one to four minutes late
 * @param work how times at the line are spread
 * @param reachSeconds how long a hand takes on average to turn to the next part
 * @param only what every guest orders, or empty for the usual mixture
 * @param comings people who come to the line (1) or leave it (-1)
 */
record Truth(
        List<Integer> perHour,
        int stepMinutes,
        int lineHands,
        double lineFactor,
        double startTaps,
        double lateUps,
        Work work,
        double reachSeconds,
        String only,
        List<Coming> comings) {
    /** How times are spread around their mean. */
    enum Work {
        /** Log-normal with a coefficient of variation of {@link #LINE_CV}. */
        LOG_NORMAL,
        EXPONENTIAL,
        /** Always the same. */
        FIXED
    }

    /** One person comes or leaves. */
    record Coming(int minute, int by) {}

    static final double LINE_CV = 0.3;
    static final double FRY_CV = 0.05;
    static final double GRILL_CV = 0.12;
    static final double DRINKS_CV = 0.3;
    static final double FRY_FACTOR = 0.97;
    static final double GRILL_FACTOR = 1.05;
    static final double REACH_CV = 0.5;
    static final double PASS_SECONDS = 20;
    static final double PASS_CV = 0.6;

    /**
     * A hard lunch of two and a quarter hours, for half an hour at 150 orders an hour: a little
     * more than the three on the line can make, who take three tenths longer than the menu says.
     */
    static Truth lunch() {
        return new Truth(
                List.of(60, 100, 140, 150, 150, 150, 140, 110, 80, 50),
                15,
                3,
                1.3,
                0.9,
                0.01,
                Work.LOG_NORMAL,
                4,
                "",
                List.of());
    }

    /** 150 orders an hour all the time, and one of three leaves the line after half an hour. */
    static Truth leaving(double startTaps) {
        return new Truth(
                List.of(150, 150, 150, 150),
                15,
                3,
                1.3,
                startTaps,
                0.01,
                Work.LOG_NORMAL,
                4,
                "",
                List.of(new Coming(30, -1)));
    }

    /** A textbook's queue: one thing, at one rate, and nothing but the work takes time. */
    static Truth steady(int hands, int perHour, Work work, int hours) {
        return new Truth(
                List.of(perHour, perHour), 60 * hours, hands, 1, 1, 0, work, 0, "beef", List.of());
    }
}
