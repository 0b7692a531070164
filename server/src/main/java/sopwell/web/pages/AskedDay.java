package sopwell.web.pages;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.Stand;
import sopwell.web.T;

/**
 * The business day that an address names, {@code today} or a date, and what was asked about it.
 * Immutable.
 *
 * @param status of the page, 200 or 404
 * @param found empty when there is no such day
 * @param sentence why there is nothing, or empty
 */
record AskedDay<A>(int status, LocalDate date, Optional<A> found, String sentence) {
    private static final String TODAY = "today";

    /**
     * Asks about the day.
     *
     * @param newest asks the newest day, which is what {@code today} means
     * @param past asks any date
     */
    static <A> AskedDay<A> of(
            Ask ask,
            PageContext context,
            Function<Stand, A> newest,
            Function<LocalDate, CompletableFuture<Optional<A>>> past)
            throws PageHandling.Interrupted {
        T t = ask.screen().t();
        LocalDate now = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        String written = ask.in("date");
        if (isToday(ask)) {
            Optional<Dated<A>> found =
                    PageHandling.await(context.follower().ask(s -> Dated.of(s, newest)));
            return new AskedDay<>(
                    200,
                    found.map(Dated::date).orElse(now),
                    found.map(Dated::answer),
                    found.isEmpty() ? t.get("mix.none") : "");
        }
        LocalDate date;
        try {
            date = LocalDate.parse(written);
        } catch (DateTimeParseException wrong) {
            String sentence = t.of("mix.not-date", written, now);
            return new AskedDay<>(404, now, Optional.empty(), sentence);
        }
        Optional<A> found = PageHandling.await(past.apply(date));
        if (found.isPresent()) {
            return new AskedDay<>(200, date, found, "");
        }
        String key = date.isAfter(now) ? "mix.future" : "mix.unknown";
        return new AskedDay<>(404, date, found, t.of(key, t.date(date)));
    }

    static boolean isToday(Ask ask) {
        return ask.in("date").equals(TODAY);
    }

    /** What was asked of the newest day, with its date. */
    private record Dated<A>(LocalDate date, A answer) {
        static <A> Optional<Dated<A>> of(Stand stand, Function<Stand, A> question) {
            return stand.orders().date().map(date -> new Dated<>(date, question.apply(stand)));
        }
    }
}
