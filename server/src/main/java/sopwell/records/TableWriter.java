package sopwell.records;

import java.io.IOException;
import java.util.List;

/**
 * Writes a table row by row. Cells are texts, whole numbers, {@link Plain} words such as dates and
 * amounts, or {@link #NONE} for what is not known. Not thread-safe.
 */
public interface TableWriter extends AutoCloseable {
    /** A cell of which nothing is known. */
    Plain NONE = new Plain("");

    /**
     * A date, a time, an amount or another word of ours, which needs no quotes.
     *
     * @param word letters, digits, points, colons, hyphens and blanks
     */
    record Plain(String word) {}

    /** Writes a row with as many cells as there are columns. */
    void row(List<Object> cells) throws IOException;

    /** Writes what is left. */
    @Override
    void close() throws IOException;
}
