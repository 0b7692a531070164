package sopwell.web.pages;

import java.util.List;
import sopwell.prep.forecast.Why;
import sopwell.web.T;

/** What occasions and weather are called. Stateless. */
final class OccasionWords {
    /** The kinds of weather that an owner can say of a coming day. */
    static final List<String> WEATHER = List.of("rain", "storm", "snow", "cold", "heat");

    private static final String PREFIX = "weather: ";

    private OccasionWords() {}

    /** An occasion's name; weather is called what it is in this language. */
    static String name(T t, String name) {
        String kind = name.startsWith(PREFIX) ? name.substring(PREFIX.length()) : "";
        return WEATHER.contains(kind) ? t.under("weather", kind) : name;
    }

    /** What an occasion makes of a day, such as {@code rain −20 %}. */
    static String effect(T t, Why.Effect effect) {
        long percent = Math.round((effect.factor() - 1) * 100);
        String size = (percent < 0 ? "−" : "+") + Math.abs(percent) + " %";
        return name(t, effect.name())
                + (percent == 0 ? "" : " " + size)
                + (effect.chance() < 1 ? " (" + t.percent(effect.chance()) + ")" : "");
    }
}
