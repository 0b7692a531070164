package sopwell.stands;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/**
 * A stand made from a seed, of which the truth is known: two years of days with what was asked for,
 * what could be sold of it, and the means it was drawn from.
 */
final class MadeStand {
    /** What is hard about a stand. */
    enum Group {
        STEADY,
        SPARSE,
        SELL_OUTS,
        DRIFTING,
        BROKEN
    }

    static final int DAYS = 625;
    static final int BIN_MINUTES = 15;
    private static final int OPENS = 630;
    private static final int CLOSES = 1_200;
    private static final int BINS = (CLOSES - OPENS) / BIN_MINUTES;
    private static final String[] ITEMS = {"beef", "sausage", "combo", "dog", "pepper-egg", "jus"};
    private static final double[] SHARES = {0.46, 0.2, 0.13, 0.1, 0.05, 0.06};
    private static final double[] WEEK = {0, 0.85, 0.9, 0.95, 1.15, 1.35, 0.8};

    private final Group group;
    private final SplittableRandom dice;
    private final double[] curve = new double[BINS];
    private final double phi;
    private final List<PastDay> days = new ArrayList<>();
    private final List<Outlook> outlooks = new ArrayList<>();
    private final List<Map<String, Integer>> demand = new ArrayList<>();
    private final List<Truth> truths = new ArrayList<>();
    private double level;
    private double growth;
    private double dipped = 0.3;

    /**
     * What a day was drawn from.
     *
     * @param level pieces on a plain day
     * @param weekday what its weekday makes of it
     * @param occasion what its occasions make of it
     * @param dipped the share of dipped among the items that can be
     */
    record Truth(double level, double weekday, double occasion, boolean rain, double dipped) {}

    MadeStand(Group group, long seed) {
        this.group = group;
        this.dice = new SplittableRandom(seed * 31 + group.name().length());
        this.level = group == Group.SPARSE ? 14 : 180 + dice.nextInt(120);
        this.phi = 0.004 + 0.006 * dice.nextDouble();
        double sum = 0;
        for (int b = 0; b < BINS; b++) {
            double noon = (b - 7) / 5.0;
            double evening = (b - 28) / 6.0;
            curve[b] = Math.exp(-noon * noon) + 0.6 * Math.exp(-evening * evening) + 0.08;
            sum += curve[b];
        }
        for (int b = 0; b < BINS; b++) {
            curve[b] /= sum;
        }
        LocalDate date = LocalDate.of(2024, 1, 2);
        while (days.size() < DAYS) {
            if (date.getDayOfWeek() != DayOfWeek.MONDAY) {
                day(date);
            }
            date = date.plusDays(1);
        }
    }

    History history() {
        return new History(BIN_MINUTES, days, outlooks);
    }

    List<PastDay> days() {
        return days;
    }

    /** What was asked for on a day by name; modifiers by theirs. */
    Map<String, Integer> demand(int day) {
        return demand.get(day);
    }

    Truth truth(int day) {
        return truths.get(day);
    }

    /** The mean of a name on a day, of one who knows everything but what the day brings. */
    double oracleMean(String name, int origin, int day, double rainChance) {
        Truth then = truths.get(day);
        double rain = 1 + rainChance * (RAIN - 1);
        double total = truths.get(origin).level() * then.weekday() * then.occasion() * rain;
        return total * share(name, truths.get(origin).dipped());
    }

    double phi() {
        return phi;
    }

    static List<String> names() {
        List<String> names = new ArrayList<>(List.of(ITEMS));
        names.add("dipped");
        names.add("hot");
        return names;
    }

    private static final double RAIN = 0.82;
    private static final double HOT = 0.35;

    private static double share(String name, double dipped) {
        double takes = SHARES[0] + SHARES[2];
        if (name.equals("dipped")) {
            return takes * dipped;
        }
        if (name.equals("hot")) {
            return takes * HOT;
        }
        return SHARES[List.of(ITEMS).indexOf(name)];
    }

