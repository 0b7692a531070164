package sopwell.orders;

import java.util.List;

/**
 * The limits that the clocks of cooling, holding, roasting and dating go by: settings, because
 * States adopt different editions of a model code. Temperatures in whole degrees Fahrenheit, times
 * in minutes. Immutable.
 *
 * @param coldF how cold food is held at most
 * @param warnMinutes how long before a limit a clock asks for something to be done
 * @param celsius whether screens write degrees Celsius; limits stay as they were published
 */
public record FoodLimits(
        Cooling cooling,
        int coldF,
        Dating dating,
        TimeControl time,
        RoastTable roast,
        List<Oven> ovens,
        int largeFromGrams,
        int warnMinutes,
        boolean celsius) {
    public FoodLimits {
        ovens = List.copyOf(ovens);
    }

    /**
     * Two-stage cooling, and cooling of what was made from ingredients at room temperature.
     *
     * @param fromF where the clock starts
     * @param middleF what is reached within {@code middleMinutes}; missing it is a failure
     * @param toF what is reached within {@code totalMinutes}, counted from the same start
     * @param ambientMinutes within how long food made at room temperature reaches {@code toF}
     */
    public record Cooling(
            int fromF,
            int middleF,
            int middleMinutes,
            int toF,
            int totalMinutes,
            int ambientMinutes) {}

    /**
     * How long cold food is kept, in days of which the day of preparation is the first.
     *
     * @param keepDays ready-to-eat food
     * @param oilDays vegetables under oil: the stand's own, shorter limit
     * @param oilSource where that one comes from
     */
    public record Dating(int keepDays, int oilDays, String oilSource) {}

    /**
     * Time alone as a control, from hot or cold holding to discarding.
     *
     * @param shortMinutes without watching the temperature
     * @param longMinutes when it starts cold and never gets above {@code longMaxF}
     */
    public record TimeControl(int shortMinutes, int longMinutes, int longMaxF) {}

    /** Kinds of oven that limits differ for. */
    public enum OvenKind {
        /** Still dry air. */
        DRY,
        /** Fan-driven dry air. */
        CONVECTION,
        /** More than 90 % humidity for an hour or more, or a bag that keeps all moisture in. */
        HUMID
    }

    /**
     * How hot an oven must be for a roast: at least; a humid one at most.
     *
     * @param smallF for a roast below the large weight
     * @param largeF for one of it or more
     */
    public record Oven(OvenKind kind, int smallF, int largeF) {}

    /**
     * FDA Food Code 2022: 3-501.14(A) and (B) cooling, 3-501.16(A)(2) cold holding, 3-501.17 date
     * marking, 3-501.19(B) and (C) time as a control, 3-401.11(B) roasts and ovens (10 lb is 4,536
     * g), as States adopted these sections. Vegetables under oil: the shortest that several
     * extension services teach is 2 days and the longest 10; 4 days is PNW 664's. When a clock asks
     * to act is the stand's own choice.
     */
    public static final FoodLimits USUAL =
            new FoodLimits(
                    new Cooling(135, 70, 120, 41, 360, 240),
                    41,
                    new Dating(7, 4, "PNW 664, vegetables in oil"),
                    new TimeControl(240, 360, 70),
                    RoastTable.FOOD_CODE,
                    List.of(
                            new Oven(OvenKind.DRY, 350, 250),
                            new Oven(OvenKind.CONVECTION, 325, 250),
                            new Oven(OvenKind.HUMID, 250, 250)),
                    4_536,
                    30,
                    false);
}
