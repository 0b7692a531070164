package sopwell.sim;

import java.time.LocalDateTime;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.desk.Script;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnits;
import sopwell.orders.StandSettings;

/** Which day it is, how fast it goes, and the stand's settings. Stateless but for chance. */
final class Days {
    /** A usual lunch; the nights on which clocks change; a Friday; an evening before the cut. */
    private static final List<LocalDateTime> BEGINS =
            List.of(
                    LocalDateTime.of(2026, 1, 14, 10, 30),
                    LocalDateTime.of(2026, 3, 7, 22, 0),
                    LocalDateTime.of(2026, 10, 31, 23, 0),
                    LocalDateTime.of(2026, 5, 22, 11, 0),
                    LocalDateTime.of(2026, 12, 31, 23, 30));

    /** An hour is so many steps, and a rush the second third of it. */
    private static final int HOUR_STEPS = 45;

    private static final int FEW_NUMBERS = 30;
    private static final long HOUR_MS = 3_600_000;

    private Days() {}

    static LocalDateTime begin(SplittableRandom random) {
        return BEGINS.get(random.nextInt(BEGINS.size()));
    }

    static boolean isRush(int step) {
        return step % HOUR_STEPS * 3 / HOUR_STEPS == 1;
    }

    /**
     * How far the clock is at the next step; now and then somebody sets it, or the night goes by.
     */
    static long pause(SplittableRandom random) {
        return switch (random.nextInt(400)) {
            case 0 -> -HOUR_MS;
            case 1 -> HOUR_MS;
            case 2 -> 14 * HOUR_MS;
            default -> random.nextInt(40) * 1_000L;
        };
    }

    static StandSettings settings(SplittableRandom random) {
        StandSettings usual = Script.SETTINGS;
        CashRule cash =
                random.nextBoolean()
                        ? usual.cash()
                        : new CashRule(
                                new CashRounding(5, CashRounding.Tie.DOWN),
                                CashUnits.of(List.of(2_000L, 500L), List.of(25L, 10L, 5L)));
        return new StandSettings(
                usual.stand(),
                usual.name(),
                usual.zone(),
                usual.cutHour(),
                usual.tax(),
                usual.targetSeconds(),
                random.nextInt(4) == 0 ? FEW_NUMBERS : usual.numberMax(),
                cash,
                usual.safety());
    }
}
