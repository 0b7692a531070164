package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What may be particular about days, by number: occasions and kinds of weather; with what is
 * expected of one that was not seen yet. Not thread-safe.
 */
final class Features {
    private static final double KIND_DAYS = 2;
    private static final double KEEP = 0.998;
    private static final double CLIMATE_KEEP = 0.97;
    private static final double CLIMATE_DAYS = 5;
    private static final double CLIMATE_START = 0.15;

    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final Map<String, double[]> kinds = new HashMap<>();
    private final Map<String, double[]> climate = new TreeMap<>();
    private final Map<LocalDate, List<Outlook>> outlooks = new HashMap<>();
    private final Priors priors;

    Features(Priors priors) {
        this.priors = priors;
    }

    /** Hears weather forecasts; which of them count is decided by their day of issue. */
    void hear(List<Outlook> issued) {
        for (Outlook outlook : issued) {
            outlooks.computeIfAbsent(outlook.date(), date -> new ArrayList<>()).add(outlook);
        }
    }

    String name(int feature) {
        return names.get(feature);
    }

    /** What a day was like, as it turned out. */
    Known observed(PastDay day, double hours) {
        Gathered found = new Gathered();
        occasions(day.occasions(), found);
        for (String kind : new TreeSet<>(day.weather())) {
            found.add(number("weather " + kind), 1);
        }
        return found.known(hours);
    }

    /** What a day will be like, as it was known at the end of another day. */
    Known expected(LocalDate date, List<Occasion> occasions, LocalDate asOf, double hours) {
        Gathered found = new Gathered();
        occasions(occasions, found);
        Map<String, Outlook> newest = new TreeMap<>();
        Set<String> everIssued = new HashSet<>();
        for (Outlook outlook : outlooks.getOrDefault(date, List.of())) {
            if (!outlook.issued().isAfter(asOf)) {
                everIssued.add(outlook.kind());
                newest.merge(
                        outlook.kind(),
                        outlook,
                        (had, next) -> next.issued().isBefore(had.issued()) ? had : next);
            }
        }
        for (Map.Entry<String, double[]> kind : climate.entrySet()) {
            Outlook outlook = newest.get(kind.getKey());
            double holds =
                    outlook != null
                            ? outlook.probability()
                            : everIssued.isEmpty() ? usually(kind.getValue()) : 0;
            if (holds > 0) {
                found.add(number("weather " + kind.getKey()), holds);
            }
        }
        return found.known(hours);
    }

    /**
     * Learns how often a kind of weather comes, and what kinds of occasions make of days.
     *
     * @param level pieces on a plain day
     * @param mean what the day would have sold on average without its occasions
     */
    void learn(PastDay day, double count, double level, double mean) {
        for (String kind : day.weather()) {
            climate.computeIfAbsent(kind, some -> new double[2]);
        }
        for (Map.Entry<String, double[]> kind : climate.entrySet()) {
            double[] seen = kind.getValue();
            seen[0] = CLIMATE_KEEP * seen[0] + (day.weather().contains(kind.getKey()) ? 1 : 0);
            seen[1] = CLIMATE_KEEP * seen[1] + 1;
        }
        for (Occasion occasion : day.occasions()) {
            if (!occasion.kind().isEmpty()) {
                double[] sums = kinds.computeIfAbsent(occasion.kind(), kind -> new double[2]);
                sums[0] = KEEP * sums[0] + count / Math.max(level, 1e-9);
                sums[1] = KEEP * sums[1] + mean / Math.max(level, 1e-9);
            }
        }
    }

    private static double usually(double[] seen) {
        return (seen[0] + CLIMATE_START * CLIMATE_DAYS) / (seen[1] + CLIMATE_DAYS);
    }

    private void occasions(List<Occasion> occasions, Gathered found) {
        TreeMap<String, Occasion> once = new TreeMap<>();
        occasions.forEach(occasion -> once.merge(occasion.name(), occasion, Features::guessed));
        for (Occasion occasion : once.values()) {
            int feature = number(occasion.name());
            if (occasion.guess() > 0) {
                priors.setEffect(feature, occasion.guess());
            } else if (kinds.containsKey(occasion.kind())) {
                double[] sums = kinds.get(occasion.kind());
                priors.setEffect(feature, (sums[0] + KIND_DAYS) / (sums[1] + KIND_DAYS));
            }
            found.add(feature, 1);
        }
    }

    private static Occasion guessed(Occasion one, Occasion other) {
        return one.guess() > 0 ? one : other;
    }

    private int number(String name) {
        return numbers.computeIfAbsent(
                name,
                fresh -> {
                    names.add(fresh);
                    return names.size() - 1;
                });
    }

    /** Features while they are gathered. */
    private static final class Gathered {
        private final List<Integer> features = new ArrayList<>();
        private final List<Double> holds = new ArrayList<>();

        void add(int feature, double surely) {
            features.add(feature);
            holds.add(surely);
        }

        Known known(double hours) {
            if (features.isEmpty() && hours == 1) {
                return Known.NOTHING;
            }
            return Known.of(
                    features.stream().mapToInt(Integer::intValue).toArray(),
                    holds.stream().mapToDouble(Double::doubleValue).toArray(),
                    hours);
        }
    }
}
