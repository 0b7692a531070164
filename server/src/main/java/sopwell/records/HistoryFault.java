package sopwell.records;

import java.nio.file.Path;

/** An owner's old records can't be read: says where, what is wrong, and what would be right. */
public final class HistoryFault extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * Something in a file is wrong.
     *
     * @param line from 1; 0 for the file as a whole
     * @param column the column's name, or empty
     */
    HistoryFault(Path file, int line, String column, String sentence) {
        super(
                file.getFileName()
                        + (line > 0 ? ", line " + line : "")
                        + (column.isEmpty() ? "" : ", column " + column)
                        + ": "
                        + sentence);
    }
}
