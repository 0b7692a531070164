package sopwell.prep.forecast;

import java.util.List;

/**
 * Where a day's total comes from: level × weekday × effects × hours. Immutable.
 *
 * @param basis what it rests on
 * @param days open days that were learned from
 * @param level pieces on a plain day
 * @param weekday what the weekday makes of it
 * @param effects occasions and weather, each with what it makes of the day
 * @param hours what the planned hours see of a day with the usual ones
 * @param exposure how much of the last seven open days was seen on average, 0 to 1: less than 1
 *     when something sold out
 * @param voices the speeds that are believed most, the first most
 */
public record Why(
        Basis basis,
        int days,
        double level,
        double weekday,
        List<Effect> effects,
        double hours,
        double exposure,
        List<Voice> voices) {
    public Why {
        effects = List.copyOf(effects);
        voices = List.copyOf(voices);
    }

    /** What a forecast rests on. */
    public enum Basis {
        /** Nothing is known: there is nothing to forecast. */
        NOTHING,
        /** The owner's guesses alone. */
        GUESSES,
        /** Fewer than fourteen open days. */
        FEW_DAYS,
        /** Days that were long ago: the stand was closed for four weeks or more. */
        LONG_AGO,
        /** Enough days. */
        DAYS
    }

    /**
     * What an occasion or a kind of weather makes of a day.
     *
     * @param name the occasion's, or {@code weather rain}
     * @param factor when it comes
     * @param chance that it comes, 0 to 1
     */
    public record Effect(String name, double factor, double chance) {}

    /**
     * One of the bank's speeds.
     *
     * @param levelDays after so many open days what was seen weighs half
     * @param weekdayWeeks the same for weekdays, in weeks
     * @param grows whether it follows a growth
     * @param weight how much it is believed, 0 to 1
     */
    public record Voice(double levelDays, double weekdayWeeks, boolean grows, double weight) {}
}
