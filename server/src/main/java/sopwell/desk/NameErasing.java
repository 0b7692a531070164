package sopwell.desk;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.AuditEvent.Of;
import sopwell.audit.Who;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.EventLog;
import sopwell.log.LogFault;
import sopwell.log.Renaming;
import sopwell.log.Renaming.Place;

/**
 * Takes names out of the log, a business day at a time: so that a cashier's events of a day have
 * one name before and after, whatever happens in between. Waits for the desk, and ends with a fault
 * when the desk does not do it. Thread-safe: one at a time.
 */
public final class NameErasing {
    /** What stands in somebody's words where a name was. */
    public static final String GONE = "[…]";

    /** What stands for a cashier, with a number behind it. */
    private static final String CASHIER = "#";

    private final EventLog log;
    private final Submitting desk;
    private final Consumer<LocalDate> before;
    private final Consumer<LocalDate> after;

    /** The way to the desk. */
    @FunctionalInterface
    public interface Submitting {
        /** Asks for something under a key. */
        CompletableFuture<Answer> submit(String key, String fingerprint, StandCommand command);
    }

    /**
     * Over a log and its desk.
     *
     * @param before is told of each date before names go from it, so that what was counted of it is
     *     thrown away: nothing may keep them if the stand ends in between
     * @param after is told of the same date afterwards, whether or not it was done, so that nothing
     *     drawn or counted keeps them
     */
    public NameErasing(
            EventLog log, Submitting desk, Consumer<LocalDate> before, Consumer<LocalDate> after) {
        this.log = log;
        this.desk = desk;
        this.before = before;
        this.after = after;
    }

    /**
     * Takes out the names of a date's guests.
     *
     * @param by who asked for it; empty when nobody did
     * @return how many
     */
    public synchronized int guests(LocalDate date, Optional<Who> by) {
        return erase(Of.GUESTS, date, "", by, NameErasing::guest);
    }

    /** Takes out the name of one order's guest; how often it stood there. */
    public synchronized int order(String order, LocalDate date, Optional<Who> by) {
        return erase(Of.GUESTS, date, order, by, NameErasing::guest);
    }

    /** Gives a date's cashiers, and who measured, numbers for names, unless they are kept. */
    public synchronized int staff(LocalDate date, Predicate<String> kept, Optional<Who> by) {
        return numbered(Of.STAFF, date, kept.negate(), by, (place, text) -> text);
    }

    /** Takes out one person's name, also in what others wrote. */
    public synchronized int person(LocalDate date, String name, Optional<Who> by) {
        Pattern word =
                Pattern.compile(
                        "(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        Renaming other =
                (place, text) ->
                        place == Place.GUEST
                                ? word.matcher(text).find() ? "" : text
                                : word.matcher(text).replaceAll(Matcher.quoteReplacement(GONE));
        return numbered(Of.PERSON, date, cashier -> word.matcher(cashier).find(), by, other);
    }

    private static String guest(Place place, String text) {
        return place == Place.GUEST ? "" : text;
    }

    /** Numbers are those that no cashier of the day has, in the order in which they came. */
    private int numbered(
            Of of, LocalDate date, Predicate<String> which, Optional<Who> by, Renaming other) {
        Set<String> taken = new HashSet<>();
        Map<String, String> numbers = new LinkedHashMap<>();
        Optional<Replay.Span> span = Replay.span(log, date);
        if (span.isEmpty()) {
            return 0;
        }
        log.prepare(
                new Blanking(
                        span.get().from(),
                        span.get().to(),
                        "",
                        (place, text) -> {
                            if (place == Place.STAFF) {
                                taken.add(folded(text));
                                if (which.test(text) && !text.matches(CASHIER + "[0-9]+")) {
                                    numbers.put(folded(text), "");
                                }
                            }
                            return text;
                        }));
        int next = 1;
        for (Map.Entry<String, String> number : numbers.entrySet()) {
            while (taken.contains(CASHIER + next)) {
                next++;
            }
            number.setValue(CASHIER + next);
            next++;
        }
        return erase(
                of,
                date,
                "",
                by,
                (place, text) ->
                        place == Place.STAFF
                                ? numbers.getOrDefault(folded(text), text)
                                : other.now(place, text));
    }

    /** The till takes names that differ in their capitals for one. */
    private static String folded(String cashier) {
        return cashier.toLowerCase(Locale.ROOT);
    }

    private int erase(Of of, LocalDate date, String order, Optional<Who> by, Renaming names) {
        Optional<Replay.Span> span = Replay.span(log, date);
        if (span.isEmpty()) {
            return 0;
        }
        long from = span.get().from();
        long to = span.get().to();
        Optional<Blanked> blanked = log.prepare(new Blanking(from, to, order, names));
        if (blanked.isEmpty()) {
            return 0;
        }
        NamesErased event =
                new NamesErased(
                        of, date, order, from, to, blanked.get().names(), blanked.get().digest());
        before.accept(date);
        try {
            submit(blanked.get().digest(), new StandCommand.ForNames(event), by);
        } finally {
            after.accept(date);
        }
        return event.names();
    }

    /**
     * Notes that somebody's name goes from the roster; a fault when that can't be noted.
     *
     * @param by who asked for it, or {@link AuditTrail#BY_ITSELF}
     */
    public void note(String person, Who by) {
        AccessChanged erased = AccessChanged.ofPerson(Change.PERSON_ERASED, person);
        submit(person, new StandCommand.ForAccess(erased), Optional.of(by));
    }

    private void submit(String what, StandCommand command, Optional<Who> by) {
        String key = "erase " + what;
        StandCommand asked =
                by.<StandCommand>map(who -> new StandCommand.By(who, command)).orElse(command);
        Answer answer = desk.submit(key, key, asked).join();
        boolean done =
                answer.outcome() == Answer.Outcome.DONE
                        || answer.outcome() == Answer.Outcome.REPEATED;
        if (!done) {
            throw new LogFault("No name was erased: nothing can be written just now.");
        }
    }
}
