package sopwell.web.pages;

import java.util.List;

/**
 * One thing that is filled in or chosen on a form. Immutable.
 *
 * @param name the field's name, which is its id on the page too
 * @param value what stands in it; of a box that is ticked {@code on}
 * @param choices what may be chosen; empty where something is written
 * @param fault what is wrong with it, or empty
 */
public record EntryBox(
        String name, Kind kind, String label, String value, List<Choice> choices, String fault) {
    /** How it is filled in. */
    public enum Kind {
        TEXT,
        CHOICE,
        TICK,
        /** One of its group, all with the name up to the last dot; the rest is the value. */
        ONE_OF
    }

    /**
     * Something that may be chosen. Immutable.
     *
     * @param value what is sent
     */
    public record Choice(String value, String label) {}

    public boolean isTicked() {
        return !value.isEmpty();
    }

    /** The name that a group of which one is chosen shares. */
    public String group() {
        return name.substring(0, name.lastIndexOf('.'));
    }

    /** What is sent when this one of its group is chosen. */
    public String sent() {
        return name.substring(name.lastIndexOf('.') + 1);
    }
}
