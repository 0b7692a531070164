package sopwell.stock.larder;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import sopwell.Limits;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.stock.safety.Temperature;

/** Reads temperatures that people typed. Stateless. */
final class Degrees {
    private static final Pattern DEGREES = Pattern.compile("-?[0-9]{1,3}(\\.[0-9])?");

    private Degrees() {}

    /** The temperature that was typed, with a point or a comma, if it is one that food can have. */
    static Optional<Temperature> read(String degrees, boolean celsius) {
        String text = degrees.strip().replace('−', '-').replace(',', '.');
        if (!DEGREES.matcher(text).matches()) {
            return Optional.empty();
        }
        int tenths = new BigDecimal(text).movePointRight(1).intValueExact();
        Temperature read = celsius ? Temperature.tenthsC(tenths) : Temperature.tenthsF(tenths);
        boolean can =
                read.isAtLeast(Limits.FOOD_LEAST_FAHRENHEIT)
                        && read.isAtMost(Limits.FOOD_MOST_FAHRENHEIT);
        return can ? Optional.of(read) : Optional.empty();
    }

    /** What is wrong with one that can't be read. */
    static Refusal refusal(String degrees, boolean celsius) {
        Temperature least = Temperature.fahrenheit(Limits.FOOD_LEAST_FAHRENHEIT);
        Temperature most = Temperature.fahrenheit(Limits.FOOD_MOST_FAHRENHEIT);
        return Refusal.of(
                Reason.TEMPERATURE_RANGE,
                degrees,
                (celsius ? least.inTenthsC() : least.inTenthsF()) / 10,
                (celsius ? most.inTenthsC() : most.inTenthsF()) / 10,
                celsius ? "C" : "F");
    }
}