    private void day(LocalDate date) {
        move();
        boolean rain = dice.nextDouble() < 0.22;
        for (int ahead = 1; ahead <= 7; ahead++) {
            double sure = 0.85 - 0.09 * ahead;
            double chance = rain ? 0.22 + 0.78 * sure : 0.22 * (1 - sure);
            outlooks.add(new Outlook(date.minusDays(ahead), date, "rain", chance));
        }
        List<Occasion> occasions = new ArrayList<>();
        double occasion = 1;
        if (date.getDayOfMonth() == 17) {
            occasions.add(new Occasion("market", "", 0));
            occasion = 1.3;
        }
        if (date.getMonthValue() == 7 && date.getDayOfMonth() <= 3) {
            occasions.add(new Occasion("river festival", "festival", 1.5));
            occasion *= 1.6;
        }
        double weekday = WEEK[date.getDayOfWeek().getValue() - 1];
        double mean = level * weekday * occasion * (rain ? RAIN : 1);
        truths.add(new Truth(level, weekday, occasion, rain, dipped));
        double size = 1 / phi;
        double today = mean * Dice.gamma(dice, size) / size;
        Map<String, Integer> asked = new TreeMap<>();
        List<Sold> sold = new ArrayList<>();
        List<OutSpan> outs = new ArrayList<>();
        for (int i = 0; i < ITEMS.length; i++) {
            item(i, today, asked, sold, outs);
        }
        demand.add(asked);
        days.add(
                new PastDay(
                        date,
                        true,
                        new Hours(OPENS, CLOSES),
                        sold,
                        outs,
                        occasions,
                        rain ? List.of("rain") : List.of()));
    }

    private void item(
            int item,
            double today,
            Map<String, Integer> asked,
            List<Sold> sold,
            List<OutSpan> outs) {
        int all = 0;
        int[] bins = new int[BINS];
        for (int b = 0; b < BINS; b++) {
            bins[b] = Dice.poisson(dice, today * SHARES[item] * curve[b]);
            all += bins[b];
        }
        double expected = level * SHARES[item];
        boolean short0 = group == Group.SELL_OUTS && dice.nextDouble() < 0.6;
        int stock = short0 ? (int) (expected * (0.7 + 0.4 * dice.nextDouble())) : all;
        int left = stock;
        for (int b = 0; b < BINS; b++) {
            for (int piece = 0; piece < bins[b]; piece++) {
                List<String> modifiers = modifiers(item);
                modifiers.forEach(name -> asked.merge(name, 1, Integer::sum));
                if (left > 0) {
                    left--;
                    int bin = OPENS / BIN_MINUTES + b;
                    sold.add(new Sold(bin, ITEMS[item], "", modifiers, 1));
                    if (left == 0 && stock < all) {
                        int from = (bin * BIN_MINUTES) + 1 + dice.nextInt(BIN_MINUTES - 1);
                        outs.add(new OutSpan(ITEMS[item], from, CLOSES));
                    }
                }
            }
        }
        asked.merge(ITEMS[item], all, Integer::sum);
    }

    private List<String> modifiers(int item) {
        List<String> modifiers = new ArrayList<>();
        if (item == 0 || item == 2) {
            if (dice.nextDouble() < dipped) {
                modifiers.add("dipped");
            }
            if (dice.nextDouble() < HOT) {
                modifiers.add("hot");
            }
        }
        return modifiers;
    }

    private void move() {
        switch (group) {
            case STEADY, SPARSE, SELL_OUTS -> level *= Math.exp(0.004 * dice.nextGaussian());
            case DRIFTING -> {
                growth = 0.97 * growth + 0.0012 * dice.nextGaussian();
                level *= Math.exp(growth + 0.01 * dice.nextGaussian());
                level = Math.max(60, Math.min(900, level));
                dipped = Math.min(0.7, dipped + 0.0006);
            }
            case BROKEN -> {
                level *= Math.exp(0.004 * dice.nextGaussian());
                if (dice.nextDouble() < 0.008) {
                    level *= dice.nextBoolean() ? 1.3 : 0.75;
                    level = Math.max(80, Math.min(600, level));
                }
            }
        }
    }
}
