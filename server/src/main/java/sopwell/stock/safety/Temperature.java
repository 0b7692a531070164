package sopwell.stock.safety;

/**
 * A temperature. Hundredths of a degree Fahrenheit hold every tenth of a degree Fahrenheit and
 * every tenth of a degree Celsius exactly: a tenth Celsius is 0.18 °F. Immutable.
 *
 * @param hundredthsF hundredths of a degree Fahrenheit
 */
public record Temperature(int hundredthsF) implements Comparable<Temperature> {
    private static final int FREEZING_HUNDREDTHS_F = 3_200;
    private static final int TENTH_CELSIUS = 18;

    /** Whole degrees Fahrenheit. */
    public static Temperature fahrenheit(int degrees) {
        return new Temperature(degrees * 100);
    }

    /** Tenths of a degree Fahrenheit. */
    public static Temperature tenthsF(int tenths) {
        return new Temperature(tenths * 10);
    }

    /** Tenths of a degree Celsius. */
    public static Temperature tenthsC(int tenths) {
        return new Temperature(tenths * TENTH_CELSIUS + FREEZING_HUNDREDTHS_F);
    }

    /** In tenths of a degree Fahrenheit, the nearest; halves go up. */
    public int inTenthsF() {
        return Math.floorDiv(hundredthsF + 5, 10);
    }

    /** In tenths of a degree Celsius, the nearest; halves go up. */
    public int inTenthsC() {
        return Math.floorDiv(
                hundredthsF - FREEZING_HUNDREDTHS_F + TENTH_CELSIUS / 2, TENTH_CELSIUS);
    }

    /** Whether it is so hot or hotter. */
    public boolean isAtLeast(int degreesF) {
        return hundredthsF >= degreesF * 100;
    }

    /** Whether it is so cold or colder. */
    public boolean isAtMost(int degreesF) {
        return hundredthsF <= degreesF * 100;
    }

    @Override
    public int compareTo(Temperature other) {
        return Integer.compare(hundredthsF, other.hundredthsF);
    }
}
