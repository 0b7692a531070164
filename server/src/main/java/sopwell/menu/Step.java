package sopwell.menu;

import java.util.List;

/**
 * One piece of work at a station. The order of a menu's steps is the order of assembly. Immutable.
 *
 * @param station the station that does it
 * @param shows what a cook must read to do it, in this order
 * @param seconds how long it takes one hand, 0 to 3,600, until the stand's own log knows better
 */
public record Step(String id, LocalText name, String station, List<Show> shows, int seconds) {
    public Step {
        shows = List.copyOf(shows);
    }

    /** What kind of word a step shows. */
    public enum What {
        ITEM,
        SIZE,
        SERVICE,
        GROUP
    }

    /**
     * One source of words for a step.
     *
     * @param group the modifier group, for {@link What#GROUP}; otherwise empty
     */
    public record Show(What what, String group) {}

    /** Whether the step exists only because of a choice: nothing chosen, nothing to do. */
    public boolean onlyForChoices() {
        for (Show show : shows) {
            if (show.what() != What.GROUP) {
                return false;
            }
        }
        return true;
    }

    /** Whether the step shows a modifier group. */
    public boolean showsGroup(String group) {
        for (Show show : shows) {
            if (show.what() == What.GROUP && show.group().equals(group)) {
                return true;
            }
        }
        return false;
    }
}
