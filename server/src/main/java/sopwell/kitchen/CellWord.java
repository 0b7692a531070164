package sopwell.kitchen;

import sopwell.menu.LocalText;

/** One word in a cell of the build board. Immutable. */
public record CellWord(Tone tone, LocalText text) {
    /** How loud a word is. */
    public enum Tone {
        /** What the house does anyway. */
        QUIET,
        /** What this guest wants otherwise. */
        STRONG,
        /** What this guest must not get; the text is the thing refused. */
        NO
    }
}
