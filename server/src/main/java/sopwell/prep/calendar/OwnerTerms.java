package sopwell.prep.calendar;

/**
 * All that the owner has set for the plan. Immutable.
 *
 * @param numbers what holds for everything
 * @param kitchen what holds for a date, a weekday, an ingredient or a resource
 */
public record OwnerTerms(PrepTerms numbers, KitchenTerms kitchen) {
    /** Nothing was set. */
    public static final OwnerTerms USUAL = new OwnerTerms(PrepTerms.USUAL, KitchenTerms.NONE);

    OwnerTerms with(PrepTerms others) {
        return new OwnerTerms(others, kitchen);
    }

    OwnerTerms with(KitchenTerms others) {
        return new OwnerTerms(numbers, others);
    }
}
