package sopwell.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sopwell.desk.DayBook;
import sopwell.desk.Follower;
import sopwell.desk.Stand;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
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
    /** A day's figures, the newest as it stands now; empty when no day was opened on it. */
    public CompletableFuture<Optional<DayFigures>> figures(LocalDate date) {
        return follower.ask(
                        stand ->
                                stand.orders()
                                        .date()
                                        .filter(date::equals)
                                        .map(newest -> DayFigures.of(stand)))
                .thenApplyAsync(newest -> newest.or(() -> book.day(date).map(this::figures)));
    }

    private DayFigures figures(DayBook.Day day) {
        return DayFigures.of(day, settings.targetSeconds(), names.get());
    }

    /** The tallies of the business days between two dates, both included, oldest first. */
    public CompletableFuture<List<DayTally>> between(LocalDate from, LocalDate to) {
        return mixes(from, to, date -> true);
    }

    /** The tallies of the business days that were asked for, oldest first. */
    public CompletableFuture<List<DayTally>> of(AskedPeriod asked) {
        Period period = asked.period().orElseThrow();
        return mixes(period.from(), period.to(), asked::holds);
    }

    private CompletableFuture<List<DayTally>> mixes(
            LocalDate from, LocalDate to, Predicate<LocalDate> which) {
        return withNewest(
                isIn(from, to).and(which), DayBook::mix, () -> book.days(from, to, which));
    }

    /** The tallies of single dates, oldest first; dates without a business day are left out. */
    public CompletableFuture<List<DayTally>> of(List<LocalDate> dates) {
        return withNewest(dates::contains, DayBook::mix, () -> book.days(dates));
    }

    /** The waits of the business days that were asked for, oldest first. */
    public CompletableFuture<List<WaitTally>> waits(AskedPeriod asked) {
        Period period = asked.period().orElseThrow();
        return withNewest(
                isIn(period.from(), period.to()).and(asked::holds),
                DayBook::waits,
                () -> book.waits(period.from(), period.to(), asked::holds));
    }

    /** What did not go straight on the business days that were asked for, oldest first. */
    public CompletableFuture<List<ExceptionTally>> exceptions(AskedPeriod asked) {
        Period period = asked.period().orElseThrow();
        return withNewest(
                isIn(period.from(), period.to()).and(asked::holds),
                DayBook::exceptions,
                () -> book.exceptions(period.from(), period.to(), asked::holds));
    }

    private static Predicate<LocalDate> isIn(LocalDate from, LocalDate to) {
        return date -> !date.isBefore(from) && !date.isAfter(to);
    }

    /** The past days, and the newest only if it is wanted: it is counted each time. */
    private <A> CompletableFuture<List<A>> withNewest(
            Predicate<LocalDate> isWanted, Function<Stand, A> counting, Supplier<List<A>> past) {
        return follower.ask(
                        stand ->
                                stand.orders()
                                        .date()
                                        .filter(isWanted)
                                        .map(date -> counting.apply(stand)))
                .thenApplyAsync(
                        newest -> {
                            List<A> days = new ArrayList<>(past.get());
                            newest.ifPresent(days::add);
                            return days;
                        });
    }
}
