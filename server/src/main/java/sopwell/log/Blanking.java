package sopwell.log;

import sopwell.Check;

/**
 * Where in the log people's names are to be taken out. Immutable.
 *
 * @param fromSeq the first place, from 1
 * @param toSeq the last place
 * @param order the id of the one order that is meant, or empty for all that stands there
 */
public record Blanking(long fromSeq, long toSeq, String order, Renaming names) {
    public Blanking {
        Check.that(fromSeq >= 1 && toSeq >= fromSeq, "names are taken out of a range");
    }
}
