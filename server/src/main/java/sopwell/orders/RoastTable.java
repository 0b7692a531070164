package sopwell.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How long a whole roast of beef is held at what temperature inside. Which table holds is for a
 * stand and its inspector to say. Immutable.
 *
 * @param name what the settings call it
 * @param source whose table it is
 * @param rows rising in temperature and falling in time; at least one
 */
public record RoastTable(String name, String source, List<Row> rows) {
    private static final int FULL_FROM_F = 130;

    public RoastTable {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param f degrees Fahrenheit, in all parts of the roast
     * @param seconds how long it is held there at least; 0 for reaching it
     */
    public record Row(int f, int seconds) {}

    /** FDA Food Code 2022, 3-401.11(B)(2), as Florida and Alaska (18 AAC 31.232) have it. */
    public static final RoastTable FOOD_CODE =
            new RoastTable(
                    "food-code",
                    "FDA Food Code 2022, 3-401.11(B)",
                    List.of(
                            minutes(130, 112),
                            minutes(131, 89),
                            minutes(133, 56),
                            minutes(135, 36),
                            minutes(136, 28),
                            minutes(138, 18),
                            minutes(140, 12),
                            minutes(142, 8),
                            minutes(144, 5),
                            minutes(145, 4),
                            new Row(147, 134),
                            new Row(149, 85),
                            new Row(151, 54),
                            new Row(153, 34),
                            new Row(155, 22),
                            new Row(157, 14),
                            new Row(158, 0)));

    /** USDA FSIS Appendix A (1999), the column for a 6.5-log reduction of Salmonella. */
    public static final RoastTable LOG_6_5 =
            new RoastTable(
                    "6.5-log",
                    "USDA FSIS Appendix A (1999), 6.5-log",
                    full(
                            new int[] {
                                112, 89, 71, 56, 45, 36, 28, 23, 18, 15, 12, 9, 8, 6, 5, 4, 169,
                                134, 107, 85, 67, 54, 43, 34, 27, 22, 17, 14, 0, 0, 0
                            }));

    /** The same appendix, the column for a 7-log reduction; New York has it for roasts. */
    public static final RoastTable LOG_7 =
            new RoastTable(
                    "7-log",
                    "USDA FSIS Appendix A (1999), 7-log; 1 NYCRR 271-2.10",
                    full(
                            new int[] {
                                121, 97, 77, 62, 47, 37, 32, 24, 19, 15, 12, 10, 8, 6, 5, 4, 182,
                                144, 115, 91, 72, 58, 46, 37, 29, 23, 19, 15, 0, 0, 0
                            }));

    /** The published tables that settings can name. */
    public static final List<RoastTable> PUBLISHED = List.of(FOOD_CODE, LOG_6_5, LOG_7);

    /** The published table of a name. */
    public static Optional<RoastTable> published(String name) {
        return PUBLISHED.stream().filter(table -> table.name().equals(name)).findFirst();
    }

    private static Row minutes(int f, int minutes) {
        return new Row(f, minutes * 60);
    }

    /** The appendix's rows, degree by degree: minutes up to 145, seconds above. */
    private static List<Row> full(int[] held) {
        List<Row> rows = new ArrayList<>();
        for (int f = FULL_FROM_F; f < FULL_FROM_F + held.length; f++) {
            int time = held[f - FULL_FROM_F];
            rows.add(f <= 145 ? minutes(f, time) : new Row(f, time));
        }
        return rows;
    }
}
