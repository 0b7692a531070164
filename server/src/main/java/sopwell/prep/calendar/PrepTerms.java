package sopwell.prep.calendar;

import java.time.LocalTime;
import sopwell.Check;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Resource;

/**
 * The numbers that the owner has set for the plan. Immutable.
 *
 * @param goodwillCents what a guest who does not get what was asked for costs beside the margin
 * @param withoutPercent how much of a sandwich's margin is lost when only a modifier's ingredient
 *     is missing: some guests leave, others take it without
 * @param nightPerMille what keeping something for a night costs, in thousandths of its price
 * @param guessPieces pieces a day that are taken as long as nothing was sold and nothing guessed
 * @param opens when the stand opens as long as no day shows it
 * @param deliveredBy until when suppliers have come
 * @param hands how many pairs of hands prepare at the same time; 0 for what the book of recipes
 *     says, or {@link #HANDS_USUAL}
 */
public record PrepTerms(
        int goodwillCents,
        int withoutPercent,
        int nightPerMille,
        int guessPieces,
        LocalTime opens,
        LocalTime deliveredBy,
        int hands) {
    /** Pairs of hands where neither the owner nor the book of recipes says how many. */
    public static final int HANDS_USUAL = 2;

    /** Sopwell's own choice, for a stand that has set nothing. */
    public static final PrepTerms USUAL =
            new PrepTerms(50, 20, 2, 200, LocalTime.of(10, 30), LocalTime.of(9, 0), 0);

    public PrepTerms {
        Check.that(
                goodwillCents >= 0 && withoutPercent >= 0 && nightPerMille >= 0,
                "costs are 0 or more");
        Check.that(guessPieces >= 0 && hands >= 0, "a guess is 0 or more, and so are hands");
    }

    /** Whether the book means the hands by this, which steps take beside ovens and benches. */
    public static boolean isHands(Resource resource) {
        return resource.id().equals("hands");
    }

    /** How many pairs of hands there are by the book, or by Sopwell's own choice. */
    public static int handsOf(RecipeBook book) {
        return book.resources().stream()
                .filter(PrepTerms::isHands)
                .mapToInt(Resource::slots)
                .findFirst()
                .orElse(HANDS_USUAL);
    }

    /** The same with so many pairs of hands. */
    public PrepTerms withHands(int others) {
        return new PrepTerms(
                goodwillCents,
                withoutPercent,
                nightPerMille,
                guessPieces,
                opens,
                deliveredBy,
                others);
    }
}
