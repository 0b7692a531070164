package sopwell.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sopwell.desk.DayBook;
import sopwell.desk.Follower;
import sopwell.desk.Stand;
import sopwell.mix.DayTally;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.orders.StandSettings;

/**
 * The tallies of any days, the newest as it stands now. Thread-safe.
 *
 * @param names what things that were sold are called
 */
public record Tallies(
        Follower follower, DayBook book, StandSettings settings, Supplier<Names> names) {
    /** The tallies of the business days between two dates, both included, oldest first. */
    public CompletableFuture<List<DayTally>> between(LocalDate from, LocalDate to) {
        return days(from, to, date -> true);
    }

    /** The tallies of the business days that were asked for, oldest first. */
    public CompletableFuture<List<DayTally>> of(AskedPeriod asked) {
        Period period = asked.period().orElseThrow();
        return days(period.from(), period.to(), asked::holds);
    }

    private CompletableFuture<List<DayTally>> days(
            LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        return follower.ask(Tallies::newest)
                .thenApplyAsync(
                        newest -> {
                            List<DayTally> days = new ArrayList<>(book.days(from, to, which));
                            newest.filter(day -> !day.date().isBefore(from))
                                    .filter(day -> !day.date().isAfter(to))
                                    .filter(day -> which.test(day.date()))
                                    .ifPresent(days::add);
                            return days;
                        });
    }

    /** The tallies of single dates, oldest first; dates without a business day are left out. */
    public CompletableFuture<List<DayTally>> of(List<LocalDate> dates) {
        return follower.ask(Tallies::newest)
                .thenApplyAsync(
                        newest -> {
                            List<DayTally> days = new ArrayList<>(book.days(dates));
                            newest.filter(day -> dates.contains(day.date())).ifPresent(days::add);
                            return days;
                        });
    }

    /** The waits of the business days that were asked for, oldest first. */
    public CompletableFuture<List<WaitTally>> waits(AskedPeriod asked) {
        Period period = asked.period().orElseThrow();
        return follower.ask(Tallies::newestWaits)
                .thenApplyAsync(
                        newest -> {
                            List<WaitTally> days =
                                    new ArrayList<>(
                                            book.waits(period.from(), period.to(), asked::holds));
                            newest.filter(day -> !day.date().isBefore(period.from()))
                                    .filter(day -> !day.date().isAfter(period.to()))
                                    .filter(day -> asked.holds(day.date()))
                                    .ifPresent(days::add);
                            return days;
                        });
    }

    /** The waits of single dates, oldest first; dates without a business day are left out. */
    public CompletableFuture<List<WaitTally>> waits(List<LocalDate> dates) {
        return follower.ask(Tallies::newestWaits)
                .thenApplyAsync(
                        newest -> {
                            List<WaitTally> days = new ArrayList<>(book.waits(dates));
                            newest.filter(day -> dates.contains(day.date())).ifPresent(days::add);
                            return days;
                        });
    }

    private static Optional<WaitTally> newestWaits(Stand stand) {
        return stand.orders().date().map(date -> DayBook.waits(stand));
    }

    private static Optional<DayTally> newest(Stand stand) {
        return stand.orders().date().map(date -> DayBook.mix(stand));
    }
}
