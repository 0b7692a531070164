package sopwell.orders;

/**
 * The limits that cautions name: settings, because States adopt different editions of a model code,
 * and what the stand's own health department says comes first. Immutable.
 *
 * @param source whose limits these are, with the edition
 * @param reheatF to how much food is reheated that is then held hot, degrees Fahrenheit
 * @param reheatSeconds how long it stays there
 * @param reheatHours within how long it gets there
 * @param holdF how hot it is held at least, degrees Fahrenheit
 * @param holdRoastF how hot a roast is held at least that was cooked or reheated by a roast's table
 * @param slicerYears how old somebody must be to work with a slicer
 * @param slicerCleanHours how often a slicer in use is cleaned at least
 * @param food the limits that cooling, roasting, holding and dating are watched by
 */
public record Safety(
        String source,
        int reheatF,
        int reheatSeconds,
        int reheatHours,
        int holdF,
        int holdRoastF,
        int slicerYears,
        int slicerCleanHours,
        FoodLimits food) {
    /**
     * FDA Food Code 2022, 3-403.11 (reheating), 3-501.16 (hot holding), 4-602.11(C) (slicer), as
     * States adopted these sections; the slicer's age is 29 CFR 570.61.
     */
    public static final Safety USUAL =
            new Safety("FDA Food Code 2022", 165, 15, 2, 135, 130, 18, 4, FoodLimits.USUAL);
}
