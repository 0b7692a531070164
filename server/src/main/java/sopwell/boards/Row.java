package sopwell.boards;

/** One row of any board. Rows that are equal look alike, so only unequal ones are sent again. */
public interface Row {
    /** Names the row on its board for as long as it is there; letters, digits, dots, hyphens. */
    String rowId();
}
