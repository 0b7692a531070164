package sopwell.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import sopwell.menu.Out;

/**
 * What an invented day is to be like. Immutable.
 *
 * @param orders how many guests come, about; 0 when the stand stays closed
 * @param dipped how likely a guest has a sandwich dipped who has no other wish, 0 to 1
 * @param rain whether it rains: fewer drinks, more to go
 * @param shortage what runs out, if anything
 */
public record HistoryDay(
        LocalDate date, int orders, double dipped, boolean rain, Optional<Shortage> shortage) {
    /**
     * Something that runs out.
     *
     * @param at when, by the stand's clock
     * @param minutes for how long, or 0 for the rest of the day
     */
    public record Shortage(Out out, LocalTime at, int minutes) {}
}
