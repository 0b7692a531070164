package sopwell.web.pages;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.web.T;

/** The date of a day that is to be looked at again. Stateless. */
final class PastDate {
    private PastDate() {}

    /** The date that an address names; whether there was a day is still to be seen. */
    static AskedDay<LocalDate> of(Ask ask, PageContext context) throws PageHandling.Interrupted {
        return AskedDay.of(
                ask,
                context,
                stand -> stand.orders().date().orElseThrow(),
                date -> CompletableFuture.completedFuture(Optional.of(date)));
    }

    /**
     * Why there is nothing to look at.
     *
     * @param group whose texts say it
     */
    static String sentence(AskedDay<LocalDate> date, T t, String group, LocalDate today) {
        if (!date.sentence().isEmpty()) {
            return date.sentence();
        }
        return date.date().isAfter(today)
                ? t.under(group, "future", t.date(date.date()))
                : t.of("mix.unknown", t.date(date.date()));
    }
}
