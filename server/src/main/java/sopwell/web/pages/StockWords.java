package sopwell.web.pages;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sopwell.orders.Safety;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Unit;
import sopwell.stock.safety.Standing;
import sopwell.stock.safety.Temperature;
import sopwell.web.T;

/**
 * Amounts, temperatures and clocks in one language. Immutable.
 *
 * @param zone the stand's, for times of day
 */
public record StockWords(T t, ZoneId zone, Safety safety) {
    private static final int MINUTES_HOUR = 60;
    private static final int THOUSAND_DIGITS = 3;
    private static final int TENTHS = 10;

    /** A little of a large unit is told by its first digit: nothing is 0 that is there. */
    private static final MathContext ONE_DIGIT = new MathContext(1, RoundingMode.HALF_UP);

    /** An amount in the unit that people here count the ingredient in, such as {@code 12.5 lb}. */
    public String amount(Ingredient ingredient, long thousandths) {
        Unit unit = ingredient.unit();
        BigDecimal base = BigDecimal.valueOf(thousandths, THOUSAND_DIGITS);
        BigDecimal shown = base.divide(unit.inBase(), 1, RoundingMode.HALF_UP);
        if (shown.signum() == 0 && thousandths != 0) {
            shown = base.divide(unit.inBase(), ONE_DIGIT);
        }
        String id = Measures.id(unit);
        boolean isOne = shown.compareTo(BigDecimal.ONE) == 0 && t.has("measure." + id + ".one");
        String name = isOne ? t.get("measure." + id + ".one") : unit(ingredient, id);
        return shown.stripTrailingZeros().toPlainString() + " " + name;
    }

    /** The same with its sign: what is too much, or missing. */
    public String difference(Ingredient ingredient, long thousandths) {
        String amount = amount(ingredient, Math.abs(thousandths));
        return thousandths == 0 ? t.get("stock.same") : (thousandths < 0 ? "−" : "+") + amount;
    }

    /** What a unit or a container is called. */
    public String unit(Ingredient ingredient, String unit) {
        Optional<Container> container = ingredient.container(unit);
        return container.isPresent() ? t.local(container.get().name()) : t.under("measure", unit);
    }

    /** What an ingredient may be counted in. */
    public List<String> units(Ingredient ingredient) {
        return Measures.units(ingredient);
    }

    /** A temperature in the unit that the stand has set. */
    public String degrees(Temperature temperature) {
        boolean celsius = safety.food().celsius();
        int tenths = celsius ? temperature.inTenthsC() : temperature.inTenthsF();
        BigDecimal shown = BigDecimal.valueOf(tenths, 1);
        String number =
                tenths % TENTHS == 0 ? shown.setScale(0).toPlainString() : shown.toPlainString();
        return number.replace('-', '−') + (celsius ? " °C" : " °F");
    }

    /** How long something lasts, such as {@code 1 h 05 min}. */
    public String lasting(long ms) {
        long minutes = ms / 60_000;
        return minutes < MINUTES_HOUR
                ? t.of("stock.minutes", minutes)
                : t.of(
                        "stock.hours",
                        minutes / MINUTES_HOUR,
                        String.format(Locale.ROOT, "%02d", minutes % MINUTES_HOUR));
    }

    /** A time of day at the stand. */
    public String time(long ms) {
        return t.time(ms, zone);
    }

    /** What to do by a clock, such as {@code Ice bath …: 70 °F by 15:10}. */
    public String advice(Standing standing) {
        return t.of(
                "advice." + standing.advice().name(),
                standing.target().map(this::degrees).orElse(""),
                standing.byMs() == 0 ? "" : time(standing.byMs()),
                safety.reheatSeconds());
    }
}
