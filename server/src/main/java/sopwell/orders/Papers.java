package sopwell.orders;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * How often each paper of the newest day was made, so that a further one says that it is a copy.
 * Not thread-safe: its owner is one thread.
 */
public final class Papers {
    /** The guest's slip; every other paper is named by its station. */
    public static final String SLIP = "slip";

    private final Map<String, Integer> made = new HashMap<>();
    private LocalDate date;

    /** Takes in that a paper was made; never refuses. */
    public void apply(PaperEvent event) {
        PaperEvent.PaperPrinted printed = (PaperEvent.PaperPrinted) event;
        made.merge(key(printed.order(), printed.paper()), 1, Integer::sum);
    }

    /** Takes in what happened to the day; never refuses. */
    public void apply(OrderEvent event) {
        if (event instanceof OrderEvent.DayOpened opened && !opened.date().equals(date)) {
            date = opened.date();
            made.clear();
        }
    }

    /** How many of a paper were made. */
    public int made(String order, String paper) {
        return made.getOrDefault(key(order, paper), 0);
    }

    private static String key(String order, String paper) {
        return order + " " + paper;
    }
}
