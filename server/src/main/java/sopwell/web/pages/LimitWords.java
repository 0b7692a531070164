package sopwell.web.pages;

import sopwell.orders.FoodLimits.Cooling;
import sopwell.orders.Safety;
import sopwell.stock.recipes.Watch;
import sopwell.stock.safety.Temperature;

/** The limits that a step is watched by, in a sentence with their source. Stateless. */
final class LimitWords {
    private static final int MINUTES_HOUR = 60;

    private LimitWords() {}

    static String of(Watch watch, StockWords words) {
        Safety safety = words.safety();
        Cooling cooling = safety.food().cooling();
        String key = "limit." + watch.name();
        return switch (watch) {
            case NONE -> "";
            case COOK_ROAST -> words.t().of(key, safety.food().roast().source());
            case COOL ->
                    words.t()
                            .of(
                                    key,
                                    f(words, cooling.fromF()),
                                    f(words, cooling.middleF()),
                                    hours(cooling.middleMinutes()),
                                    f(words, cooling.toF()),
                                    hours(cooling.totalMinutes()),
                                    safety.source());
            case CHILL ->
                    words.t()
                            .of(
                                    key,
                                    f(words, cooling.toF()),
                                    hours(cooling.ambientMinutes()),
                                    safety.source());
            case REHEAT ->
                    words.t()
                            .of(
                                    key,
                                    f(words, safety.reheatF()),
                                    safety.reheatSeconds(),
                                    safety.reheatHours(),
                                    safety.source());
            case HOT_HOLD ->
                    words.t()
                            .of(
                                    key,
                                    f(words, safety.holdF()),
                                    f(words, safety.holdRoastF()),
                                    safety.source());
            case COLD_HOLD, MATURE ->
                    words.t()
                            .of(
                                    "limit.COLD_HOLD",
                                    f(words, safety.food().coldF()),
                                    safety.source());
        };
    }

    private static String f(StockWords words, int degrees) {
        return words.degrees(Temperature.fahrenheit(degrees));
    }

    private static String hours(int minutes) {
        return minutes % MINUTES_HOUR == 0 ? minutes / MINUTES_HOUR + " h" : minutes + " min";
    }
}
