package sopwell.prep.quantity;

import java.math.BigDecimal;
import sopwell.Check;

/**
 * What a wrong quantity costs, for one unit and in cents, exact. Immutable.
 *
 * @param shortage what one unit too few costs: the margin it would have earned, above 0
 * @param waste what one unit too many costs that is thrown away, from 0
 * @param night what keeping one unit for a night costs, from 0
 */
public record Stakes(BigDecimal shortage, BigDecimal waste, BigDecimal night) {
    public Stakes {
        Check.that(
                shortage.signum() > 0 && waste.signum() >= 0 && night.signum() >= 0,
                "a shortage costs something, and waste and keeping cost nothing at least");
    }

    /** Of a thing that is sold on its one day. */
    public static Stakes oneDay(String shortage, String waste) {
        return new Stakes(new BigDecimal(shortage), new BigDecimal(waste), BigDecimal.ZERO);
    }

    /** Cu / (Cu + Co): the probability with which it should suffice. */
    public double fractile() {
        return shortage.doubleValue() / shortage.add(waste).doubleValue();
    }

    /** Whether {@code part} of {@code whole} reaches the fractile, exactly. */
    boolean isReachedBy(long part, long whole) {
        return BigDecimal.valueOf(part)
                        .multiply(shortage.add(waste))
                        .compareTo(BigDecimal.valueOf(whole).multiply(shortage))
                >= 0;
    }
}
