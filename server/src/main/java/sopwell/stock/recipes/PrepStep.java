package sopwell.stock.recipes;

import java.util.Optional;
import sopwell.menu.LocalText;

/**
 * One step of making something. Immutable.
 *
 * @param id unique within its recipe
 * @param minutes how long one run of it takes on the clock, however many lots are in it
 * @param minWaitMinutes how long the next step waits at least after this one ends
 * @param maxWaitMinutes how long the next step waits at most; 0 when that does not matter
 * @param resource what it occupies meanwhile, if anything
 * @param slotsPerLot how many slots of that resource one lot occupies; 0 without a resource
 * @param startAttended whether somebody must be there when it starts
 * @param endAttended whether somebody must be there when it ends
 * @param handsMinutes how long one lot keeps a pair of hands busy; within {@code minutes}
 * @param watch which temperatures are watched meanwhile
 */
public record PrepStep(
        String id,
        LocalText name,
        int minutes,
        int minWaitMinutes,
        int maxWaitMinutes,
        Optional<String> resource,
        int slotsPerLot,
        boolean startAttended,
        boolean endAttended,
        int handsMinutes,
        Watch watch) {}
